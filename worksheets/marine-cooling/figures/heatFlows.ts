import { share } from "../../drawing";
import { heatBalance } from "../../boost/cells";
import { fuelReturnHeat } from "../../fuel-delivery/cells";
import { figure } from "../../sheet";
import { gearHeat } from "../cells";
import { drawFlows } from "./flowPlate";
import { type Flow, flowsOf, powerTo } from "./flows";

const sum = (flows: readonly Flow[]) => flows.reduce((whole, { power }) => whole + power, 0);

const linesFrom = (at: {
  heatBalance: { parts: readonly { key: string; name: string; power: number }[] };
  gearHeat: number;
  fuelReturnHeat: number;
}): readonly Flow[] => {
  const power = (key: string) => at.heatBalance.parts.find((part) => part.key === key)?.power ?? 0;
  return flowsOf([
    { key: "shaft", name: "Shaft", power: power("brake") - at.gearHeat, goal: "work" },
    { key: "exhaustGas", name: "", power: power("exhaust"), goal: "away" },
    { key: "radiation", name: "", power: power("radiation"), goal: "away" },
    { key: "blowerLoss", name: "", power: power("blowerLoss"), goal: "away" },
    { key: "accessories", name: "", power: power("accessories"), goal: "away" },
    { key: "fuelPump", name: "", power: power("fuelPump") - at.fuelReturnHeat, goal: "away" },
    { key: "fuelReturn", name: "", power: at.fuelReturnHeat, goal: "sea" },
    { key: "aftercooler", name: "", power: power("chargeCoolers"), goal: "sea" },
    { key: "oil", name: "", power: power("oil") + power("turbochargerLoss"), goal: "sea" },
    { key: "jacket", name: "", power: power("jacket"), goal: "sea" },
    { key: "gear", name: "", power: at.gearHeat, goal: "sea" },
  ]);
};

const goals = { work: "propeller", sea: "sea water", room: "engine room", away: "elsewhere" } as const;

export const heatFlows = figure({
  key: "heatFlows",
  title: "Where the fuel's energy goes",
  from: { heatBalance, gearHeat, fuelReturnHeat },
  describe: (at, units) => {
    const flows = linesFrom(at);
    const fuel = sum(flows);
    const [work, sea] = [powerTo(flows, "work"), powerTo(flows, "sea")];
    const text = (power: number) => `${units.text("power", power, "heat")} (${share(units, power / fuel)})`;
    return `Of ${units.text("power", fuel, "heat")} in the fuel ${text(work)} leaves at the shaft behind the gear, and the sea water carries ${text(sea)}.`;
  },
  draw: (at, { width, units }) => drawFlows({ flows: linesFrom(at), units, width }),
  table: (at, units) => {
    const flows = linesFrom(at);
    const fuel = sum(flows);
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
