import { type AllowedRatios, isToothed, ratiosAllowed } from "../../lib/drive";
import { structure } from "../../lib/graph";
import type { Count, Ratio } from "../../lib/quantity";
import { beltRuns } from "./beltRuns";

/** Ratios that suit a unit, and what its pulley may have for them. */
export interface RatioRange extends AllowedRatios {
  readonly belt: string;
  readonly unit: string;
  readonly ratio: Ratio;
  readonly suits: boolean;
  /** fewest and most teeth that its pulley may have on the crank pulley there is; absent where none do, or it has none */
  readonly teeth?: readonly [fewest: Count, most: Count];
}

export const ratioRanges = structure("ratioRanges", {
  label: "Ratios that suit each unit, from idle to overspeed",
  from: { beltRuns },
  compute: ({ beltRuns }): readonly RatioRange[] =>
    beltRuns.flatMap(({ name, section, members }) => {
      const crank = members[0]!;
      const { idle, maximum, overspeed } = crank.at;
      return members
        .filter(({ role }) => role !== "crank" && role !== "idler")
        .map(({ unit, ratio, teeth, lowestSpeed, highestSpeed, burstSpeed }) => {
          const allowed = ratiosAllowed({ lowestSpeed, highestSpeed, burstSpeed, engine: { idle, maximum, overspeed } });
          const fewest = Math.max(isToothed(section) ? section.leastTeeth : 0, Math.ceil(crank.teeth / allowed.highest - 1e-9));
          const most = allowed.lowest > 0 ? Math.floor(crank.teeth / allowed.lowest + 1e-9) : 400;
          return {
            belt: name,
            unit,
            ratio,
            ...allowed,
            suits: ratio >= allowed.lowest && ratio <= allowed.highest,
            ...(teeth > 0 && fewest <= most && { teeth: [fewest as Count, most as Count] as const }),
          };
        });
    }),
  formula: "\\frac{n_{low}}{N_0} \\le i \\le \\min\\left(\\frac{n_{high}}{N_{max}}, \\frac{n_{burst}}{(1 + x_o) N_{max}}\\right)",
  source: "interval arithmetic; fewest teeth from memory",
  assumptions: ["n are the unit's lowest, highest and burst speed; teeth are those of its pulley on the crank pulley there is."],
});
