import { isRefusal, type ValuesOf } from "../../../lib/graph";
import { ratedPower, ratedSpeed } from "../../brief/cells";
import { share } from "../../drawing";
import { type FigureUnits, figure } from "../../sheet";
import { marineBalance } from "../balance";
import { flowsAlong, flowsLoad, flowsSpeed } from "../inputs/flows";
import type { MarineBalance } from "../balanceOf";
import { balanceThere } from "../balanceRuns";
import { curveWords, limitWords } from "./curveWords";
import { drawFlows } from "./flowPlate";
import { flowsOf, powerTo } from "./flows";
import { notDrawn } from "./notDrawn";

const from = { marineBalance, balanceThere, flowsAlong, flowsSpeed, flowsLoad, ratedPower, ratedSpeed };
type At = ValuesOf<typeof from>;

/** The promised power has its balance at hand; any other point is solved when the hand rests. */
const isElsewhere = ({ flowsAlong, flowsSpeed, flowsLoad }: Pick<At, "flowsAlong" | "flowsSpeed" | "flowsLoad">) =>
  flowsAlong !== "propeller" || flowsSpeed !== 1 || flowsLoad !== 1;

interface Shown {
  readonly speed: number;
  readonly brakePower: number;
  readonly balance: MarineBalance;
  /** names of the match's limits that are passed there; the sheet of the match tells them for the promised power */
  readonly passed?: readonly string[];
}

/** The balance at the point chosen, or in words why there is none. */
function shownBalance(at: At): Shown | string {
  if (!isElsewhere(at)) return { balance: at.marineBalance, speed: at.ratedSpeed, brakePower: at.ratedPower };
  const there = at.balanceThere.get();
  if (isRefusal(there)) return there.words;
  return "refused" in there ? there.refused : there;
}

/** Where the engine stands: two short lines. */
const placeWords = (at: At, { speed, brakePower }: Shown, units: FigureUnits): readonly [string, string] => {
  const curve = isElsewhere(at) ? curveWords(at, units).replace(/^the /, "") : "promised power";
  return [
    curve.replace(/^./, (first) => first.toUpperCase()),
    `${units.text("rotationalSpeed", speed)}, ${units.text("power", brakePower)} brake`,
  ];
};

const goals = { work: "propeller", sea: "sea water", room: "engine room", away: "elsewhere" } as const;

export const heatFlows = figure({
  key: "heatFlows",
  title: "Where the fuel's energy goes",
  atRest: isElsewhere,
  from,
  describe: (at, units) => {
    const shown = shownBalance(at);
    if (typeof shown === "string") return `Not drawn: ${units.refusal(shown)}`;
    const { fuel, lines, latent, unaccounted } = shown.balance;
    const { passed = [] } = shown;
    const flows = flowsOf(lines);
    const text = (power: number) => units.text("power", power, "heat");
    const part = (power: number) => `${text(power)} (${share(units, power / fuel)})`;
    const where = isElsewhere(at) ? ` on ${curveWords(at, units)}` : "";
    return [
      `At ${units.text("rotationalSpeed", shown.speed)}${where}, of ${text(fuel)} in the fuel ${part(powerTo(flows, "work"))} leaves at the shaft behind the gear, and the sea water carries ${part(powerTo(flows, "sea"))}.`,
      `All parts together leave ${Math.abs(unaccounted) < 1e-6 * fuel ? "nothing" : text(unaccounted)} over.`,
      ...(passed.length > 0
        ? [`There the parts are past a limit of the match: ${limitWords(passed)}.`]
        : []),
      `The vapour in the exhaust holds ${text(latent)} more, which the lower heating value leaves out.`,
    ].join(" ");
  },
  draw: (at, { width, units }) => {
    const shown = shownBalance(at);
    if (typeof shown === "string") return notDrawn(units.refusal(shown), width);
    const place = placeWords(at, shown, units);
    return drawFlows({ flows: flowsOf(shown.balance.lines), place, units, width });
  },
  table: (at, units) => {
    const shown = shownBalance(at);
    const columns = [
      "Part",
      ["Power", units.unit("power", "heat")],
      ["Share of the fuel", units.unit("fraction")],
      "Goes to",
    ] as const;
    if (typeof shown === "string") return { columns, rows: [] };
    const { fuel, lines } = shown.balance;
    const flows = flowsOf(lines);
    const row = (name: string, power: number, goal: string) => [
      name,
      units.number("power", power, "heat"),
      units.number("fraction", power / fuel),
      goal,
    ];
    const sea = powerTo(flows, "sea");
    return {
      columns,
      rows: [
        row("Fuel", fuel, "–"),
        ...flows.filter(({ goal }) => goal !== "work").map(({ name, power, goal }) => row(name, power, goals[goal])),
        row("Shaft behind the gear", powerTo(flows, "work"), goals.work),
        ...(sea > 0 ? [row("Sea water, all together", sea, "overboard")] : []),
      ],
    };
  },
});
