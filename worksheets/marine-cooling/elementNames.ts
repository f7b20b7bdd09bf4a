import type { ElementKey } from "./inputs";

/** Elements of the raw-water line, as readers know them. */
export const elementNames: Readonly<Record<ElementKey, string>> = {
  strainer: "Strainer",
  pump: "Raw-water pump",
  fuelCooler: "Fuel cooler",
  gearCooler: "Gear oil cooler",
  aftercooler: "Aftercooler",
  intercooler: "Intercooler",
  chargeLoop: "Charge-water cooler",
  oilCooler: "Oil cooler",
  jacketExchanger: "Jacket exchanger",
  pipe: "Pipe",
};
