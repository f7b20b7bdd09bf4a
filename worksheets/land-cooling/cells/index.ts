export * from "./core";
export * from "./landHeat";
export * from "./radiator";
export * from "./radiatorCurve";
export * from "./testCell";
export * from "./tower";
