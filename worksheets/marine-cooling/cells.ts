import {
  boilingMargin as boilingMarginOf,
  expansionVolume as expansionVolumeOf,
  massFlowForHeat,
  pipeVelocity,
  pumpPointAtSpeed,
} from "../../lib/cooling";
import { glycolCoolant, seaWater } from "../../lib/fluid";
import { cell, structure } from "../../lib/graph";
import type {
  Power,
  RotationalSpeed,
  Temperature,
  TemperatureDifference,
  Velocity,
  VolumeFlow,
} from "../../lib/quantity";
import { ambientPressure, idleSpeed, maximumSpeed, ratedSpeed } from "../brief/cells";
import { rawWaterDriveRatio } from "../drive-speeds/ratios";
import { jacketReaches, jacketReturns, seaHeat } from "./circuit";
import { elementNames } from "./elementNames";
import {
  boilingMarginLeast,
  capPressure,
  circuitVolume,
  dischargeLimit,
  expansionRoom,
  fillTemperature,
  glycolShare,
  jacketFlow,
  jacketPumpRise,
  rawWaterBore,
  rawWaterHighestSpeed,
  rawWaterVelocityLimit,
  salinity,
  seaTemperature,
  tubeMaterial,
} from "./inputs";
import { rawWaterFlow, rawWaterInlet, rawWaterState } from "./rawWater";
import { tubeVelocityLimits } from "./tubeMaterials";

const celsius = (temperature: Temperature) => `${(temperature - 273.15).toFixed(1)} °C`;

export const rawWaterNeeded = cell("rawWaterNeeded", {
  label: "Raw-water flow that the discharge limit asks for",
  kind: "volumeFlow",
  hint: "coolant",
  symbol: "q_{w,0}",
  from: { seaHeat, dischargeLimit, rawWaterInlet, seaTemperature, salinity },
  compute: ({ seaHeat, dischargeLimit, rawWaterInlet, seaTemperature, salinity }) => {
    if (dischargeLimit <= rawWaterInlet) {
      throw new RangeError(
        `rawWaterNeeded: the sea water arrives at ${celsius(rawWaterInlet)}, and may not leave above ${celsius(dischargeLimit)}; no flow would do: raise the limit`,
      );
    }
    const sea = seaWater(salinity);
    const massFlow = massFlowForHeat({
      heat: seaHeat,
      temperatureRise: (dischargeLimit - rawWaterInlet) as TemperatureDifference,
      specificHeat: sea.specificHeat(seaTemperature),
    });
    return (massFlow / sea.density(seaTemperature)) as VolumeFlow;
  },
  formula: "q_{w,0} = \\frac{Q_{sea}}{\\rho_w\\,c_w\\,(T_{w,lim} - T_{w,0})}",
  source: "energy balance",
  limits: [{ component: "raw-water pump", side: "most", bound: rawWaterFlow }],
});

export const rawWaterVelocity = cell("rawWaterVelocity", {
  label: "Velocity in the raw-water pipe",
  kind: "velocity",
  symbol: "v_w",
  from: { rawWaterFlow, rawWaterBore },
  compute: ({ rawWaterFlow, rawWaterBore }) => pipeVelocity(rawWaterFlow, rawWaterBore),
  formula: "v_w = \\frac{4\\,q_w}{\\pi\\,d_w^2}",
  source: "definition",
  limits: [{ component: "raw-water pipe", side: "most", bound: rawWaterVelocityLimit }],
});

export const rawWaterSpeed = cell("rawWaterSpeed", {
  label: "Raw-water pump speed at the highest engine speed",
  kind: "rotationalSpeed",
  symbol: "n_{w,max}",
  from: { maximumSpeed, rawWaterDriveRatio },
  compute: ({ maximumSpeed, rawWaterDriveRatio }) => (maximumSpeed * rawWaterDriveRatio) as RotationalSpeed,
  formula: "n_{w,max} = N_{max}\\,i_w",
  source: "definition",
  limits: [{ component: "raw-water pump", side: "most", bound: rawWaterHighestSpeed }],
});

