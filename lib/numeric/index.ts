export * from "./brent";
