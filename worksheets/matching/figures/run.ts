import type { AttainablePoint, OperatingBuild, SweepPoint } from "../../../lib/charge";
import type { Power } from "../../../lib/quantity";
import type { FigureUnits } from "../../sheet";
import { sweepOf } from "../sweeps";
import { type EngineSpeeds, sweepSpeeds } from "./sweepSpeeds";

/** What the figures of the match read. */
export interface MatchValues extends EngineSpeeds {
  readonly matchBuild: OperatingBuild;
  readonly ratedPower: Power;
}

/** The chosen parts over the engine's speeds. */
export interface Run extends MatchValues {
  readonly points: readonly SweepPoint[];
}

export function runOf(values: MatchValues): Run {
  return { ...values, points: sweepOf(values.matchBuild, sweepSpeeds(values)) };
}

/** What the parts give at the promised speed; undefined where they give nothing. */
export function promisedOf({ points, ratedSpeed }: Run): AttainablePoint | undefined {
  return points.filter((point) => point.ok).find(({ engineSpeed }) => engineSpeed === ratedSpeed);
}

/** The point of a sweep, or undefined where the parts give nothing there. */
export function attained(point: SweepPoint): AttainablePoint | undefined {
  return point.ok ? point : undefined;
}

/** What a speed of the sweep is to the engine. */
export function placeOf({ idleSpeed, ratedSpeed, maximumSpeed }: Run, speed: number): string {
  if (speed === ratedSpeed) return "promised speed";
  if (speed === idleSpeed) return "idle speed";
  if (speed === maximumSpeed) return "highest speed";
  return "between";
}

/** Why there is nothing, without the name of the function that says so. */
export function refusalWords(refusal: string): string {
  return refusal.replace(/^[a-zA-Z]+: /, "");
}

/** A sentence on the speeds at which the parts give nothing; empty if there are none. */
export function gapWords(points: readonly SweepPoint[], units: FigureUnits): string {
  const refused = points.filter((point) => !point.ok);
  const [first] = refused;
  if (!first) return "";
  const at = units.text("rotationalSpeed", first.engineSpeed);
  const more = refused.length > 1 ? ` and at ${refused.length - 1} more of ${points.length} speeds` : "";
  return ` Nothing is found at ${at}${more}: ${refusalWords(first.refusal)}.`;
}

/** A name in the middle of a sentence. */
export function inSentence(name: string): string {
  return /^\p{Lu}\p{Ll}/u.test(name) ? name[0]!.toLowerCase() + name.slice(1) : name;
}
