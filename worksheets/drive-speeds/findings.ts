import { clearances, isToothed, layoutFindings, pitchDiameter, rotationCures } from "../../lib/drive";
import { type StatedCheck, structure } from "../../lib/graph";
import type { Length } from "../../lib/quantity";
import { beltFits } from "./beltFits";
import { beltLoads } from "./beltLoads";
import { beltRuns } from "./beltRuns";
import { speedWords } from "./budgets";
import type { LaidFrontBelt } from "./frontBelts";
import { clearanceLeast } from "./inputs";
import { ratioRanges } from "./ratioRanges";

/** Something about a drive that must be cured, or known. */
export interface Finding {
  readonly belt: string;
  readonly what: string;
  readonly cure: string;
}

export const driveFindings = structure("driveFindings", {
  label: "What is found on the front drives, and its cures",
  from: { beltRuns, beltFits, beltLoads, ratioRanges, clearanceLeast },
  compute: ({ beltRuns, beltFits, beltLoads, ratioRanges, clearanceLeast }): readonly Finding[] => [
    ...beltRuns.flatMap((laid) => [
      ...layoutOf(laid),
      ...rotationOf(laid),
      ...closeOf(laid, clearanceLeast),
      ...bendsOf(laid),
    ]),
    ...beltFits.flatMap(({ name, fault, pulley }): readonly Finding[] =>
      fault === undefined || beltRuns.some((laid) => laid.name === name && laid.run === undefined)
        ? []
        : [{ belt: name, what: fault, cure: `another belt, or another place for ${pulley}` }],
    ),
    ...ratioRanges.flatMap(({ belt, unit, empty }): readonly Finding[] =>
      empty
        ? [
            {
              belt,
              what: `no ratio turns ${unit} fast enough at idle and slowly enough at the top`,
              cure: "a higher idle, a lower top speed, or another unit",
            },
          ]
        : [],
    ),
    ...beltLoads.flatMap(({ name, pressing, loosest, fault, widthFault }): readonly Finding[] => [
      ...(fault === undefined && pressing < 0
        ? [
            {
              belt: name,
              what: `the span ${loosest.span} would hang loose at ${speedWords[loosest.speed]}: it lacks ${Math.round(-pressing)} N`,
              cure: "set the belt tighter, or put the tensioner on that span",
            },
          ]
        : []),
      ...(widthFault === undefined ? [] : [{ belt: name, what: widthFault, cure: "see the belt's table" }]),
    ]),
  ],
  formula: "g = d - r_1 - r_2",
  source: "geometry; common practice, no source, for what shortens a belt's life",
  assumptions: ["g is the room between two pulleys, d their distance and r their pitch radii; a span counts as a line."],
  checks: (_, { beltRuns, clearanceLeast }) =>
    beltRuns.flatMap(({ name, run }): readonly StatedCheck[] => {
      const closest = run && clearances(run)[0];
      return closest === undefined
        ? []
        : [
            {
              component: name.toLowerCase(),
              label: `Room between ${closest.of} and ${closest.to}`,
              kind: "length",
              side: "least",
              value: closest.gap,
              bound: clearanceLeast,
            },
          ];
    }),
});

function layoutOf({ name, run, layout }: LaidFrontBelt): readonly Finding[] {
  if (run !== undefined) return [];
  return layoutFindings(layout).map((found) => {
    const [what, ...cure] = found.split("; ");
    return { belt: name, what: what!, cure: cure.join("; ") || "see the table of pulleys" };
  });
}

function rotationOf({ name, members }: LaidFrontBelt): readonly Finding[] {
  return members
    .filter(({ turnsRightly }) => !turnsRightly)
    .map((member) => ({
      belt: name,
      what: `${member.unit} turns ${member.turns}, seen on its own shaft end, and must turn ${member.mustTurn}`,
      cure: rotationCures(member).join("; or "),
    }));
}

function closeOf({ name, run }: LaidFrontBelt, least: Length): readonly Finding[] {
  if (run === undefined) return [];
  return clearances(run)
    .filter(({ gap }) => gap < least)
    .map(({ of, to, gap }) => ({
      belt: name,
      what: `${of} comes within ${Math.round(1e4 * gap) / 10} mm of ${to}`,
      cure: `move it by ${Math.round(1e4 * (least - gap)) / 10} mm`,
    }));
}

/** What is known to shorten a belt's life: pulleys that are too small, above all behind its back. */
function bendsOf({ name, section, layout, members }: LaidFrontBelt): readonly Finding[] {
  if (!isToothed(section)) return [];
  const least = pitchDiameter(section.pitch, section.leastTeeth);
  return layout.pulleys.flatMap(({ name: unit, pitchRadius, contact }, i) => {
    if (2 * pitchRadius >= least) return [];
    const size = `${Math.round(2000 * pitchRadius)} mm`;
    const what =
      contact === "back"
        ? `${unit} bends the belt backwards around ${size}, less than the ${Math.round(1000 * least)} mm of the smallest pulley that its section is made for`
        : `${unit} bends the belt around ${size}${members[i]!.teeth > 0 ? `, ${members[i]!.teeth} teeth; ${section.leastTeeth} are the fewest that last` : ""}`;
    return [{ belt: name, what, cure: "a larger pulley: every sharp bend shortens the belt's life" }];
  });
}
