export * from "./explanation";
export * from "./formula";
export * from "./substituted";
export * from "./texText";
export * from "./values";
export * from "./trail";
