import { beltAtSpeeds, drawnBelt } from "../../lib/drive";
import { structure } from "../../lib/graph";
import type { RotationalSpeed } from "../../lib/quantity";
import { blowerHighestSpeed } from "../boost/inputs";
import { idleSpeed, maximumSpeed, ratedSpeed } from "../brief/cells";
import { rawWaterHighestSpeed } from "../marine-cooling/inputs";
import { belts, frontPulleys } from "./beltTables";
import { beltChecks } from "./beltChecks";
import { alongTheBelt, type DrawnFrontBelt, frontBeltsOf, type LaidFrontBelt } from "./frontBelts";
import {
  blowerDrivenTeeth,
  blowerDriverTeeth,
  crankRotation,
  cruiseSpeed,
  meshLeast,
  overspeedShare,
  rawWaterDrivenTeeth,
  rawWaterDriverTeeth,
} from "./inputs";

export const frontBelts = structure("frontBelts", {
  label: "Belts and pulleys put together",
  from: {
    belts,
    frontPulleys,
    blowerDriverTeeth,
    blowerDrivenTeeth,
    rawWaterDriverTeeth,
    rawWaterDrivenTeeth,
    blowerHighestSpeed,
    rawWaterHighestSpeed,
  },
  compute: frontBeltsOf,
  formula: "i = \\frac{z_{crank}}{z}, \\qquad i = \\frac{r_{crank}}{r}",
  source: "ISO 5294 (from memory): a toothed belt does not slip; the creep of a ribbed belt is common practice, no source",
  assumptions: [
    "Ratios follow teeth, and radii at the belt's cord where a pulley has none; a ribbed belt creeps by 1 %.",
    "Teeth of blower, raw-water pump and of the crank on their belts, and the highest speeds of both units, come from their own lines.",
  ],
});

export const drawnBelts = structure("drawnBelts", {
  label: "Belts as drawn",
  from: { frontBelts, crankRotation },
  compute: ({ frontBelts, crankRotation }): readonly DrawnFrontBelt[] =>
    frontBelts.map(({ section, members, ...belt }) => ({
      mark: belt.mark,
      belt,
      ...drawnBelt({ name: belt.name, section, members: alongTheBelt(members, crankRotation), crankRotation }),
    })),
  formula: "L = \\sum_j l_j + \\sum_i r_i\\,\\beta_i",
  source: "common tangents of circles; sections of ISO 13050 and ISO 9981 (from memory)",
  assumptions: [
    "l are the free spans, r the pitch radii and β the arcs of contact.",
    "The belt is drawn tight along its pitch line and does not sag.",
  ],
});

export const beltRuns = structure("beltRuns", {
  label: "Belts as they run",
  from: { drawnBelts, idleSpeed, cruiseSpeed, ratedSpeed, maximumSpeed, overspeedShare, meshLeast },
  compute: (at): readonly LaidFrontBelt[] => {
    const speeds = {
      idle: at.idleSpeed,
      cruise: at.cruiseSpeed,
      rated: at.ratedSpeed,
      maximum: at.maximumSpeed,
      overspeed: (at.maximumSpeed * (1 + at.overspeedShare)) as RotationalSpeed,
    };
    return at.drawnBelts.map((drawn) => ({ ...beltAtSpeeds(drawn, speeds), mark: drawn.mark, belt: drawn.belt }));
  },
  formula: "n = i\\,N, \\qquad v = 2\\pi\\,r_{crank}\\,N",
  source: "definition",
  assumptions: ["Overspeed stands above the highest engine speed by the share stated."],
  checks: (laid, { meshLeast }) => laid.flatMap((each) => beltChecks(each, meshLeast)),
});
