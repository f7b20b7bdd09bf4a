export * from "./accessoryLoad";
export * from "./affinity";
export * from "./beltFit";
export * from "./beltLayout";
export * from "./beltLength";
export * from "./beltRating";
export { beltRun, teethInMesh } from "./beltRun";
export * from "./beltSection";
export * from "./beltWidth";
export * from "./bending";
export * from "./deflectionForce";
export * from "./driveMember";
export * from "./drivePick";
export * from "./drivePicks";
export * from "./dutyLoads";
export * from "./frictionBelt";
export * from "./grip";
export * from "./hubLoads";
export * from "./hydraulicPump";
export { type InstalledRun, installationTension, type RunningTensions, slackTensionUnderLoad } from "./installationTension";
export * from "./laidBelt";
export * from "./layoutFindings";
export { backIdlerPitchRadius, flatIdlerPitchRadius, outsideDiameter, pitchDiameter } from "./pulley";
export * from "./ratiosAllowed";
export * from "./rotationCures";
export * from "./runningTensions";
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
export { type PivotingTensioner, type SlidingTensioner, takeUpOf, type TensionerPosition, tensionerPosition } from "./tensioner";
export type { Arm, Slide, TensionerMotion } from "./tensionerMotion";
export * from "./toothPairs";
export * from "./toothProfiles";
export * from "./twoPulleys";
