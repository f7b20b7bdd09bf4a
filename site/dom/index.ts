export * from "./file";
export * from "./h";
export * from "./tex";
