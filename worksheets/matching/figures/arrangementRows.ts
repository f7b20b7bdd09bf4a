import { type OperatingBuild, type OperatingPoint, operatingPoint } from "../../../lib/charge";
import type { Power } from "../../../lib/quantity";
import type { FigureUnits } from "../../sheet";
import type { ArrangementPoint } from "../runs";
import { attained } from "./run";
import { reasonOf } from "./runWords";

/** One way of charging the engine, as the figure compares it. */
export interface ArrangementRow {
  readonly name: string;
  /** The most that it gives [W]; undefined where it gives nothing. */
  readonly most: number | undefined;
  readonly carries: boolean;
  /** The limit that is met first, or why it gives nothing, in the units shown. */
  readonly stopped: (units: FigureUnits) => string;
  /** What it is compared at: with the promise on it, or with the most it gives where that is less. */
  readonly at: OperatingPoint | undefined;
}

/** Rows of a comparison that were worked out before, by what they came from. */
const kept = new WeakMap<readonly ArrangementPoint[], { readonly ratedPower: number; readonly rows: readonly ArrangementRow[] }>();

/** Each arrangement with the promised power on it, or with the most that it gives. */
export function arrangementRows(all: readonly ArrangementPoint[], ratedPower: Power): readonly ArrangementRow[] {
  const before = kept.get(all);
  if (before?.ratedPower === ratedPower) return before.rows;
  const rows = all.map(({ name, build, point }): ArrangementRow => {
    const given = attained(point);
    if (!given) return { name, most: undefined, carries: false, stopped: (units) => reasonOf(point, units), at: undefined };
    const most = given.point.brakePower;
    const carries = most >= ratedPower;
    const at = carries ? withPower(build, given.point, ratedPower) : given.point;
    return { name, most, carries, stopped: () => given.binding.name, at };
  });
  kept.set(all, { ratedPower, rows });
  return rows;
}

/** With less power on it than the most that it gives; that most itself where no such balance is found. */
function withPower(build: OperatingBuild, near: OperatingPoint, brakePower: Power): OperatingPoint {
  try {
    return operatingPoint(build, { engineSpeed: near.engineSpeed, load: { kind: "brakePower", brakePower }, near });
  } catch (error) {
    if (error instanceof RangeError) return near;
    throw error;
  }
}

/** Heat that charge coolers carry away [W]. */
export function coolerHeat({ coolers }: OperatingPoint): number {
  return coolers.reduce((sum, { heat }) => sum + heat, 0);
}

/** Heat that cooling must carry away: through the walls and in the charge coolers [W]. */
export function heatToCarry(point: OperatingPoint): number {
  return point.heatToWalls + coolerHeat(point);
}

/** Fuel for the work at the flywheel [kg/J]. */
export function specificFuel({ fuelFlow, brakePower }: OperatingPoint): number {
  return fuelFlow / brakePower;
}
