export * from "./h";
export * from "./tex";
