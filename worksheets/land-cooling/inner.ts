import { evaporationHeat } from "../../lib/cooling";
import { water } from "../../lib/fluid";
import type { Temperature } from "../../lib/quantity";
import { type Inner, inner, unbound } from "../inner";
import { ownEngine } from "../marine-cooling/balance";
import { cellAir, columnFlow, coreAir, coreAirFlow, evaporatingShare, fanPower, limitingAir, radiatorWater, tower, towerHot, towerMakeUp, wetBulb } from "./cells";
import { supplyFlow } from "./inputs";
import { airHeat } from "./radiatorAt";

export const landInner: readonly Inner[] = [
  unbound([coreAirFlow], "\\Delta p", "pressure across the core: fan and the vehicle's speed together"),
  inner([fanPower], "\\Delta p_f", "pressure rise of the fan", "pressureDifference", { coreAir }, (at) => at.coreAir.fanRise, "duct"),
  inner([fanPower], "q", "air through fan and core", "volumeFlow", { coreAir }, (at) => at.coreAir.volumeFlow),
  unbound([limitingAir, radiatorWater], "\\epsilon", "effectiveness of the radiator"),
  unbound([limitingAir], "C_{min}", "smaller heat capacity rate in the radiator, with the thermostat open"),
  unbound([radiatorWater], "\\theta", "opening of the thermostat"),
  unbound([wetBulb], "h_v", "heat of evaporation at the wet bulb"),
  unbound([wetBulb], "c", "specific heat of the moist air"),
  inner([towerHot], "\\dot m_t", "tower water, by mass", "massFlow", { supplyFlow, wetBulbCell: wetBulb }, (at) => at.supplyFlow * water.density(at.wetBulbCell)),
  inner([towerHot], "c", "specific heat of water", "specificHeat", { wetBulbCell: wetBulb }, (at) => water.specificHeat(at.wetBulbCell)),
  inner([towerMakeUp], "s_e", "part of the heat that leaves by evaporation", "fraction", {}, () => evaporatingShare),
  inner([towerMakeUp], "\\rho", "density of water", "density", {}, () => water.density(288.15 as Temperature)),
  inner([towerMakeUp], "h_v", "heat of evaporation near 30 °C", "specificEnergy", {}, () => evaporationHeat),
  inner([columnFlow], "\\rho", "density of the tower water", "density", { tower }, (at) => water.density(at.tower.coldWater)),
  inner([columnFlow], "c", "its specific heat", "specificHeat", { tower }, (at) => water.specificHeat(at.tower.coldWater)),
  inner([cellAir], "Q_{ex}", "heat in the exhaust", "power", { ownEngine }, (at) => at.ownEngine.exhaustHeat, "heat"),
  inner([cellAir], "c", "specific heat of air", "specificHeat", {}, () => airHeat),
];
