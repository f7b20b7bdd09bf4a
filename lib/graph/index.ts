export * from "./assess";
export * from "./cell";
export * from "./compile";
export * from "./graph";
export * from "./input";
export * from "./limit";
export * from "./reference";
export * from "./refusal";
