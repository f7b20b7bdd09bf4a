export * from "./board";
export * from "./camera";
export * from "./snap";
