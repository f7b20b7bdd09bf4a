import { share } from "../../drawing";
import { figure } from "../../sheet";
import { marineBalance } from "../balance";
import { drawFlows } from "./flowPlate";
import { flowsOf, powerTo } from "./flows";

const goals = { work: "propeller", sea: "sea water", room: "engine room", away: "elsewhere" } as const;

export const heatFlows = figure({
  key: "heatFlows",
  title: "Where the fuel's energy goes",
  from: { marineBalance },
  describe: ({ marineBalance: { fuel, lines, latent } }, units) => {
    const flows = flowsOf(lines);
    const text = (power: number) => units.text("power", power, "heat");
    const part = (power: number) => `${text(power)} (${share(units, power / fuel)})`;
    return [
      `Of ${text(fuel)} in the fuel ${part(powerTo(flows, "work"))} leaves at the shaft behind the gear, and the sea water carries ${part(powerTo(flows, "sea"))}.`,
      `The vapour in the exhaust holds ${text(latent)} more, which the lower heating value leaves out.`,
    ].join(" ");
  },
  draw: ({ marineBalance }, { width, units }) => drawFlows({ flows: flowsOf(marineBalance.lines), units, width }),
  table: ({ marineBalance: { fuel, lines } }, units) => {
    const flows = flowsOf(lines);
    const row = (name: string, power: number, goal: string) => [
      name,
      units.number("power", power, "heat"),
      units.number("fraction", power / fuel),
      goal,
    ];
    const sea = powerTo(flows, "sea");
    return {
      columns: [
        "Part",
        ["Power", units.unit("power", "heat")],
        ["Share of the fuel", units.unit("fraction")],
        "Goes to",
      ],
      rows: [
        row("Fuel", fuel, "–"),
        ...flows.filter(({ goal }) => goal !== "work").map(({ name, power, goal }) => row(name, power, goals[goal])),
        row("Shaft behind the gear", powerTo(flows, "work"), goals.work),
        ...(sea > 0 ? [row("Sea water, all together", sea, "overboard")] : []),
      ],
    };
  },
});
