export * from "./decimal";
export * from "./display";
export * from "./guard";
export * from "./kinds";
export { type ParsedQuantity, type ParsingOptions, parseQuantity } from "./parse";
export * from "./units";
export * as definitions from "./units/definitions";
export type { UnitSystem } from "./units/unit";
export * from "./write";
