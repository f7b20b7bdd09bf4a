export * from "./brent";
export * from "./newtonSystem";
