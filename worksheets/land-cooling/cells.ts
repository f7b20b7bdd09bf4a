import {
  type ClosedCircuit,
  type CoreAir,
  closedCircuit,
  columnWater,
  fanAndCore,
  limitingAirTemperature,
  radiatorPerformance,
  type TowerState,
  towerWater,
  volumeFlowForHeat,
} from "../../lib/cooling";
import { moistAir, water, wetBulbTemperature } from "../../lib/fluid";
import { cell, structure } from "../../lib/graph";
import type {
  Density,
  Fraction,
  MassFlow,
  Power,
  Ratio,
  RotationalSpeed,
  SpecificHeat,
  Temperature,
  TemperatureDifference,
  ThermalConductance,
  Velocity,
  VolumeFlow,
} from "../../lib/quantity";
import {
  ambientDensity,
  ambientHumidityRatio,
  ambientPressure,
  ambientTemperature,
  ratedPower,
  ratedSpeed,
} from "../brief/cells";
import { Later } from "../later";
import { ownEngine, roomHeat } from "../marine-cooling/balance";
import { coolantCapacityRate } from "../marine-cooling/circuitState";
import { jacketHeat, oilHeat } from "../marine-cooling/heats";
import { glycolShare, jacketFlow, jacketTemperature, thermostatOpens, thermostatSpan } from "../marine-cooling/inputs";
import {
  brakeHeatShare,
  cellAirRise,
  cellPipeShare,
  coreAirRise,
  coreFace,
  coreLoss,
  fanEfficiency,
  fanOpenFlow,
  fanRatio,
  fanShutOff,
  fanStatedSpeed,
  landCooledBy,
  radiatorAirStated,
  radiatorConductance,
  ramRecovery,
  supplyFlow,
  supplyLimit,
  towerApproach,
  towerConcentration,
  towerHeat,
  vehicleSpeed,
} from "./inputs";

/** Air for which fans and cores are measured. */
const standardDensity = 1.2 as Density;

/** Air's specific heat [J/(kg·K)], near 40 °C. */
const airHeat = 1007 as SpecificHeat;

const rated = {
  radiatorConductance,
  radiatorAirStated,
  coreLoss,
  coreFace,
  fanShutOff,
  fanOpenFlow,
  fanStatedSpeed,
  fanRatio,
  ramRecovery,
  coreAirRise,
  ambientTemperature,
  ambientPressure,
  ambientHumidityRatio,
};

interface Radiator {
  readonly radiatorConductance: ThermalConductance;
  readonly radiatorAirStated: VolumeFlow;
  readonly coreLoss: Parameters<typeof fanAndCore>[0]["coreLoss"];
  readonly coreFace: Parameters<typeof fanAndCore>[0]["face"];
  readonly fanShutOff: Parameters<typeof fanAndCore>[0]["fanShutOff"];
  readonly fanOpenFlow: VolumeFlow;
  readonly fanStatedSpeed: RotationalSpeed;
  readonly fanRatio: Ratio;
  readonly ramRecovery: Fraction;
  readonly coreAirRise: TemperatureDifference;
  readonly ambientTemperature: Temperature;
  readonly ambientPressure: Parameters<ReturnType<typeof moistAir>["density"]>[1];
  readonly ambientHumidityRatio: Ratio;
}

const airAt = (
  at: Radiator,
  engineSpeed: RotationalSpeed,
  speed: Velocity,
): CoreAir & { readonly density: Density } => {
  const inlet = (at.ambientTemperature + at.coreAirRise) as Temperature;
  const density = moistAir(at.ambientHumidityRatio).density(inlet, at.ambientPressure);
  const air = fanAndCore({
    fanShutOff: at.fanShutOff,
    fanOpenFlow: at.fanOpenFlow,
    fanRatedSpeed: at.fanStatedSpeed,
    fanSpeed: (engineSpeed * at.fanRatio) as RotationalSpeed,
    coreLoss: at.coreLoss,
    coreFlow: at.radiatorAirStated,
    face: at.coreFace,
    vehicleSpeed: speed,
    ramRecovery: at.ramRecovery,
    ratedDensity: standardDensity,
    density,
  });
  return { ...air, density };
};

export const coreAir = structure("coreAir", {
  label: "Air through the radiator's core",
  from: { ...rated, ratedSpeed, vehicleSpeed },
  compute: (at) => airAt(at, at.ratedSpeed, at.vehicleSpeed),
  formula:
    "\\Delta p_{f,0}\\left[\\left(\\frac{n_f}{n_{f,r}}\\right)^2 - \\left(\\frac{q}{q_{f,0}}\\right)^2\\right] + r_v\\,\\frac{\\rho v^2}{2} = \\Delta p_{core}\\left(\\frac{q}{q_k}\\right)^2",
  source: "affinity laws; Bernoulli's equation for the wind",
  assumptions: ["Fan and core stated for air of 1.2 kg/m³; both lose pressure in proportion to the density."],
});

