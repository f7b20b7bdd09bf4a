import {
  type CircuitStation,
  exhaustMixSaturated,
  exhaustMixWithoutEvaporation,
  exhaustVapourFraction,
  gearOilHeat,
  heatCapacityRate,
  massFlowForHeat,
  pipeVelocity,
  ratedCircuit,
  seriesCircuit,
} from "../../lib/cooling";
import { burntGas, fuelSpecificHeat, glycolCoolant, seaWater } from "../../lib/fluid";
import { cell, structure } from "../../lib/graph";
import type {
  Density,
  MassFlow,
  Power,
  RotationalSpeed,
  SpecificHeat,
  Temperature,
  TemperatureDifference,
  ThermalConductance,
  VolumeFlow,
} from "../../lib/quantity";
import { excessAirRatioMet } from "../air-demand/cells";
import {
  aftercoolerHeat,
  blowerInletTemperature,
  blowerOutletTemperature,
  compressorOutletTemperature,
  exhaustFlow,
  heatBalance,
  intercoolerHeat,
  manifoldTemperature,
  turbineOutletTemperature,
} from "../boost/cells";
import { ambientHumidityRatio, ambientPressure, maximumSpeed, ratedPower } from "../brief/cells";
import { rawWaterDriveRatio } from "../drive-speeds/ratios";
import { fuelReturnFlow, fuelReturnHeat } from "../fuel-delivery/cells";
import { fuelTemperature } from "../fuel-delivery/inputs";
import { fuelInUse } from "../fuel-delivery/pumpWork";
import {
  dischargeLimit,
  exhaustHose,
  exhaustVelocityLimit,
  fuelCooler,
  fuelReturnLimit,
  gearCooler,
  gearEfficiency,
  gearOilFlow,
  gearOilTemperature,
  glycolShare,
  jacketExchanger,
  jacketFlow,
  jacketTemperature,
  oilCooler,
  oilDensity,
  oilFlow,
  oilSpecificHeat,
  oilTemperature,
  rawWaterBore,
  rawWaterHighestSpeed,
  rawWaterVelocityLimit,
  salinity,
  seaTemperature,
  wetExhaustLimit,
} from "./inputs";
import { rawWaterFlow, rawWaterInlet, seaCapacityRate } from "./rawWater";

/** Heat of one line of the heat balance. */
const heatOf = (balance: { readonly parts: readonly { key: string; power: Power }[] }, key: string): Power =>
  balance.parts.find((part) => part.key === key)!.power;

/** Water in an open line boils about here. */
const boilingSeaWater = 371 as Temperature;

const celsius = (temperature: Temperature) => `${(temperature - 273.15).toFixed(1)} °C`;

const capacity = (flow: VolumeFlow, density: Density, specificHeat: SpecificHeat) =>
  heatCapacityRate((flow * density) as MassFlow, specificHeat);

export const jacketHeat = cell("jacketHeat", {
  label: "Heat into the jacket water",
  kind: "power",
  hint: "heat",
  symbol: "Q_j",
  from: { heatBalance },
  compute: ({ heatBalance }) => heatOf(heatBalance, "jacket"),
  formula: "Q_j = (1 - \\lambda_{wo} - \\lambda_{wr})\\,\\lambda_w\\,\\dot m_f H_u + (1 - \\lambda_{fo})\\,P_f",
  source: "first law; shares of wall and friction heat are the build's own",
});

export const oilHeat = cell("oilHeat", {
  label: "Heat into the engine oil",
  kind: "power",
  hint: "heat",
  symbol: "Q_o",
  from: { heatBalance },
  compute: ({ heatBalance }) => (heatOf(heatBalance, "oil") + heatOf(heatBalance, "turbochargerLoss")) as Power,
  formula:
    "Q_o = \\lambda_{wo}\\,\\lambda_w\\,\\dot m_f H_u + \\lambda_{fo}\\,P_f + P_c\\left(\\frac{1}{\\eta_m} - 1\\right)",
  source: "first law; the turbochargers' bearings are cooled by the engine's oil",
});