export const tubeVelocities = structure("tubeVelocities", {
  label: "Velocity in the exchangers' tubes",
  from: { rawWaterState, tubeMaterial, rawWaterVelocityLimit },
  compute: ({ rawWaterState, tubeMaterial, rawWaterVelocityLimit }) => ({
    limit: (tubeVelocityLimits[tubeMaterial] ?? rawWaterVelocityLimit) as Velocity,
    rows: rawWaterState.stated.rawWaterLine.flatMap(({ element }, i) => {
      const { velocity } = rawWaterState.rows[i]!;
      return velocity === undefined ? [] : [{ name: elementNames[element], velocity }];
    }),
  }),
  formula: "v_k = \\frac{s_k\\,q_w}{A_k}",
  source: "definition; limits by material: common practice, no source, and public pages on copper–nickel",
  assumptions: ["Sand, sulphides of polluted harbours and sharp bends call for less; below about 1 m/s silt settles."],
  checks: ({ limit, rows }) =>
    rows.map(({ name, velocity }) => ({
      component: name.toLowerCase(),
      label: `Sea water in the tubes of the ${name.toLowerCase()}`,
      kind: "velocity" as const,
      side: "most" as const,
      value: velocity,
      bound: limit,
    })),
});

export const jacketFlowAtIdle = cell("jacketFlowAtIdle", {
  label: "Jacket water flow at idle",
  kind: "volumeFlow",
  hint: "coolant",
  symbol: "q_{j,idle}",
  from: { jacketFlow, jacketPumpRise, ratedSpeed, idleSpeed },
  compute: ({ jacketFlow, jacketPumpRise, ratedSpeed, idleSpeed }) =>
    pumpPointAtSpeed(
      { speed: ratedSpeed, volumeFlow: jacketFlow, pressureRise: jacketPumpRise, power: 0 as Power },
      idleSpeed,
    ).volumeFlow,
  formula: "q_{j,idle} = q_j\\,\\frac{N_0}{N}",
  source: "affinity laws, any textbook on pumps",
});

export const jacketRiseAtTop = cell("jacketRiseAtTop", {
  label: "Jacket pump's pressure rise at the highest speed",
  kind: "pressureDifference",
  hint: "boost",
  symbol: "\\Delta p_{j,max}",
  from: { jacketFlow, jacketPumpRise, ratedSpeed, maximumSpeed },
  compute: ({ jacketFlow, jacketPumpRise, ratedSpeed, maximumSpeed }) =>
    pumpPointAtSpeed(
      { speed: ratedSpeed, volumeFlow: jacketFlow, pressureRise: jacketPumpRise, power: 0 as Power },
      maximumSpeed as RotationalSpeed,
    ).pressureRise,
  formula: "\\Delta p_{j,max} = \\Delta p_j\\left(\\frac{N_{max}}{N}\\right)^2",
  source: "affinity laws, any textbook on pumps",
});

export const boilingMargin = cell("boilingMargin", {
  label: "Jacket water below boiling by",
  kind: "temperatureDifference",
  symbol: "\\Delta T_b",
  from: { glycolShare, ambientPressure, capPressure, jacketReaches },
  compute: ({ glycolShare, ambientPressure, capPressure, jacketReaches }) => {
    const margin = boilingMarginOf({
      coolant: glycolCoolant(glycolShare),
      ambientPressure,
      capPressure,
      temperature: jacketReaches,
    });
    if (margin < 0) {
      throw new RangeError(
        `boilingMargin: the jacket water would reach ${celsius(jacketReaches)} and boil ${(-margin).toFixed(1)} K before that; give it a larger exchanger, more sea water or a higher cap pressure`,
      );
    }
    return margin;
  },
  formula: "\\Delta T_b = T_{boil}(p_0 + p_{cap}) - T_j",
  source: "Raoult's law for the water in the coolant; IAPWS R7-97",
  assumptions: [
    "Bulk temperature; metal round an exhaust port is hotter, and the pump's suction side lies below cap pressure.",
  ],
  limits: [{ component: "jacket circuit", side: "least", bound: boilingMarginLeast }],
});

export const expansionVolume = cell("expansionVolume", {
  label: "Coolant gains from cold to hot",
  kind: "volume",
  hint: "coolant",
  symbol: "\\Delta V_j",
  from: { glycolShare, circuitVolume, fillTemperature, jacketReaches, jacketReturns },
  compute: ({ glycolShare, circuitVolume, fillTemperature, jacketReaches, jacketReturns }) =>
    expansionVolumeOf({
      coolant: glycolCoolant(glycolShare),
      circuitVolume,
      coldTemperature: fillTemperature,
      hotTemperature: ((jacketReaches + jacketReturns) / 2) as Temperature,
    }),
  formula: "\\Delta V_j = V_j\\left(\\frac{\\rho(T_{fill})}{\\rho(\\bar T_j)} - 1\\right)",
  source: "conservation of mass",
  limits: [{ component: "header tank", side: "most", bound: expansionRoom }],
});
