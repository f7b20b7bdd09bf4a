import {
  attainable,
  type OperatingBuild,
  type SweepPoint,
  sweep,
  type ThreeArrangements,
  threeArrangements,
} from "../../lib/charge";
import { standardAtmosphere } from "../../lib/fluid";
import { structure } from "../../lib/graph";
import type { Length, RotationalSpeed } from "../../lib/quantity";
import { idleSpeed, maximumSpeed, ratedSpeed } from "../brief/cells";
import { Later } from "../later";
import { matchBuild } from "./match";
import { sweepSpeeds } from "./sweepSpeeds";

/** The most that the parts give with the barometer of an altitude. */
export interface AltitudePoint {
  readonly altitude: Length;
  readonly point: SweepPoint;
}

/** One way of charging the engine, and the most that it gives at the promised speed. */
export interface ArrangementPoint {
  readonly key: keyof ThreeArrangements;
  readonly name: string;
  readonly build: OperatingBuild;
  readonly point: SweepPoint;
}

/** From the sea to a high pass [m]. */
const altitudes = Array.from({ length: 9 }, (_, i) => (500 * i) as Length);

export const arrangementNames: Readonly<Record<keyof ThreeArrangements, string>> = {
  turbochargersOnly: "turbochargers only",
  blowerOnly: "blower only",
  both: "both",
};

const attainableFormula = "P_{at} = \\min P_{lim}";
const balances = "conservation of mass; first law on every element";
const atRest = "Worked out when the hand rests.";

export const speedRun = structure("speedRun", {
  label: "The most that the parts give, over the engine's speeds",
  from: { matchBuild, idleSpeed, ratedSpeed, maximumSpeed },
  compute: (at) =>
    new Later(
      "speedRun",
      at,
      ({ matchBuild, ...speeds }): readonly SweepPoint[] => sweep(matchBuild, sweepSpeeds(speeds)),
    ),
  formula: `${attainableFormula} \\text{ at each speed}`,
  source: balances,
  assumptions: [atRest, "Every speed is begun from the one before; one without a balance says why."],
});

export const altitudeRun = structure("altitudeRun", {
  label: "The most that the parts give at the promised speed, over altitude",
  from: { matchBuild, ratedSpeed },
  compute: (at) =>
    new Later("altitudeRun", at, ({ matchBuild, ratedSpeed }): readonly AltitudePoint[] =>
      altitudes.map((altitude) => {
        const { pressure } = standardAtmosphere(altitude);
        const surroundings = { ...matchBuild.surroundings, pressure };
        return { altitude, point: attainableOrWhyNot({ ...matchBuild, surroundings }, ratedSpeed) };
      }),
    ),
  formula: `${attainableFormula} \\text{ with } p_0 \\text{ of each altitude}`,
  source: "ISO 2533:1975 for the barometer; conservation of mass; first law on every element",
  assumptions: [atRest, "On a day as warm, and with as much water in each kilogram of air, as here; wastegates keep their springs."],
});

export const arrangements = structure("arrangements", {
  label: "The same engine with turbochargers only, with the blower only, and with both",
  from: { matchBuild, ratedSpeed },
  compute: ({ matchBuild, ratedSpeed }) => {
    const builds = threeArrangements(matchBuild);
    const keys = Object.keys(arrangementNames) as (keyof ThreeArrangements)[];
    return new Later("arrangements", { builds, ratedSpeed }, ({ builds, ratedSpeed }): readonly ArrangementPoint[] =>
      keys.map((key) => ({
        key,
        name: arrangementNames[key],
        build: builds[key],
        point: attainableOrWhyNot(builds[key], ratedSpeed),
      })),
    );
  },
  formula: `${attainableFormula} \\text{ of each}`,
  source: balances,
  assumptions: [
    atRest,
    "What is taken out leaves its place empty, and coolers with nothing to cool go too; wheels, turbines and drive ratio stay as they are, so neither half is matched anew.",
  ],
});

function attainableOrWhyNot(build: OperatingBuild, engineSpeed: RotationalSpeed): SweepPoint {
  try {
    return { ok: true, ...attainable(build, engineSpeed) };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { ok: false, engineSpeed, refusal: error.message };
  }
}
