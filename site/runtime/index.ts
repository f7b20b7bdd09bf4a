export * from "./binding";
export * from "./idle";
export * from "./once";
