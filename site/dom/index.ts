export * from "./boxed";
export * from "./file";
export * from "./grown";
export * from "./h";
export * from "./patch";
export * from "./subscripts";
export * from "./tex";
