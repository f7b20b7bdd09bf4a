import { drainingTankTemperature } from "../../lib/fuel";
import { cell, structure } from "../../lib/graph";
import type { Fraction, Mass, Power, Temperature, Time } from "../../lib/quantity";
import { fuelFlow } from "../air-demand/cells";
import { ambientTemperature } from "../brief/cells";
import { fuelReturnHeat, fuelState } from "./cells";
import { meanFuelFlow, runTime, usableFuel } from "./consumption";
import { returnCooler, tankLimit, tankReserve, tankStart, tankWalls } from "./inputs";

export const fuelCoolerLoad = cell("fuelCoolerLoad", {
  label: "Heat that the fuel cooler must take out",
  kind: "power",
  hint: "heat",
  symbol: "Q_k",
  from: { fuelReturnHeat, returnCooler },
  compute: ({ fuelReturnHeat, returnCooler }) => (fuelReturnHeat * returnCooler) as Power,
  formula: "Q_k = \\epsilon_t\\,Q_f",
  source: "definition; in a boat the sea water takes all of it, see marine cooling",
});

/** Fuel temperature in the tank after a time. */
export interface TankMoment {
  readonly time: Time;
  readonly temperature: Temperature;
  /** fuel left, over the full tank [–] */
  readonly level: Fraction;
}

const moments = 16;

export const tankCourse = structure("tankCourse", {
  label: "The tank over a run",
  from: {
    fuelReturnHeat,
    fuelCoolerLoad,
    fuelFlow,
    meanFuelFlow,
    runTime,
    usableFuel,
    tankReserve,
    tankWalls,
    tankStart,
    ambientTemperature,
    fuelState,
  },
  compute: (at): readonly TankMoment[] => {
    const startMass = (at.usableFuel / (1 - at.tankReserve)) as Mass;
    const tank = {
      heat: (((at.fuelReturnHeat - at.fuelCoolerLoad) * at.meanFuelFlow) / at.fuelFlow) as Power,
      conductance: at.tankWalls,
      surroundings: at.ambientTemperature,
      startMass,
      burnt: at.meanFuelFlow,
      specificHeat: at.fuelState.specificHeat,
      startTemperature: at.tankStart,
    };
    return Array.from({ length: moments + 1 }, (_, i) => {
      const time = ((i / moments) * at.runTime) as Time;
      return {
        time,
        temperature: drainingTankTemperature(tank, time),
        level: (1 - (at.meanFuelFlow * time) / startMass) as Fraction,
      };
    });
  },
  formula: "m\\,c_f\\,\\frac{dT_t}{dt} = (Q_f - Q_k)\\,\\frac{\\dot m_{day}}{\\dot m_f} - UA_t\\,(T_t - T_0)",
  source: "first law of a stirred tank of falling mass",
  assumptions: [
    "Return heat follows the fuel burnt; the tank is well mixed and its walls stay wetted.",
    "Sun on the tank, and a hot exhaust beside it, are left out.",
  ],
});

export const tankTemperatureAtEnd = cell("tankTemperatureAtEnd", {
  label: "Fuel in the tank when the reserve is reached",
  kind: "temperature",
  symbol: "T_t",
  from: { tankCourse },
  compute: ({ tankCourse }) => tankCourse.at(-1)!.temperature,
  formula: "T_t = T_t(t_{run})",
  source: "first law",
  assumptions: ["Hold it against the temperature T_f at the pump, which is your own number."],
  limits: [{ component: "fuel tank", side: "most", bound: tankLimit }],
});
