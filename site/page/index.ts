export * from "./page";