export const gearHeat = cell("gearHeat", {
  label: "Heat into the gear oil",
  kind: "power",
  hint: "heat",
  symbol: "Q_g",
  from: { power: ratedPower, efficiency: gearEfficiency },
  compute: gearOilHeat,
  formula: "Q_g = (1 - \\eta_g)\\,P_b",
  source: "first law",
});

export const seaHeat = cell("seaHeat", {
  label: "Heat that the sea water must carry away",
  kind: "power",
  hint: "heat",
  symbol: "Q_{sea}",
  from: { jacketHeat, oilHeat, gearHeat, fuelReturnHeat, intercoolerHeat, aftercoolerHeat },
  compute: (heats) => Object.values(heats).reduce<number>((sum, heat) => sum + heat, 0) as Power,
  formula: "Q_{sea} = Q_2 + Q_1 + Q_f + Q_g + Q_o + Q_j",
  source: "sum of heats, in the order in which the sea water meets them",
});

/** Sea water through everything it cools, with the temperatures that the chosen exchangers settle at. */
export interface MarineCircuit {
  readonly stations: readonly CircuitStation[];
  /** sea water before, between and behind the exchangers [K] */
  readonly seaTemperatures: readonly Temperature[];
}

export const marineCircuit = structure("marineCircuit", {
  label: "Sea water through the exchangers in series",
  from: {
    rawWaterInlet,
    seaCapacityRate,
    aftercoolerHeat,
    blowerOutletTemperature,
    manifoldTemperature,
    intercoolerHeat,
    compressorOutletTemperature,
    blowerInletTemperature,
    fuelReturnHeat,
    fuelReturnFlow,
    fuelInUse,
    fuelTemperature,
    fuelCooler,
    gearHeat,
    gearOilFlow,
    gearCooler,
    oilHeat,
    oilFlow,
    oilDensity,
    oilSpecificHeat,
    oilCooler,
    jacketHeat,
    jacketFlow,
    glycolShare,
    jacketTemperature,
    jacketExchanger,
  },
  compute: (at): MarineCircuit => {
    const coolant = glycolCoolant(at.glycolShare);
    const charges = seriesCircuit({
      seaTemperature: at.rawWaterInlet,
      seaCapacityRate: at.seaCapacityRate,
      exchangers: [
        ...chargeCooler({
          name: "Aftercooler",
          heat: at.aftercoolerHeat,
          hotInlet: at.blowerOutletTemperature,
          hotOutlet: at.manifoldTemperature,
          seaInlet: at.rawWaterInlet,
        }),
        ...chargeCooler({
          name: "Intercooler",
          heat: at.intercoolerHeat,
          hotInlet: at.compressorOutletTemperature,
          hotOutlet: at.blowerInletTemperature,
          seaInlet: (at.rawWaterInlet + at.aftercoolerHeat / at.seaCapacityRate) as Temperature,
        }),
      ],
    });
    const rest = ratedCircuit({
      seaTemperature: charges.discharge,
      seaCapacityRate: at.seaCapacityRate,
      exchangers: [
        {
          name: "Fuel cooler",
          arrangement: "counterflow",
          conductance: at.fuelCooler,
          heat: at.fuelReturnHeat,
          hotCapacityRate: heatCapacityRate(
            at.fuelReturnFlow,
            fuelSpecificHeat(at.fuelInUse, at.fuelTemperature),
          ),
        },
        {
          name: "Gear oil cooler",
          arrangement: "counterflow",
          conductance: at.gearCooler,
          heat: at.gearHeat,
          hotCapacityRate: capacity(at.gearOilFlow, at.oilDensity, at.oilSpecificHeat),
        },
        {
          name: "Oil cooler",
          arrangement: "counterflow",
          conductance: at.oilCooler,
          heat: at.oilHeat,
          hotCapacityRate: capacity(at.oilFlow, at.oilDensity, at.oilSpecificHeat),
        },
        {
          name: "Jacket exchanger",
          arrangement: "counterflow",
          conductance: at.jacketExchanger,
          heat: at.jacketHeat,
          hotCapacityRate: capacity(
            at.jacketFlow,
            coolant.density(at.jacketTemperature),
            coolant.specificHeat(at.jacketTemperature),
          ),
        },
      ],
    });
    return {
      stations: [...charges.stations, ...rest.stations],
      seaTemperatures: [...charges.seaTemperatures, ...rest.seaTemperatures.slice(1)],
    };
  },
  formula: "T_{w,k+1} = T_{w,k} + \\frac{Q_k}{C_w}, \\qquad Q_k = \\epsilon_k\\,C_{min,k}\\,(T_{hot,k} - T_{w,k})",
  source: "energy balance; W. M. Kays, A. L. London, Compact Heat Exchangers (from memory)",
  assumptions: [
    "The sea water passes aftercooler, intercooler, fuel, gear oil, oil and jacket in that order, all in counterflow; ε_k follows from UA and both streams, C_min,k is the smaller stream's.",
    "Each hot side runs as hot as its exchanger makes it; a thermostat would hold the jacket at its own temperature as long as this is the lower one.",
    "Charge coolers are given by their effectiveness; the UA listed for them is what that takes.",
  ],
});

