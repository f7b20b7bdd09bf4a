import type { Count, Force, Length, MassPerLength, Ratio, RotationalSpeed, Velocity } from "../quantity";
import type { OfferedBelt } from "./beltFit";
import type { DrawnBelt } from "./laidBelt";
import type { UnitTorques } from "./tension";
import type { TensionerMotion } from "./tensionerMotion";

/** What a pick must keep. */
export interface PickLimits {
  /** teeth in mesh, at least [–] */
  readonly teethInMesh: Count;
  /** room between the belt and what it passes, at least [m] */
  readonly clearance: Length;
  /** speed of the belt at the highest engine speed, at most [m/s] */
  readonly beltSpeed: Velocity;
  /** lowest and highest ratio of each unit, by name [–]; who is not named may turn as it likes */
  readonly ratios: Readonly<Record<string, readonly [lowest: Ratio, highest: Ratio]>>;
}

/** What the belt must carry, and may. */
export interface PickLoad {
  /** torque of each unit, by name [N·m] */
  readonly torques: UnitTorques;
  /** times by which the pull is taken greater [–] */
  readonly serviceFactor: Ratio;
  /** engine speed at which these torques hold [rev/s] */
  readonly speed: RotationalSpeed;
  /** the maker's pull at the base width [N], that width [m] and its mass [kg/m] */
  readonly allowablePull: Force;
  readonly baseWidth: Length;
  readonly baseMassPerLength: MassPerLength;
  /** width of the belt [m] */
  readonly width: Length;
}

/** The pulley that takes the belt up. */
export interface PickTensioner {
  readonly pulley: string;
  readonly motion: TensionerMotion;
  /** how far it may move, each way [m] */
  readonly reach: Length;
  /** slack of the belt wanted to slip it on [m] */
  readonly fittingSlack: Length;
  /** stretch to be taken up, as a length of belt [m] */
  readonly stretch: Length;
}

/** A belt as drawn, what is wanted of one of its units, and what must be kept. */
export interface PickInputs {
  readonly drawn: DrawnBelt;
  /** name of the unit whose drive is picked */
  readonly unit: string;
  /** ratio wanted [–], above 0, and how far off it may be [–], as a share */
  readonly ratio: Ratio;
  readonly tolerance: Ratio;
  /** fewest and most teeth of the crank's and of the unit's pulley [–] */
  readonly driver: readonly [fewest: Count, most: Count];
  readonly driven: readonly [fewest: Count, most: Count];
  readonly tensioner: PickTensioner;
  /** highest engine speed [rev/s] */
  readonly highestSpeed: RotationalSpeed;
  readonly limits: PickLimits;
  readonly load: PickLoad;
}

/** Two pulleys and a belt that do it. */
export interface DrivePick {
  readonly driverTeeth: Count;
  readonly drivenTeeth: Count;
  readonly ratio: Ratio;
  /** how far the ratio is off what is wanted [–], as a share, with its sign */
  readonly off: Ratio;
  readonly belt: OfferedBelt & { readonly teeth: Count };
  /** how far the tensioner moves from where it is drawn [m] */
  readonly travel: Length;
  /** speed of the belt at the highest engine speed [m/s] */
  readonly beltSpeed: Velocity;
  /** fewest teeth in mesh on any pulley [–] */
  readonly teethInMesh: Count;
  /** width that the pull asks for [m] */
  readonly widthNeeded: Length;
  /** what speaks against it, the less the better [–]; see drivePicks */
  readonly cost: number;
}

/** Why pairs of pulleys were left out, and how many. */
export type PickRefusals = Readonly<Record<PickRefusal, number>>;

/** What a pair of pulleys, or its belts, can fail by. */
export const pickRefusals = [
  "another unit's speed",
  "belt speed",
  "no belt can lie",
  "teeth in mesh",
  "room",
  "width",
  "no belt in reach",
] as const;

export type PickRefusal = (typeof pickRefusals)[number];

/** The picks, best first, and what became of the other pairs. */
export interface DrivePicks {
  readonly picks: readonly DrivePick[];
  /** pairs of teeth that give the ratio wanted */
  readonly pairs: number;
  readonly refused: PickRefusals;
}
