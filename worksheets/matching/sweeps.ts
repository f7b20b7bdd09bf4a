import {
  attainable,
  type OperatingBuild,
  type SweepPoint,
  sweep,
  type ThreeArrangements,
  threeArrangements,
} from "../../lib/charge";
import { standardAtmosphere } from "../../lib/fluid";
import type { Length, RotationalSpeed } from "../../lib/quantity";

/** One way of charging the engine, and the most that it gives at a speed. */
export interface ArrangementPoint {
  readonly key: keyof ThreeArrangements;
  readonly name: string;
  readonly build: OperatingBuild;
  readonly point: SweepPoint;
}

/** The most that the parts give with the barometer of an altitude. */
export interface AltitudePoint {
  readonly altitude: Length;
  readonly point: SweepPoint;
}

const arrangementNames = {
  turbochargersOnly: "turbochargers only",
  blowerOnly: "blower only",
  both: "both",
} as const;

/** What has been worked out for a build; a build that nobody holds any more takes its answers with it. */
const kept = new WeakMap<OperatingBuild, Map<string, unknown>>();

/** The most that the parts give at each of several speeds [rev/s], each begun from the one before. */
export function sweepOf(build: OperatingBuild, speeds: readonly RotationalSpeed[]): readonly SweepPoint[] {
  return once(build, `sweep ${speeds.join(" ")}`, () => sweep(build, speeds));
}

/** The most that the parts give at each of several speeds [rev/s], each from nothing: for few speeds that lie far apart. */
export function attainableOf(build: OperatingBuild, speeds: readonly RotationalSpeed[]): readonly SweepPoint[] {
  return once(build, `attainable ${speeds.join(" ")}`, () => speeds.map((speed) => attainablePoint(build, speed)));
}

/**
 * The same engine with turbochargers only, blower only, and both, at a speed [rev/s].
 *
 * @throws RangeError if the path lacks turbochargers or blower
 */
export function arrangementsOf(build: OperatingBuild, speed: RotationalSpeed): readonly ArrangementPoint[] {
  return once(build, `arrangements ${speed}`, () => {
    const builds = threeArrangements(build);
    return (Object.keys(arrangementNames) as (keyof ThreeArrangements)[]).map((key) => ({
      key,
      name: arrangementNames[key],
      build: builds[key],
      point: attainablePoint(builds[key], speed),
    }));
  });
}

/**
 * The most that the parts give at a speed [rev/s] with the barometer of several altitudes [m], on a day as warm and with as
 * much water in each kilogram of air as here.
 */
export function altitudesOf(
  build: OperatingBuild,
  speed: RotationalSpeed,
  altitudes: readonly Length[],
): readonly AltitudePoint[] {
  return once(build, `altitudes ${speed} ${altitudes.join(" ")}`, () =>
    altitudes.map((altitude) => {
      const { pressure } = standardAtmosphere(altitude);
      return {
        altitude,
        point: attainablePoint({ ...build, surroundings: { ...build.surroundings, pressure } }, speed),
      };
    }),
  );
}

function attainablePoint(build: OperatingBuild, engineSpeed: RotationalSpeed): SweepPoint {
  try {
    return { ok: true, ...attainable(build, engineSpeed) };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { ok: false, engineSpeed, refusal: error.message };
  }
}

function once<T>(build: OperatingBuild, question: string, answer: () => T): T {
  let answers = kept.get(build);
  if (!answers) {
    answers = new Map();
    kept.set(build, answers);
  }
  if (!answers.has(question)) answers.set(question, answer());
  return answers.get(question) as T;
}
