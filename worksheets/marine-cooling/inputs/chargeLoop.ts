import { choice } from "../../../lib/graph";
import { setting } from "../../setting";

export const chargeCooledBy = choice("chargeCooledBy", {
  label: "Charge coolers in a boat cooled by",
  options: { sea: "sea water itself", loop: "a low-temperature loop of fresh water" },
  value: "sea",
});

export const loopTemperature = setting("loopTemperature", {
  label: "Loop water reaching the charge coolers, held at",
  symbol: "T_{lt}",
  kind: "temperature",
  unit: "°C",
  value: 38,
  span: [15, 60],
  step: 1,
  note: "A thermostat holds it as long as the sea is cold enough; 36 to 40 °C is usual: common practice, no source.",
});

export const loopFlow = setting("loopFlow", {
  label: "Loop water flow",
  symbol: "q_{lt}",
  kind: "volumeFlow",
  hint: "coolant",
  unit: "L/min",
  value: 220,
  span: [20, 1500],
  step: 10,
});

export const loopCooler = setting("loopCooler", {
  label: "Loop's cooler UA, clean",
  symbol: "UA_{lt}",
  kind: "thermalConductance",
  unit: "kW/K",
  value: 14,
  span: [0.5, 60],
  step: 0.5,
});

export const chargeTemperatureLeast = setting("chargeTemperatureLeast", {
  label: "Charge in the manifold, at least",
  symbol: "T_{5,least}",
  kind: "temperature",
  unit: "°C",
  value: 5,
  span: [-10, 40],
  step: 1,
  note: "Colder charge lights late and knocks, and smokes white at light load: common practice, no source.",
});
