import type { Bending, DriveSpeeds, Grip, HubLoad } from "../../lib/drive";
import { type StatedCheck, structure } from "../../lib/graph";
import type { Count, Force, Frequency, Length, Power, Ratio } from "../../lib/quantity";
import { beltRuns } from "./beltRuns";
import { serviceFactor, slackReserve, torsionalShare } from "./inputs";
import { loadedBelt } from "./loading";
import { unitLoads } from "./unitLoads";

/** A straight piece of a loaded belt, at the promised speed unless said otherwise. */
export interface LoadedSpan {
  readonly from: string;
  readonly to: string;
  readonly length: Length;
  /** whole tension, centrifugal part included */
  readonly tension: Force;
  /** the same at the peak of the torque */
  readonly peak: Force;
  /** what a plucked span of the belt at rest sounds at */
  readonly restFrequency: Frequency;
  /** force that pushes the middle of the resting span in by a sixty-fourth of its length */
  readonly push: Force;
  readonly pushedIn: Length;
}

/** A pulley of a loaded belt. */
export interface LoadedPulley {
  readonly unit: string;
  /** pull that it takes from the belt or gives to it */
  readonly pull: Force;
  readonly teethInMesh?: Count;
  readonly toothLoad?: Force;
  /** pull of the belt on its shaft, running and at rest */
  readonly hub?: HubLoad;
  readonly hubAtRest: Force;
  /** ribbed belts: pull at the peak against the pull at which it slips */
  readonly grip?: Grip;
}

/** A belt of the front under load. */
export interface FrontBeltLoad {
  readonly mark: string;
  readonly name: string;
  readonly fault?: string;
  readonly spans: readonly LoadedSpan[];
  readonly pulleys: readonly LoadedPulley[];
  /** pull and power that the crank gives, at each of the engine's speeds */
  readonly pull: { readonly [At in keyof DriveSpeeds]: Force };
  readonly power: { readonly [At in keyof DriveSpeeds]: Power };
  readonly centrifugal: Force;
  /** least that any span has above the centrifugal tension, at peak torque, and at which speed */
  readonly pressing: Force;
  readonly loosest: { readonly span: string; readonly speed: keyof DriveSpeeds };
  readonly setTension: Force;
  readonly neededTension: Force;
  readonly width: Length;
  /** absent where no width carries the pull, with the reason in `widthFault` */
  readonly neededWidth?: Length;
  readonly widthFault?: string;
  /** narrowest standard width that is enough, if there is one */
  readonly standardWidth?: Length;
  readonly bending?: Bending;
}

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
    "At the peak every torque stands above its mean by the share stated, all at once; the width is that for the mean pull times the service factor, at whichever speed asks for most.",
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
