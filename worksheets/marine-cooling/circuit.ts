import { cell, structure } from "../../lib/graph";
import type { Temperature, TemperatureDifference } from "../../lib/quantity";
import { sinkRise } from "../boost/inputs";
import { circuitSetup, circuitState } from "./heats";
import {
  chargeCooledBy,
  dischargeLimit,
  fuelReturnLimit,
  gearOilTemperature,
  jacketTemperature,
  loopTemperature,
  oilTemperature,
} from "./inputs";
import { type MarineNetwork, networkAt } from "./networkAt";
import { rawWaterInlet } from "./rawWater";

export const marineCircuit = structure("marineCircuit", {
  label: "Sea water through the line, and the circuits that it cools",
  from: { circuitSetup, circuitState },
  compute: ({ circuitSetup, circuitState }): MarineNetwork => networkAt(circuitSetup, circuitState),
  formula:
    "T_{w,k+1} = T_{w,k} + \\frac{\\sum Q_k}{C_w}, \\qquad Q_k = \\epsilon_k\\,C_{min,k}\\,(T_{hot,k} - T_{w,k}), \\qquad \\frac{1}{UA} = \\frac{1}{UA_0}\\left[s_w\\left(\\frac{q_{w,r}}{q_w}\\right)^{0.8} + (1 - s_w)\\left(\\frac{q_{h,r}}{q_h}\\right)^{0.6} + R_f\\,U_0\\right]",
  source:
    "energy balance; W. M. Kays, A. L. London, Compact Heat Exchangers; Dittus and Boelter (1930), Žukauskas (1972) for the exponents (all from memory)",
  assumptions: [
    "All exchangers in counterflow; the sea water passes them in the order of the line, an element's share of it where it has one.",
    "Charge coolers are given by their effectiveness; the UA listed for them is what that takes.",
    "A charge-water loop is mixed to its temperature by its thermostat as long as the sea allows.",
  ],
});

export const networkResidual = cell("networkResidual", {
  label: "Energy along the line closed to within",
  kind: "ratio",
  symbol: "r_w",
  from: { marineCircuit },
  compute: ({ marineCircuit }) => marineCircuit.residual,
  formula: "r_w = \\max\\frac{\\left|s_k\\,C_w\\,\\Delta T_{w,k} - Q_k\\right|}{Q_{sea}}",
  source: "definition",
});

export const seaHeat = cell("seaHeat", {
  label: "Heat that the raw water must carry away",
  kind: "power",
  hint: "heat",
  symbol: "Q_{sea}",
  from: { marineCircuit },
  compute: ({ marineCircuit }) => marineCircuit.heat,
  formula: "Q_{sea} = \\sum Q_k",
  source: "sum of heats along the line",
  assumptions: ["What a keel cooler passes does not come along here, nor what no element of the line takes up."],
});

const hotSide = (network: MarineNetwork, key: "fuelCooler" | "gearCooler" | "oilCooler", name: string) => {
  const station = network.nodes.find((node) => node.key === key)?.station;
  if (!station)
    throw new RangeError(`rawWaterLine: there is no ${name} in the line to take this heat out; add its row`);
  return station;
};

const chargeNode = ({ nodes }: MarineNetwork) =>
  nodes.find(({ key, station }) => (key === "aftercooler" || key === "intercooler") && station);

export const jacketReaches = cell("jacketReaches", {
  label: "Jacket water leaving the engine",
  kind: "temperature",
  symbol: "T_j",
  from: { marineCircuit },
  compute: ({ marineCircuit }) => jacketOf(marineCircuit).hot,
  formula:
    "T_j = T_{w,j} + \\frac{Q_j}{\\epsilon_j\\,C_{min,j}(\\theta)}, \\qquad \\theta = \\frac{T_j - T_{th,0}}{\\Delta T_{th}}",
  source: "energy balance; the thermostat opens in a straight line",
  assumptions: ["θ is the share of the flow that passes the exchanger, 0 to 1; the rest goes round by the bypass."],
  limits: [{ component: "jacket exchanger", side: "most", bound: jacketTemperature }],
});

export const thermostatOpening = cell("thermostatOpening", {
  label: "Thermostat open",
  kind: "fraction",
  symbol: "\\theta",
  from: { marineCircuit },
  compute: ({ marineCircuit }) => jacketOf(marineCircuit).opening,
  formula: "\\theta = \\max\\left(0,\\ \\min\\left(1,\\ \\frac{T_j - T_{th,0}}{\\Delta T_{th}}\\right)\\right)",
  source: "definition",
  assumptions: ["At 100 % there is no room left: any more heat, warmer sea or fouling makes the jacket hotter."],
});

export const jacketReturns = cell("jacketReturns", {
  label: "Jacket water coming back to the engine",
  kind: "temperature",
  symbol: "T_{j,b}",
  from: { marineCircuit },
  compute: ({ marineCircuit }) => jacketOf(marineCircuit).mixed,
  formula: "T_{j,b} = T_j - \\frac{Q_j}{C_j}",
  source: "energy balance",
});

