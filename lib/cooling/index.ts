export { capacityRatioSpan, type ExchangerCore, type FlowArrangement, transferUnitsSpan } from "./arrangement";
export * from "./boatTemperatureGuides";
export * from "./branchSplit";
export * from "./closedCircuit";
export * from "./conductanceAtFlow";
export * from "./coolingNetwork";
export * from "./dryExhaustLoss";
export * from "./duty";
export { type EffectivenessInputs, exchangerEffectiveness } from "./effectiveness";
export * from "./exchanger";
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
export { exhaustVapourFraction, exhaustVapourHeat, type VapourCarried, type VapourHeat } from "./exhaustVapour";
export * from "./expansionTank";
export * from "./fanAndCore";
export * from "./flowForHeat";
export * from "./fouling";
export * from "./gearLoss";
export * from "./hotInletForHeat";
export * from "./injectionWater";
export * from "./laggedPipe";
export * from "./limitingAirTemperature";
export * from "./lineElement";
export * from "./logMeanTemperatureDifference";
export * from "./pipeVelocity";
export * from "./propeller";
export * from "./pumpCurve";
export * from "./ratedCircuit";
export * from "./rawWaterPump";
export * from "./seaWaterVelocityGuides";
export {
  type CircuitExchanger,
  type CircuitStation,
  type SeriesCircuit,
  type SeriesCircuitInputs,
  seriesCircuit,
} from "./seriesCircuit";
export * from "./suctionHead";
export * from "./timeToLimit";
export * from "./towerWater";
export * from "./transferUnits";
export * from "./ventilation";
export * from "./wetExhaustLoss";
