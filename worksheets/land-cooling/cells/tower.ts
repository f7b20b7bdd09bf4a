import { type TowerState, towerWater } from "../../../lib/cooling";
import { water, wetBulbTemperature } from "../../../lib/fluid";
import { cell, structure } from "../../../lib/graph";
import type { Fraction, MassFlow, Power, Temperature, VolumeFlow } from "../../../lib/quantity";
import { ambientHumidityRatio, ambientPressure, ambientTemperature, ratedPower } from "../../brief/cells";
import {
  brakeHeatShare,
  landCooledBy,
  supplyFlow,
  supplyLimit,
  towerApproach,
  towerConcentration,
  towerHeat,
} from "../inputs";
import { landHeat } from "./landHeat";

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

/** Part of the heat that leaves by evaporation; common practice, no source. */
export const evaporatingShare = 0.85 as Fraction;

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
      evaporatingShare,
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
        evaporatingShare,
        concentration: at.towerConcentration,
      });
      return { load, coldWater, hotWater };
    }),
  formula: "T_{t,h}(Q)",
  source: "energy balance",
  assumptions: ["Heat in proportion to the load."],
});