export const coreAirFlow = cell("coreAirFlow", {
  label: "Air through the core",
  kind: "volumeFlow",
  symbol: "q",
  from: { coreAir },
  compute: ({ coreAir }) => coreAir.volumeFlow,
  formula: "q = q_k\\sqrt{\\frac{\\Delta p}{\\Delta p_{core}}}",
  source: "operating point of fan and core",
});

export const fanPower = cell("fanPower", {
  label: "Power that the fan takes",
  kind: "power",
  symbol: "P_{fan}",
  from: { coreAir, fanEfficiency },
  compute: ({ coreAir, fanEfficiency }) => (coreAir.airPower / fanEfficiency) as Power,
  formula: "P_{fan} = \\frac{\\Delta p_f\\,q}{\\eta_f}",
  source: "definition of efficiency",
  assumptions: ["Count it among the other accessories on the sheet of the drives, if the crank turns it."],
});

export const landHeat = cell("landHeat", {
  label: "Heat that the engine's water carries on land",
  kind: "power",
  hint: "heat",
  symbol: "Q_{land}",
  from: { jacketHeat, oilHeat },
  compute: ({ jacketHeat, oilHeat }) => (jacketHeat + oilHeat) as Power,
  formula: "Q_{land} = Q_j + Q_o",
  source: "first law",
  assumptions: ["The oil cooler stands in the jacket water; charge coolers are cooled by their own air."],
});

const circuitAt = (
  at: Radiator & {
    readonly landHeat: Power;
    readonly jacketFlow: VolumeFlow;
    readonly glycolShare: Fraction;
    readonly thermostatOpens: Temperature;
    readonly thermostatSpan: TemperatureDifference;
  },
  air: CoreAir & { readonly density: Density },
  control?: Fraction,
): ClosedCircuit => {
  const opens = at.thermostatOpens;
  const fullyOpen = (opens + at.thermostatSpan) as Temperature;
  const airMass = air.volumeFlow * air.density;
  return closedCircuit({
    heat: at.landHeat,
    capacityRate: coolantCapacityRate(at.jacketFlow, at.glycolShare, fullyOpen),
    flowRatio: 1 as Ratio,
    control: control ?? { opens, fullyOpen },
    arrangement: "crossflowUnmixed",
    // nearly all the resistance lies on the air's side; thin air counts by its mass
    exchanger: {
      conductance: at.radiatorConductance,
      coldShare: 0.85 as Fraction,
      coldExponent: 0.5,
      hotExponent: 0.8,
    },
    fouling: 0 as Ratio,
    coldInlet: (at.ambientTemperature + at.coreAirRise) as Temperature,
    coldCapacityRate: (airMass * airHeat) as ThermalConductance,
    coldRatio: (airMass / (at.radiatorAirStated * standardDensity)) as Ratio,
  });
};

const circuitFrom = { landHeat, jacketFlow, glycolShare, thermostatOpens, thermostatSpan };

export const radiatorCircuit = structure("radiatorCircuit", {
  label: "Engine water through the radiator",
  from: { ...rated, ...circuitFrom, coreAir, landCooledBy, jacketTemperature },
  compute: (at): ClosedCircuit => circuitAt(at, at.coreAir),
  formula: "Q_{land} = \\epsilon\\,C_{min}\\,(T_j - T_0 - \\Delta T_k)",
  source:
    "crossflow, both streams unmixed, W. M. Kays, A. L. London, Compact Heat Exchangers (from memory); energy balance",
  assumptions: [
    "85 % of the resistance lies on the air's side, and falls with the square root of its flow by mass (finned cores: 0.4 to 0.6): common practice, no source.",
  ],
  checks: ({ hot }, { landCooledBy, jacketTemperature }) =>
    landCooledBy === "radiator"
      ? [
          {
            component: "radiator",
            label: "Engine water on land",
            kind: "temperature",
            side: "most",
            value: hot,
            bound: jacketTemperature,
          },
        ]
      : [],
});

export const radiatorWater = cell("radiatorWater", {
  label: "Engine water would settle at, with the radiator",
  kind: "temperature",
  symbol: "T_{j,r}",
  from: { radiatorCircuit },
  compute: ({ radiatorCircuit }) => radiatorCircuit.hot,
  formula: "T_{j,r} = T_0 + \\Delta T_k + \\frac{Q_{land}}{\\epsilon\\,C_{min}(\\theta)}",
  source: "energy balance",
});

