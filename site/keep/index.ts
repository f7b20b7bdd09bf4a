export * from "./bases";
export * from "./files";
export * from "./keeping";
