export * from "./accessoryLoad";
export * from "./affinity";
export * from "./beltLayout";
export * from "./beltLength";
export * from "./beltRating";
export { beltRun, teethInMesh } from "./beltRun";
export * from "./beltSection";
export * from "./driveMember";
export * from "./frictionBelt";
export * from "./hubLoads";
export * from "./hydraulicPump";
export * from "./installationTension";
export * from "./laidBelt";
export { backIdlerPitchRadius, flatIdlerPitchRadius, outsideDiameter, pitchDiameter } from "./pulley";
export * from "./spanFrequency";
export * from "./speedCurve";
export * from "./speeds";
export {
  centrifugalTension,
  effectivePull,
  type LoadedRun,
  type SpanTensions,
  spanTensions,
  type TightenedRun,
  type UnitTorques,
} from "./tension";
export * from "./tensioner";
export * from "./toothProfiles";
export * from "./twoPulleys";
