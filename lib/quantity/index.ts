export * from "./guard";
export * from "./kinds";
