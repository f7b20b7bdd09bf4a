export * from "./figureUnits";
export * from "./locks";
export * from "./naming";
export * from "./preference";
export * from "./refusalWords";
export * from "./session";
export * from "./units";
