export * from "./decimal";
export * from "./guard";
export * from "./kinds";
export * from "./units";
export * as definitions from "./units/definitions";
export type { UnitSystem } from "./units/unit";
