import {
  britishThermalUnit,
  calorie,
  celsiusZero,
  fahrenheitStep,
  fahrenheitZero,
  foot,
  hour,
  pound,
} from "./definitions";
import { si, type UnitTable, us } from "./unit";

export const temperature = {
  K: si(1, "deg K"),
  "°C": { ...si(1, "C", "deg C"), offset: celsiusZero },
  "°F": { ...us(fahrenheitStep, "F", "deg F"), offset: fahrenheitZero },
  "°R": us(fahrenheitStep, "R", "deg R", "rankine"),
} satisfies UnitTable;

/** A step on the scale, so without offset. */
export const temperatureDifference = {
  K: si(1, "deg K", "ΔK"),
  "°C": { ...si(1, "C", "deg C", "Δ°C", "ΔC"), written: "K" },
  "°F": { ...us(fahrenheitStep, "F", "deg F", "ΔF", "°R", "R", "Δ°R"), written: "Δ°F" },
} satisfies UnitTable;

export const specificEnergy = {
  "J/kg": si(1),
  "kJ/kg": si(1e3, "J/g"),
  "MJ/kg": si(1e6),
  "Btu/lb": us(britishThermalUnit / pound, "Btu/lbm"),
} satisfies UnitTable;

export const specificHeat = {
  "J/(kg·K)": si(1, "J/kg/K", "J/(kg·°C)"),
  "kJ/(kg·K)": si(1e3, "kJ/kg/K", "kJ/(kg·°C)", "J/(g·K)"),
  "kcal/(kg·K)": si(1e3 * calorie, "kcal/(kg·°C)"),
  "Btu/(lb·°F)": us(
    britishThermalUnit / (pound * fahrenheitStep),
    "Btu/lb/°F",
    "Btu/lb/F",
    "Btu/(lb·F)",
    "Btu/(lb·°R)",
  ),
} satisfies UnitTable;

export const thermalConductivity = {
  "W/(m·K)": si(1, "W/m/K", "W/(m·°C)"),
  "Btu/(h·ft·°F)": us(britishThermalUnit / (hour * foot * fahrenheitStep), "Btu/h/ft/°F", "Btu/(h·ft·F)"),
} satisfies UnitTable;

export const thermalConductance = {
  "W/K": si(1, "W/°C"),
  "kW/K": si(1e3, "kW/°C"),
  "Btu/(h·°F)": us(britishThermalUnit / (hour * fahrenheitStep), "Btu/h/°F", "Btu/h/F", "Btu/(h·F)"),
  "Btu/(min·°F)": us(britishThermalUnit / (60 * fahrenheitStep), "Btu/min/°F", "Btu/min/F", "Btu/(min·F)"),
} satisfies UnitTable;

export const heatTransferCoefficient = {
  "W/(m²·K)": si(1, "W/m²/K", "W/(m²·°C)"),
  "kW/(m²·K)": si(1e3, "kW/m²/K", "kW/(m²·°C)"),
  "Btu/(h·ft²·°F)": us(britishThermalUnit / (hour * foot ** 2 * fahrenheitStep), "Btu/h/ft²/°F", "Btu/(h·ft²·F)"),
} satisfies UnitTable;

export const foulingResistance = {
  "m²·K/W": si(1, "m²·°C/W"),
  "h·ft²·°F/Btu": us((hour * foot ** 2 * fahrenheitStep) / britishThermalUnit, "h·ft²·F/Btu"),
} satisfies UnitTable;

export const heatFlux = {
  "W/m²": si(1),
  "kW/m²": si(1e3),
  "MW/m²": si(1e6),
  "Btu/(h·ft²)": us(britishThermalUnit / (hour * foot ** 2), "Btu/h/ft²"),
} satisfies UnitTable;
