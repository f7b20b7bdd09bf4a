export * from "./naming";
export * from "./session";
export * from "./units";