export const limitingAir = cell("limitingAir", {
  label: "Hottest day at which it stays at its limit",
  kind: "temperature",
  symbol: "T_{0,lim}",
  from: { ...rated, ...circuitFrom, coreAir, jacketTemperature },
  compute: (at) => limitingAirOf(at, at.coreAir, at.jacketTemperature),
  formula: "T_{0,lim} = T_{j,lim} - \\frac{Q_{land}}{\\epsilon\\,C_{min}} - \\Delta T_k",
  source: "energy balance, thermostat fully open",
  assumptions: ["Air flow and heat as on this day; hotter air is thinner, which costs a little more."],
});

function limitingAirOf(
  at: Parameters<typeof circuitAt>[0],
  air: CoreAir & { readonly density: Density },
  limit: Temperature,
  { hot }: ClosedCircuit = circuitAt(at, air, 1 as Fraction),
): Temperature {
  const performance = radiatorPerformance({
    heat: at.landHeat,
    coolantInlet: hot,
    airInlet: (at.ambientTemperature + at.coreAirRise) as Temperature,
  });
  return (limitingAirTemperature(performance, at.landHeat, limit) - at.coreAirRise) as Temperature;
}

/** Hottest day over the vehicle's speed, the engine at the promised power and speed. */
export interface LandCurvePoint {
  readonly speed: Velocity;
  readonly limitingAir: Temperature;
  readonly coolant: Temperature;
  readonly airFlow: VolumeFlow;
}

/** Vehicle speeds of the curve [m/s]: 0 to 120 km/h. */
const curveSpeeds = Array.from({ length: 7 }, (_, i) => ((i * 20) / 3.6) as Velocity);

export const landCurve = structure("landCurve", {
  label: "Radiator over the vehicle's speed",
  from: { ...rated, ...circuitFrom, ratedSpeed, jacketTemperature },
  compute: (at) => new Later("landCurve", at, landCurveOf),
  formula: "T_{0,lim}(v)",
  source: "energy balance; affinity laws",
  assumptions: ["Worked out when the hand rests."],
});

function landCurveOf(
  at: Parameters<typeof circuitAt>[0] & {
    readonly ratedSpeed: RotationalSpeed;
    readonly jacketTemperature: Temperature;
  },
): readonly LandCurvePoint[] {
  return curveSpeeds.map((speed) => {
    const air = airAt(at, at.ratedSpeed, speed);
    const open = circuitAt(at, air, 1 as Fraction);
    return {
      speed,
      limitingAir: limitingAirOf(at, air, at.jacketTemperature, open),
      // a thermostat that stands fully open changes nothing
      coolant: open.hot >= at.thermostatOpens + at.thermostatSpan ? open.hot : circuitAt(at, air).hot,
      airFlow: air.volumeFlow,
    };
  });
}

export const wetBulb = cell("wetBulb", {
  label: "Wet bulb of the air outside",
  kind: "temperature",
  symbol: "T_{wb}",
  from: { temperature: ambientTemperature, pressure: ambientPressure, humidityRatio: ambientHumidityRatio },
  compute: wetBulbTemperature,
  formula: "T_{wb} = T_0 - \\frac{h_v}{c}\\left[w_s(T_{wb}) - w_0\\right]",
  source: "ASHRAE Handbook Fundamentals, psychrometrics (from memory)",
});

export const cellHeat = cell("cellHeat", {
  label: "Heat into the cell's tower water",
  kind: "power",
  hint: "heat",
  symbol: "Q_t",
  from: { landHeat, ratedPower, brakeHeatShare },
  compute: ({ landHeat, ratedPower, brakeHeatShare }) => (landHeat + brakeHeatShare * ratedPower) as Power,
  formula: "Q_t = Q_{land} + s_{br} P_b",
  source: "first law",
});

export const tower = structure("tower", {
  label: "Tower and its water",
  from: { cellHeat, supplyFlow, wetBulb, towerHeat, towerApproach, towerConcentration, landCooledBy, supplyLimit },
  compute: (at): TowerState =>
    towerWater({
      heat: at.cellHeat,
      waterFlow: (at.supplyFlow * water.density(at.wetBulb)) as MassFlow,
      waterSpecificHeat: water.specificHeat(at.wetBulb),
      wetBulb: at.wetBulb,
      ratedApproach: at.towerApproach,
      ratedHeat: at.towerHeat,
      evaporatingShare: 0.85 as Fraction,
      concentration: at.towerConcentration,
    }),
  formula:
    "T_{t,c} = T_{wb} + \\Delta T_{t,r}\\,\\frac{Q_t}{Q_{t,r}}, \\qquad T_{t,h} = T_{t,c} + \\frac{Q_t}{\\dot m_t\\,c}",
  source: "energy balance; approach in proportion to the heat: common practice, no source",
  assumptions: ["85 % of the heat leaves by evaporation: common practice, no source."],
  checks: ({ hotWater }, { landCooledBy, supplyLimit }) =>
    landCooledBy === "column"
      ? [
          {
            component: "tower water",
            label: "Tower water leaving the cell",
            kind: "temperature",
            side: "most",
            value: hotWater,
            bound: supplyLimit,
          },
        ]
      : [],
});

