import type { Grip } from "../../lib/drive";
import { type StatedCheck, structure } from "../../lib/graph";
import type { Ratio } from "../../lib/quantity";
import { beltRuns } from "./beltRuns";
import type { FrontBeltLoad } from "./frontBeltLoad";
import { serviceFactor, slackReserve, torsionalShare } from "./inputs";
import { loadedBelt } from "./loading";
import { unitLoads } from "./unitLoads";

export const beltLoads = structure("beltLoads", {
  label: "Belts under load",
  from: { beltRuns, unitLoads, torsionalShare, serviceFactor, slackReserve },
  compute: ({ beltRuns, unitLoads, ...factors }): readonly FrontBeltLoad[] =>
    beltRuns.map((laid) => loadedBelt(laid, unitLoads, factors)),
  formula: "T_{j+1} = T_j + \\frac{M_j}{r_j}, \\qquad T_c = m'\\,v^2, \\qquad F_j = T_{j+1}\\,\\vec t_{j+1} - T_j\\,\\vec t_j",
  source:
    "statics of the belt; rating after ISO 5295 (from memory); capstan after Euler and Eytelwein; taut string for the frequency",
  assumptions: [
    "T are the spans' tensions, M the torques of the units, r the pitch radii, m' the belt's mass for each metre, v its speed and t the directions of the spans.",
    "Locked centres keep the mean tension along the belt; a sprung pulley keeps its own. The run is the one drawn.",
    "At the peak every torque stands above its mean by the share stated, all at once; the width is that for the mean pull times the service factor.",
    "Whichever speed is worst decides: tension and grip among idle, cruise, promised, highest and overspeed; width among the first four, since overspeed lasts a moment.",
    "Teeth in mesh share the pull alike; the first on the tight side carries more.",
  ],
  checks: (loads) => loads.flatMap(loadChecks),
});

function loadChecks(load: FrontBeltLoad): readonly StatedCheck[] {
  const component = load.name.toLowerCase();
  if (load.fault !== undefined) return [];
  const slips = load.pulleys.flatMap(({ unit, grip }): readonly StatedCheck[] =>
    grip === undefined || grip.pull === 0
      ? []
      : [
          {
            component,
            label: `Pull at the ${unit.toLowerCase()} before ${load.name.toLowerCase()} slips`,
            kind: "force",
            side: "most",
            value: grip.pull,
            bound: grip.slipsAt,
            source: "capstan friction",
          },
        ],
  );
  return [
    {
      component,
      label: `Set tension of the ${component}`,
      kind: "force",
      side: "least",
      value: load.setTension,
      bound: load.neededTension,
      source: "tension left in the loosest span at peak torque",
    },
    ...(load.neededWidth === undefined
      ? []
      : [
          {
            component,
            label: `Width that the ${component} needs`,
            kind: "length" as const,
            side: "most" as const,
            value: load.neededWidth,
            bound: load.width,
            source: "ISO 5295 (form, from memory); the pull is the maker's",
          },
        ]),
    ...slips,
  ];
}

/** Share of the pull at which a pulley slips that it uses at the peak; nothing where it carries none. */
export function gripUsed({ pull, slipsAt }: Grip): Ratio | undefined {
  return pull > 0 && slipsAt > 0 ? ((pull / slipsAt) as Ratio) : undefined;
}
