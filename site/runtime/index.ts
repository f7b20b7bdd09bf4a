export * from "./binding";
export * from "./fetched";
export * from "./idle";
export * from "./once";