export const towerCold = cell("towerCold", {
  label: "Tower water coming to the cell",
  kind: "temperature",
  symbol: "T_{t,c}",
  from: { tower },
  compute: ({ tower }) => tower.coldWater,
  formula: "T_{t,c} = T_{wb} + \\Delta T_{t,r}\\,\\frac{Q_t}{Q_{t,r}}",
  source: "common practice, no source; the tower's own curve goes before it",
});

export const towerHot = cell("towerHot", {
  label: "Tower water leaving the cell",
  kind: "temperature",
  symbol: "T_{t,h}",
  from: { tower },
  compute: ({ tower }) => tower.hotWater,
  formula: "T_{t,h} = T_{t,c} + \\frac{Q_t}{\\dot m_t\\,c}",
  source: "energy balance",
});

export const towerMakeUp = cell("towerMakeUp", {
  label: "Water to be filled in",
  kind: "volumeFlow",
  hint: "small",
  symbol: "\\dot V_{t,m}",
  from: { tower },
  compute: ({ tower }) => (tower.makeUp / water.density(288.15 as Temperature)) as VolumeFlow,
  formula: "\\dot V_{t,m} = \\frac{s_e\\,Q_t}{\\rho\\,h_v}\\,\\frac{z_{tw}}{z_{tw} - 1}",
  source: "energy balance; balance of salt",
});

export const columnFlow = cell("columnFlow", {
  label: "Tower water that the engine's column lets in",
  kind: "volumeFlow",
  hint: "coolant",
  symbol: "q_c",
  from: { landHeat, jacketTemperature, tower, supplyFlow },
  compute: ({ landHeat, jacketTemperature, tower }) => {
    const flow = columnWater({
      heat: landHeat,
      engineOutlet: jacketTemperature,
      supply: tower.coldWater,
      specificHeat: water.specificHeat(tower.coldWater),
    });
    return (flow / water.density(tower.coldWater)) as VolumeFlow;
  },
  formula: "q_c = \\frac{Q_{land}}{\\rho\\,c\\,(T_{j,lim} - T_{t,c})}",
  source: "energy balance of a mixing column",
  limits: [{ component: "mixing column", side: "most", bound: supplyFlow }],
});

export const cellAir = cell("cellAir", {
  label: "Air that carries the cell's heat away",
  kind: "volumeFlow",
  symbol: "q_{cell}",
  from: { roomHeat, ownEngine, cellPipeShare, cellAirRise, ambientDensity },
  compute: (at) =>
    volumeFlowForHeat({
      heat: (at.roomHeat + at.cellPipeShare * at.ownEngine.exhaustHeat) as Power,
      temperatureRise: at.cellAirRise,
      specificHeat: airHeat,
      density: at.ambientDensity,
    }),
  formula: "q_{cell} = \\frac{Q_r + s_{cp}\\,Q_{ex}}{\\rho_0\\,c\\,\\Delta T_c}",
  source: "energy balance",
  assumptions: ["The engine's own air comes on top, unless it is drawn from outside."],
});

/** Tower water over the load, as a share of the promised power. */
export interface TowerCurvePoint {
  readonly load: Fraction;
  readonly coldWater: Temperature;
  readonly hotWater: Temperature;
}

export const towerCurve = structure("towerCurve", {
  label: "Tower water over the load",
  from: { cellHeat, supplyFlow, wetBulb, towerHeat, towerApproach, towerConcentration },
  compute: (at): readonly TowerCurvePoint[] =>
    Array.from({ length: 11 }, (_, i) => {
      const load = (i / 10) as Fraction;
      const { coldWater, hotWater } = towerWater({
        heat: (load * at.cellHeat) as Power,
        waterFlow: (at.supplyFlow * water.density(at.wetBulb)) as MassFlow,
        waterSpecificHeat: water.specificHeat(at.wetBulb),
        wetBulb: at.wetBulb,
        ratedApproach: at.towerApproach,
        ratedHeat: at.towerHeat,
        evaporatingShare: 0.85 as Fraction,
        concentration: at.towerConcentration,
      });
      return { load, coldWater, hotWater };
    }),
  formula: "T_{t,h}(Q)",
  source: "energy balance",
  assumptions: ["Heat in proportion to the load."],
});
