export * from "./limit-rule";
export * from "./movement";
export * from "./spark";
export * from "./standing";
