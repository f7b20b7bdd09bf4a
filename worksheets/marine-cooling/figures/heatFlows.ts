import { share } from "../../drawing";
import { heatBalance } from "../../boost/cells";
import { fuelReturnHeat } from "../../fuel-delivery/cells";
import { figure } from "../../sheet";
import { gearHeat, seaHeat } from "../cells";
import { drawFlows } from "./flowPlate";
import { flowsOf } from "./flows";

const whole = ({ flows, shaft }: ReturnType<typeof flowsOf>) =>
  shaft + flows.reduce((sum, { power }) => sum + power, 0);

export const heatFlows = figure({
  key: "heatFlows",
  title: "Where the fuel's energy goes",
  from: { heatBalance, gearHeat, fuelReturnHeat, seaHeat },
  describe: ({ heatBalance, gearHeat, fuelReturnHeat, seaHeat }, units) => {
    const split = flowsOf(heatBalance.parts, gearHeat, fuelReturnHeat);
    const fuel = whole(split);
    return `Of ${units.text("power", fuel, "heat")} in the fuel ${units.text("power", split.shaft, "heat")} (${share(units, split.shaft / fuel)}) leaves at the shaft behind the gear, and the sea water carries ${units.text("power", seaHeat, "heat")} (${share(units, seaHeat / fuel)}).`;
  },
  draw: ({ heatBalance, gearHeat, fuelReturnHeat, seaHeat }, { width, units }) => {
    const split = flowsOf(heatBalance.parts, gearHeat, fuelReturnHeat);
    return drawFlows({ ...split, fuel: whole(split), sea: seaHeat, units, width });
  },
  table: ({ heatBalance, gearHeat, fuelReturnHeat, seaHeat }, units) => {
    const split = flowsOf(heatBalance.parts, gearHeat, fuelReturnHeat);
    const fuel = whole(split);
    const row = (name: string, power: number, goal: string) => [
      name,
      units.number("power", power, "heat"),
      units.number("fraction", power / fuel),
      goal,
    ];
    return {
      columns: ["Part", ["Power", units.unit("power", "heat")], ["Share of the fuel", units.unit("fraction")], "Goes to"],
      rows: [
        row("Fuel", fuel, "–"),
        ...split.flows.map(({ name, power, goal }) => row(name, power, goal === "sea" ? "sea water" : "elsewhere")),
        row("Shaft behind the gear", split.shaft, "propeller"),
        row("Sea water, all together", seaHeat, "overboard"),
      ],
    };
  },
});
