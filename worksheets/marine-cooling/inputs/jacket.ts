import { choice } from "../../../lib/graph";
import { setting } from "../../setting";

export const jacketCooledBy = choice("jacketCooledBy", {
  label: "Jacket water cooled by",
  options: { exchanger: "an exchanger in the raw-water line", keel: "a keel cooler along the hull" },
  value: "exchanger",
});

export const jacketTemperature = setting("jacketTemperature", {
  label: "Jacket water leaving the engine, at most",
  symbol: "T_{j,lim}",
  kind: "temperature",
  unit: "°C",
  value: 86,
  span: [60, 110],
  step: 1,
});

export const jacketFlow = setting("jacketFlow", {
  label: "Jacket water flow at the promised speed",
  symbol: "q_j",
  kind: "volumeFlow",
  hint: "coolant",
  unit: "L/min",
  value: 460,
  span: [50, 2000],
  step: 10,
});

export const jacketPumpRise = setting("jacketPumpRise", {
  label: "Jacket pump's pressure rise at that flow",
  symbol: "\\Delta p_j",
  kind: "pressureDifference",
  hint: "boost",
  unit: "bar",
  value: 0.9,
  span: [0.1, 4],
  step: 0.1,
});

export const glycolShare = setting("glycolShare", {
  label: "Ethylene glycol in the jacket water, by volume",
  symbol: "\\phi_g",
  kind: "fraction",
  unit: "%",
  value: 40,
  span: [0, 60],
  step: 5,
});

export const thermostatOpens = setting("thermostatOpens", {
  label: "Thermostat begins to open",
  symbol: "T_{th,0}",
  kind: "temperature",
  unit: "°C",
  value: 71,
  span: [30, 95],
  step: 1,
});

export const thermostatSpan = setting("thermostatSpan", {
  label: "Thermostat fully open above that by",
  symbol: "\\Delta T_{th}",
  kind: "temperatureDifference",
  unit: "K",
  value: 12,
  span: [2, 25],
  step: 1,
});

export const jacketExchanger = setting("jacketExchanger", {
  label: "Jacket exchanger UA, clean",
  symbol: "UA_j",
  kind: "thermalConductance",
  unit: "kW/K",
  value: 5.25,
  span: [0.5, 60],
  step: 0.25,
  note: "Heat passed for each kelvin of mean temperature difference: clean, at its own flow and the sea-water flow stated; fouling and other flows are reckoned from there.",
});

export const keelCooler = setting("keelCooler", {
  label: "Keel cooler UA, as the boat will lie",
  symbol: "UA_k",
  kind: "thermalConductance",
  unit: "kW/K",
  value: 3.5,
  span: [0.2, 60],
  step: 0.1,
  note: "Take it for a boat pushing against a quay: way through the water multiplies it, paint and growth divide it.",
});
