export * from "./hash";
export * from "./margins";
export * from "./printing";