/** A cooler's charge, and the sea water that would cool it. */
interface ChargeCooling {
  readonly name: string;
  readonly heat: Power;
  readonly hotInlet: Temperature;
  readonly hotOutlet: Temperature;
  readonly seaInlet: Temperature;
}

/** What the charge asks of a cooler in the sea's line; nothing, if the cooler takes out no heat. */
function chargeCooler({ name, heat, hotInlet, hotOutlet, seaInlet }: ChargeCooling) {
  if (heat === 0) return [];
  if (heat < 0) {
    throw new RangeError(
      `marineCircuit: the ${name.toLowerCase()} warms the charge by ${(-heat / 1000).toFixed(1)} kW, since the charge arrives colder than the cooling stream; set its effectiveness to 0 or leave it out`,
    );
  }
  if (hotOutlet <= seaInlet) {
    throw new RangeError(
      `marineCircuit: the ${name.toLowerCase()} brings the charge to ${celsius(hotOutlet)}, which sea water of ${celsius(seaInlet)} cannot do; with this sea the charge stays warmer, or the cooler needs more water`,
    );
  }
  const cooler = {
    name,
    arrangement: "counterflow" as const,
    heat,
    hotCapacityRate: (heat / (hotInlet - hotOutlet)) as ThermalConductance,
    hotTemperature: hotInlet,
    hotTemperatureAt: "inlet" as const,
  };
  return [cooler];
}

const hotSide = (circuit: MarineCircuit, name: string) =>
  circuit.stations.find((station) => station.name === name)!.hotInlet;

export const jacketReaches = cell("jacketReaches", {
  label: "Jacket water would settle at",
  kind: "temperature",
  symbol: "T_j",
  from: { marineCircuit },
  compute: ({ marineCircuit }) => hotSide(marineCircuit, "Jacket exchanger"),
  formula: "T_j = T_{w,j} + \\frac{Q_j}{\\epsilon_j\\,C_{min,j}}",
  source: "energy balance",
  assumptions: [
    "T_w is the sea water's temperature on reaching it, and C_min its smaller stream's heat capacity rate.",
  ],
  limits: [{ component: "jacket exchanger", side: "most", bound: jacketTemperature }],
});

export const oilReaches = cell("oilReaches", {
  label: "Engine oil would settle at",
  kind: "temperature",
  symbol: "T_o",
  from: { marineCircuit },
  compute: ({ marineCircuit }) => hotSide(marineCircuit, "Oil cooler"),
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
  compute: ({ marineCircuit }) => hotSide(marineCircuit, "Gear oil cooler"),
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
  compute: ({ marineCircuit }) => marineCircuit.stations.find(({ name }) => name === "Fuel cooler")!.hotOutlet,
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
  compute: ({ marineCircuit }) => marineCircuit.seaTemperatures.at(-1)!,
  formula: "T_w = T_{w,0} + \\frac{Q_{sea}}{C_w}",
  source: "energy balance",
  limits: [{ component: "raw-water line", side: "most", bound: dischargeLimit }],
});

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

