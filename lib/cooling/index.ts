export { type ExchangerCore, type FlowArrangement, transferUnitsSpan } from "./arrangement";
export * from "./dryExhaustLoss";
export { type EffectivenessInputs, exchangerEffectiveness } from "./effectiveness";
export * from "./exchanger";
export {
  type ExhaustMix,
  type ExhaustMixInputs,
  exhaustMixSaturated,
  exhaustMixWithoutEvaporation,
  type InjectionInputs,
} from "./exhaustMixing";
export { exhaustVapourFraction } from "./exhaustVapour";
export * from "./flowForHeat";
export * from "./fouling";
export * from "./gearLoss";
export * from "./injectionWater";
export * from "./limitingAirTemperature";
export * from "./logMeanTemperatureDifference";
export * from "./pipeVelocity";
export * from "./propeller";
export * from "./rawWaterPump";
export * from "./seaWaterVelocityGuides";
export * from "./seriesCircuit";
export * from "./suctionHead";
export * from "./transferUnits";
export * from "./ventilation";
