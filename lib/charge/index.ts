export {
  type Blower,
  type BlowerCycle,
  type BlowerDelivery,
  type BlowerDuty,
  blowerDelivery,
  blowerShaftPower,
  blowerWorkPerTurn,
} from "./blower";
export * from "./blowerLeakage";
export {
  type ChargeCooler,
  type Condensate,
  type CooledCharge,
  type CoolerInlet,
  type CoolerOutlet,
  chargeCondensate,
  chargeCoolerOutlet,
} from "./chargeCooler";
export {
  chargePath,
  chargePathAtIdle,
  chargePathAtTurbochargerRatio,
  type GivenTurbochargerRatio,
  type WantedAirFlow,
} from "./chargePath";
export * from "./chargePathBuild";
export { type Compressed, type Compression, compressorOutlet, compressorPower } from "./compressor";
export * from "./correctedFlow";
export * from "./demandBuild";
export * from "./demandHeatBalance";
export * from "./demandPoint";
export * from "./inventedBuild";
export type {
  CompressorField,
  CompressorPoint,
  FieldUncertainty,
} from "./map/compressorField";
export { type CompressorMap, compressorMap } from "./map/compressorMap";
export type { FitError, FitErrors } from "./map/fitErrors";
export { inventedCompressorPoints } from "./map/inventedCompressorPoints";
export * from "./map/parseCompressorPoints";
export * from "./nozzle";
export * from "./path/elements";
export * from "./path/ratedCooler";
export * from "./path/spray";
export { type AttainablePoint, attainable, type BindingLimit } from "./point/attainable";
export { leastExcessAir } from "./point/buildAtSpeed";
export * from "./point/countingGases";
export { type GasSource, plainGases } from "./point/gasSource";
export { inventedOperatingBuild } from "./point/inventedOperatingBuild";
export type { LimitMargin } from "./point/limits";
export * from "./point/operatingBuild";
export * from "./point/operatingHeatBalance";
export { type OperatingQuestion, operatingPoint } from "./point/operatingPoint";
export * from "./point/operatingResult";
export { type SweepPoint, sweep } from "./point/sweep";
export * from "./point/threeArrangements";
export * from "./turbine";
export {
  type TurbineDrop,
  type TurbineField,
  type TurbineSwallowing,
  type TurbineWork,
  turbineExpansionRatio,
  turbineWork,
} from "./turbineField";
export * from "./wastegate";
export * from "./wheel/inducerChoke";
export * from "./wheel/slip";
export { efficiencyShape, type OffPeak, peakPolytropicEfficiency } from "./wheel/stageEfficiency";
export { type CompressorWheel, rememberedWheelShape, tipSpeed, wheelEstimate } from "./wheel/wheelEstimate";
export type { SlowToFast, WheelShape } from "./wheel/wheelField";
export * from "./wheel/workCoefficient";