/** Exhaust and the sea water led into it. */
export const injection = structure("injection", {
  label: "Exhaust and the sea water led into it",
  from: {
    exhaustFlow,
    turbineOutletTemperature,
    rawWaterFlow,
    rawWaterDischarge,
    seaTemperature,
    salinity,
    ambientPressure,
    excessAirRatioMet,
    ambientHumidityRatio,
    fuelInUse,
  },
  compute: (at) => {
    if (at.rawWaterDischarge >= boilingSeaWater) {
      throw new RangeError(
        `injection: the sea water would reach ${celsius(at.rawWaterDischarge)} in the exchangers and boil; give it more flow or less heat`,
      );
    }
    const mix = {
      excessAirRatio: at.excessAirRatioMet,
      humidityRatio: at.ambientHumidityRatio,
      fuel: at.fuelInUse,
    };
    const sea = seaWater(at.salinity);
    return {
      gas: burntGas(mix),
      gasFlow: at.exhaustFlow,
      gasTemperature: at.turbineOutletTemperature,
      // The pump draws its volume at the sea's temperature; the mass stays.
      waterFlow: (at.rawWaterFlow * sea.density(at.seaTemperature)) as MassFlow,
      waterTemperature: at.rawWaterDischarge,
      waterSpecificHeat: sea.specificHeat(at.seaTemperature),
      pressure: at.ambientPressure,
      vapourFraction: exhaustVapourFraction(mix),
    };
  },
  formula: "\\text{inputs gathered}",
  source: "definition",
  assumptions: ["All the raw water is led into the exhaust; what an anti-siphon valve lets off does not cool it."],
});

export const wetExhaustTemperature = cell("wetExhaustTemperature", {
  label: "Wet exhaust, nothing evaporating",
  kind: "temperature",
  symbol: "T_x",
  from: { injection },
  compute: ({ injection }) => exhaustMixWithoutEvaporation(injection).temperature,
  formula: "\\dot m_{ex}\\left[h_{ex}(T_7) - h_{ex}(T_x)\\right] = \\rho_w\\,q_w\\,c_w\\,(T_x - T_w)",
  source: "energy balance",
  assumptions: ["Lay out by this one: evaporation cools further only where the spray reaches all the gas."],
  limits: [{ component: "wet exhaust hose", side: "most", bound: wetExhaustLimit }],
});

export const wetExhaustSaturated = cell("wetExhaustSaturated", {
  label: "Wet exhaust, gas saturated with vapour",
  kind: "temperature",
  symbol: "T_{x,s}",
  from: { injection },
  compute: ({ injection }) => exhaustMixSaturated(injection).temperature,
  formula: "\\text{as } T_x \\text{, with evaporation to saturation at } p_0",
  source: "energy balance and Dalton's law",
});

export const wetExhaustVelocity = cell("wetExhaustVelocity", {
  label: "Gas velocity in the wet hose",
  kind: "velocity",
  hint: "duct",
  symbol: "v_x",
  from: { injection, exhaustHose },
  compute: ({ injection, exhaustHose }) => pipeVelocity(exhaustMixSaturated(injection).gasVolumeFlow, exhaustHose),
  formula: "v_x = \\frac{4\\,q_x}{\\pi\\,d_x^2}",
  source: "definition",
  assumptions: [
    "q_x is the volume flow of the saturated gas at the barometer's pressure.",
    "The water runs along the bottom and takes a few per cent of the bore, which is left out.",
  ],
  limits: [{ component: "wet exhaust hose", side: "most", bound: exhaustVelocityLimit }],
});
