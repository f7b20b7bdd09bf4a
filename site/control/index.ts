export * from "./choice";
export * from "./entry";
export * from "./field";
export * from "./handle";
export * from "./keys";
export * from "./slider";
export * from "./table";
export * from "./track";
