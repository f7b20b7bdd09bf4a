export * from "./files";
export * from "./page";
