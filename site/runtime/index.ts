export * from "./binding";
export * from "./idle";
