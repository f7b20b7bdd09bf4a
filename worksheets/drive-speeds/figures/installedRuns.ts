import { reading } from "../../drawing";
import { type Across, type FigureUnits, figure } from "../../sheet";
import { beltFits } from "../beltFits";
import { beltLoads } from "../beltLoads";
import { beltRuns } from "../beltRuns";
import { type Difference, differencesOf, type FrontOf } from "../differences";
import { unitLoads } from "../unitLoads";
import { drawInstalled } from "./installedPlate";

type Front = Omit<FrontOf, "label">;

/** Every installation's front; that of the one shown alone, where no others are to be had. */
function frontsOf({ installations, ...here }: Front & Across<Front>): readonly FrontOf[] {
  const all = installations?.map(({ label, values }) => ({ label, ...values })) ?? [];
  return all.length > 0 ? all : [{ label: "As shown", ...here }];
}

/** Speeds and ratios follow from the teeth: the list keeps to what is built and what it carries. */
const follows = /^(?:speed|ratio)/;

function listed(fronts: readonly FrontOf[]): readonly Difference[] {
  return differencesOf(fronts).filter(({ what }) => !follows.test(what));
}

export const installedRuns = figure({
  key: "installedRuns",
  title: "The same engine, installed: its belts side by side",
  from: { beltRuns, beltFits, beltLoads, unitLoads },
  across: true,
  atRest: true,
  listed: true,
  describe: (at, units) => {
    const fronts = frontsOf(at);
    const each = fronts.map(({ label, beltRuns }) => {
      const lengths = beltRuns.flatMap(({ run }) => (run ? [run.length] : []));
      const longest = lengths.length > 0 ? `, the longest ${reading(units, "length", Math.max(...lengths), { digits: 4 })}` : "";
      const pulleys = beltRuns.reduce((sum, { members }) => sum + members.length, 0);
      return `${label}: ${beltRuns.length} ${beltRuns.length === 1 ? "belt" : "belts"} over ${pulleys} pulleys${longest}.`;
    });
    if (fronts.length === 1) return `${each[0]!} There is no other installation to hold beside it.`;
    const differences = listed(fronts);
    const parts = [...new Set(differences.map(({ of }) => of.toLowerCase()))];
    return [
      ...each,
      differences.length === 0
        ? "They are laid out alike."
        : `${differences.length === 1 ? "One thing differs" : `${differences.length} things differ`}, on ${parts.length === 1 ? "the" : `${parts.length} belts and units:`} ${parts.join(", ")}.`,
    ].join(" ");
  },
  draw: (at, frame) => {
    const fronts = frontsOf(at);
    return drawInstalled(fronts, listed(fronts), frame);
  },
  table: (at, units) => {
    const fronts = frontsOf(at);
    return {
      columns: ["Of", "What", ...fronts.map(({ label }) => label)],
      rows: listed(fronts).map((each) => [each.of, whatIn(each, units), ...numbersOf(each, units)]),
    };
  },
});

function numbersOf({ kind, values }: Difference, units: FigureUnits): readonly (string | number)[] {
  return values.map((value) => (typeof value === "string" || kind === undefined ? value : units.number(kind, value)));
}

/** What a row is about, with the unit that all its numbers share. */
function whatIn({ what, kind }: Difference, units: FigureUnits): string {
  const unit = kind === undefined ? "" : units.unit(kind);
  return unit === "" ? what : `${what}, ${unit}`;
}
