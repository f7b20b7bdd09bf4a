export { capacityRatioSpan, type ExchangerCore, type FlowArrangement, transferUnitsSpan } from "./arrangement";
export * from "./boatTemperatureGuides";
export * from "./closedCircuit";
export * from "./conductanceAtFlow";
export * from "./dryExhaustLoss";
export { type EffectivenessInputs, exchangerEffectiveness } from "./effectiveness";
export * from "./exchanger";
export * from "./hotInletForHeat";
export {
  type ExhaustMix,
  type ExhaustMixInputs,
  exhaustGasSpan,
  exhaustMixSaturated,
  exhaustMixWithoutEvaporation,
  exhaustPressureSpan,
  exhaustVapourSpan,
  type InjectionInputs,
  injectionWaterSpan,
} from "./exhaustMixing";
export { exhaustVapourFraction } from "./exhaustVapour";
export * from "./expansionTank";
export * from "./flowForHeat";
export * from "./fouling";
export * from "./gearLoss";
export * from "./injectionWater";
export * from "./limitingAirTemperature";
export * from "./logMeanTemperatureDifference";
export * from "./pipeVelocity";
export * from "./propeller";
export * from "./pumpCurve";
export * from "./rawWaterPump";
export * from "./seaWaterVelocityGuides";
export * from "./ratedCircuit";
export {
  type CircuitExchanger,
  type CircuitStation,
  type SeriesCircuit,
  type SeriesCircuitInputs,
  seriesCircuit,
} from "./seriesCircuit";
export * from "./suctionHead";
export * from "./timeToLimit";
export * from "./transferUnits";
export * from "./ventilation";
