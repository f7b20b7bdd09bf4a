import { share } from "../../drawing";
import { heatBalance } from "../../boost/cells";
import { fuelReturnHeat } from "../../fuel-delivery/cells";
import { figure } from "../../sheet";
import { gearHeat, seaHeat } from "../cells";
import { drawFlows } from "./flowPlate";

/** Where a part of the fuel's power ends. */
export type Goal = "away" | "sea";

export interface Flow {
  readonly key: string;
  readonly name: string;
  readonly power: number;
  readonly goal: Goal;
}

type Parts = readonly { readonly key: string; readonly power: number }[];

/** Parts of the heat balance in the order in which they leave the stream; what is left at its foot is the shaft's. */
export function flowsOf(
  parts: Parts,
  gear: number,
  fuelReturn: number,
): { readonly flows: readonly Flow[]; readonly shaft: number } {
  const power = (key: string) => parts.find((part) => part.key === key)?.power ?? 0;
  const flow = (key: string, name: string, amount: number, goal: Goal): Flow => ({ key, name, power: amount, goal });
  const flows = [
    flow("exhaust", "Exhaust gas", power("exhaust"), "away"),
    flow("radiation", "Radiation", power("radiation"), "away"),
    flow("blowerLoss", "Blower gears", power("blowerLoss"), "away"),
    flow("accessories", "Accessories", power("accessories"), "away"),
    flow("fuelPump", "Fuel pump", power("fuelPump") - fuelReturn, "away"),
    flow("fuelReturn", "Returning fuel", fuelReturn, "sea"),
    flow("chargeCoolers", "Charge coolers", power("chargeCoolers"), "sea"),
    flow("oil", "Engine oil", power("oil") + power("turbochargerLoss"), "sea"),
    flow("jacket", "Jacket water", power("jacket"), "sea"),
    flow("gear", "Gear oil", gear, "sea"),
  ];
  return { flows, shaft: power("brake") - gear };
}

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
      share(units, power / fuel),
      goal,
    ];
    return {
      columns: ["Part", `Power, ${units.unit("power", "heat")}`, "Share of the fuel", "Goes to"],
      rows: [
        row("Fuel", fuel, "–"),
        ...split.flows.map(({ name, power, goal }) => row(name, power, goal === "sea" ? "sea water" : "elsewhere")),
        row("Shaft behind the gear", split.shaft, "propeller"),
        row("Sea water, all together", seaHeat, "overboard"),
      ],
    };
  },
});
