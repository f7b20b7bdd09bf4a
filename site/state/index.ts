export * from "./locks";
export * from "./naming";
export * from "./preference";
export * from "./session";
export * from "./units";
