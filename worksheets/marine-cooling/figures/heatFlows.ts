import { isRefusal, type ValuesOf } from "../../../lib/graph";
import { ratedSpeed } from "../../brief/cells";
import { share } from "../../drawing";
import { figure } from "../../sheet";
import { marineBalance } from "../balance";
import { propellerCurve } from "../curve";
import { flowsSpeed } from "../inputs";
import { balanceAtSpeed, type SpeedBalance } from "./balanceAtSpeed";
import { drawFlows } from "./flowPlate";
import { flowsOf, powerTo } from "./flows";
import { notDrawn } from "./notDrawn";

const from = { marineBalance, propellerCurve, flowsSpeed, ratedSpeed };
type At = ValuesOf<typeof from>;

/** The promised power has its balance at hand; any other speed waits for the curve. */
const onCurve = ({ flowsSpeed }: At) => flowsSpeed < 1;

/** The balance at the speed chosen, or in words why there is none. */
function shownBalance(at: At): SpeedBalance | string {
  if (!onCurve(at)) return { ...at.marineBalance, speed: at.ratedSpeed };
  const curve = at.propellerCurve.get();
  if (isRefusal(curve)) return curve.words;
  return (
    balanceAtSpeed(curve, at.flowsSpeed * at.ratedSpeed) ??
    "at this speed the propeller's curve has no answer: it begins at idle; choose a higher speed."
  );
}

const goals = { work: "propeller", sea: "sea water", room: "engine room", away: "elsewhere" } as const;

export const heatFlows = figure({
  key: "heatFlows",
  title: "Where the fuel's energy goes",
  atRest: onCurve,
  from,
  describe: (at, units) => {
    const shown = shownBalance(at);
    if (typeof shown === "string") return `Not drawn: ${shown}`;
    const { speed, fuel, lines, latent } = shown;
    const flows = flowsOf(lines);
    const text = (power: number) => units.text("power", power, "heat");
    const part = (power: number) => `${text(power)} (${share(units, power / fuel)})`;
    return [
      `At ${units.text("rotationalSpeed", speed)}, of ${text(fuel)} in the fuel ${part(powerTo(flows, "work"))} leaves at the shaft behind the gear, and the sea water carries ${part(powerTo(flows, "sea"))}.`,
      `The vapour in the exhaust holds ${text(latent)} more, which the lower heating value leaves out.`,
    ].join(" ");
  },
  draw: (at, { width, units }) => {
    const shown = shownBalance(at);
    return typeof shown === "string"
      ? notDrawn(shown, width)
      : drawFlows({ flows: flowsOf(shown.lines), units, width });
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
    const flows = flowsOf(shown.lines);
    const row = (name: string, power: number, goal: string) => [
      name,
      units.number("power", power, "heat"),
      units.number("fraction", power / shown.fuel),
      goal,
    ];
    const sea = powerTo(flows, "sea");
    return {
      columns,
      rows: [
        row("Fuel", shown.fuel, "–"),
        ...flows.filter(({ goal }) => goal !== "work").map(({ name, power, goal }) => row(name, power, goals[goal])),
        row("Shaft behind the gear", powerTo(flows, "work"), goals.work),
        ...(sea > 0 ? [row("Sea water, all together", sea, "overboard")] : []),
      ],
    };
  },
});
