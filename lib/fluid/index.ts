export * from "./air";
export * from "./burntGas";
export * from "./dieselFuel";
export * from "./gas";
export * from "./species";
