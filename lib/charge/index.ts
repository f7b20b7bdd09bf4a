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
export * from "./chargeCooler";
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
export * from "./nozzle";
export * from "./turbine";
