import type { HeatSplit } from "../../lib/charge";
import { exhaustVapourFraction, exhaustVapourHeat, gearOilHeat } from "../../lib/cooling";
import { burntGas, type DieselFuel } from "../../lib/fluid";
import type { Fraction, Power, Temperature } from "../../lib/quantity";
import { heatBalanceOf, type SolvedEngine } from "./solvedEngine";

/** Where a part of the fuel's power ends: at the propeller, in the raw water, in the exhaust and the air, in the engine room. */
export type BalanceGoal = "work" | "sea" | "away" | "room";

export interface BalanceLine {
  readonly key: string;
  readonly name: string;
  readonly power: Power;
  readonly share: Fraction;
  readonly goal: BalanceGoal;
}

/** Where all the fuel's power goes, from the injectors to the shaft behind the gear. */
export interface MarineBalance {
  readonly fuel: Power;
  readonly lines: readonly BalanceLine[];
  /** fuel power less all lines [W]: 0 but for rounding */
  readonly unaccounted: Power;
  /** heat that the exhaust's vapour would give up by condensing, outside a balance of lower heating values [W] */
  readonly latent: Power;
}

/** What the split asks beside the solved point. */
export interface BalanceInputs {
  readonly split: HeatSplit;
  readonly gearEfficiency: Fraction;
  /** part of the fuel pump's power that the returning fuel carries as heat */
  readonly fuelReturnShare: Fraction;
  readonly fuel: DieselFuel;
  readonly ambientTemperature: Temperature;
}

/** The heat balance of a solved point of the engine, line by line, closed to rounding. */
export function balanceOf(engine: SolvedEngine, inputs: BalanceInputs): MarineBalance {
  const { parts, unaccounted } = heatBalanceOf(engine, inputs.split);
  const part = (key: string) => parts.find((each) => each.key === key)!.power as number;
  const mix = { excessAirRatio: engine.excessAirRatio, humidityRatio: engine.humidityRatio, fuel: inputs.fuel };
  const vapour = exhaustVapourHeat({
    gas: burntGas(mix),
    gasFlow: engine.exhaustFlow,
    vapourFraction: exhaustVapourFraction(mix),
    temperature: engine.pipeTemperature,
    ambientTemperature: inputs.ambientTemperature,
  });
  const gear = gearOilHeat({ power: part("brake") as Power, efficiency: inputs.gearEfficiency });
  const returned = inputs.fuelReturnShare * part("fuelPump");
  const rows: readonly (readonly [key: string, name: string, power: number, goal: BalanceGoal])[] = [
    ["shaft", "Shaft behind the gear", part("brake") - gear, "work"],
    ["accessories", "Accessories", part("accessories"), "away"],
    ["fuelPump", "Fuel pump", part("fuelPump") - returned, "away"],
    ["fuelReturn", "Returning fuel", returned, "sea"],
    ["gear", "Gear oil", gear, "sea"],
    ["jacket", "Jacket water", part("jacket"), "sea"],
    ["oil", "Engine oil", part("oil") + part("turbochargerLoss"), "sea"],
    ["intercooler", "Intercooler", engine.intercooler.heat, "sea"],
    ["aftercooler", "Aftercooler", engine.aftercooler.heat, "sea"],
    ["exhaustGas", "Exhaust, gas", part("exhaust") - vapour.sensible, "away"],
    ["exhaustVapour", "Exhaust, its moisture", vapour.sensible, "away"],
    ["radiation", "Radiation to the room", part("radiation"), "room"],
    ["blowerLoss", "Blower's gears", part("blowerLoss"), "room"],
  ];
  const fuel = engine.fuelPower;
  return {
    fuel,
    lines: rows.map(([key, name, power, goal]) => ({
      key,
      name,
      power: power as Power,
      share: (power / fuel) as Fraction,
      goal,
    })),
    unaccounted,
    latent: vapour.latent,
  };
}