export function jacketOf(network: MarineNetwork) {
  if (network.jacket) return network.jacket;
  throw new RangeError(
    "rawWaterLine: no jacket exchanger stands in the line, and the jacket is not cooled by a keel cooler; add its row",
  );
}

export const oilReaches = cell("oilReaches", {
  label: "Engine oil would settle at",
  kind: "temperature",
  symbol: "T_o",
  from: { marineCircuit },
  compute: ({ marineCircuit }) => hotSide(marineCircuit, "oilCooler", "oil cooler").hotInlet,
  formula: "T_o = T_{w,o} + \\frac{Q_o}{\\epsilon_o\\,C_{min,o}}",
  source: "energy balance",
  assumptions: [
    "T_w is the sea water's temperature on reaching it, and C_min its smaller stream's heat capacity rate.",
  ],
  limits: [{ component: "oil cooler", side: "most", bound: oilTemperature }],
});

export const gearOilReaches = cell("gearOilReaches", {
  label: "Gear oil would settle at",
  kind: "temperature",
  symbol: "T_g",
  from: { marineCircuit },
  compute: ({ marineCircuit }) => hotSide(marineCircuit, "gearCooler", "gear oil cooler").hotInlet,
  formula: "T_g = T_{w,g} + \\frac{Q_g}{\\epsilon_g\\,C_{min,g}}",
  source: "energy balance",
  assumptions: [
    "T_w is the sea water's temperature on reaching it, and C_min its smaller stream's heat capacity rate.",
  ],
  limits: [{ component: "gear oil cooler", side: "most", bound: gearOilTemperature }],
});

export const fuelReaches = cell("fuelReaches", {
  label: "Fuel going back to the tank would settle at",
  kind: "temperature",
  symbol: "T_{fr}",
  from: { marineCircuit },
  compute: ({ marineCircuit }) => hotSide(marineCircuit, "fuelCooler", "fuel cooler").hotOutlet,
  formula: "T_{fr} = T_{w,f} + \\frac{Q_f}{\\epsilon_f\\,C_{min,f}} - \\frac{Q_f}{\\dot m_b\\,c_f}",
  source: "energy balance",
  assumptions: [
    "T_w is the sea water's temperature on reaching it, and C_min its smaller stream's heat capacity rate.",
  ],
  limits: [{ component: "fuel cooler", side: "most", bound: fuelReturnLimit }],
});

export const rawWaterDischarge = cell("rawWaterDischarge", {
  label: "Sea water leaving the last exchanger",
  kind: "temperature",
  symbol: "T_w",
  from: { marineCircuit },
  compute: ({ marineCircuit }) => marineCircuit.discharge,
  formula: "T_w = T_{w,0} + \\frac{Q_{sea}}{C_w}",
  source: "energy balance",
  limits: [{ component: "raw-water line", side: "most", bound: dischargeLimit }],
});

export const chargeWaterRise = cell("chargeWaterRise", {
  label: "Water reaching the charge coolers, warmer than the sea by",
  kind: "temperatureDifference",
  symbol: "\\Delta T_{w,c}",
  from: { marineCircuit, rawWaterInlet },
  compute: ({ marineCircuit, rawWaterInlet }) => {
    const node = chargeNode(marineCircuit);
    return ((node ? node.seaInlet : rawWaterInlet) - rawWaterInlet) as TemperatureDifference;
  },
  formula: "\\Delta T_{w,c} = T_{w,c} - T_{sea}",
  source: "energy balance",
  assumptions: [
    "The charge path was reckoned with the rise ΔT_s of its own: where the coolers stand behind others, raise that to what is read here.",
    "The first charge cooler in the line counts.",
  ],
  limits: [{ component: "charge coolers", side: "most", bound: sinkRise }],
});

export const loopHolds = structure("loopHolds", {
  label: "Coldest loop water that this sea allows at the charge coolers",
  from: { marineCircuit, chargeCooledBy, loopTemperature },
  compute: ({ marineCircuit, chargeCooledBy }): { readonly coldest: Temperature | undefined } => {
    if (chargeCooledBy === "loop" && marineCircuit.loopColdest === undefined) {
      throw new RangeError("rawWaterLine: the charge coolers' loop has no cooler in the line; add its row");
    }
    return { coldest: marineCircuit.loopColdest };
  },
  formula: "T_{lt} = T_{lt,hot} - \\frac{Q_1 + Q_2}{C_{lt}} \\text{ with the thermostat fully open}",
  source: "energy balance",
  assumptions: ["With sea water itself in the coolers there is no loop, and nothing to hold."],
  checks: ({ coldest }, { loopTemperature }) =>
    coldest === undefined
      ? []
      : [
          {
            component: "charge-water loop",
            label: "Coldest loop water at the charge coolers",
            kind: "temperature",
            side: "most",
            value: coldest,
            bound: loopTemperature,
          },
        ],
});
