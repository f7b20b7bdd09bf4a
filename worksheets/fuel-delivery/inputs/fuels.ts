import { type DieselFuel, marineDistillate, methylEster, paraffinicDiesel, roadDiesel } from "../../../lib/fluid";
import { choice, choiceColumn, table, textColumn } from "../../../lib/graph";
import { column, setting } from "../../setting";

/** Fuels to choose from, as the page calls them. */
export const fuelNames = {
  roadDiesel: "road diesel",
  marineDistillate: "marine distillate",
  paraffinicDiesel: "paraffinic diesel",
  methylEster: "methyl ester",
  own: "a fuel of our own",
} as const;

export const fuelChoice = choice("fuel", { label: "Fuel", options: fuelNames, value: "roadDiesel" });

const fuelRow = (fuel: keyof typeof fuelNames, properties: DieselFuel, source: string) => ({
  fuel,
  density: properties.densityAt15C,
  viscosity: properties.kinematicViscosityAt40C,
  hydrogen: properties.hydrogenToCarbon,
  oxygen: properties.oxygenToCarbon,
  heatingValue: properties.lowerHeatingValue,
  source,
});

export const fuelTable = table("fuelTable", {
  label: "Fuels and their properties",
  note: "Typical values; overwrite them with those of the supplier's certificate. The first row of the fuel chosen counts.",
  columns: {
    fuel: choiceColumn({ label: "Fuel", options: fuelNames }),
    density: column({ label: "Density at 15 °C", kind: "density", unit: "kg/m³", span: [750, 950], step: 1, hint: "fuel" }),
    viscosity: column({ label: "Viscosity at 40 °C", kind: "kinematicViscosity", unit: "mm²/s", span: [1, 20], step: 0.1 }),
    hydrogen: column({ label: "Hydrogen to carbon, atoms", kind: "ratio", unit: "", span: [1, 2.5], step: 0.01 }),
    oxygen: column({ label: "Oxygen to carbon, atoms", kind: "ratio", unit: "", span: [0, 0.3], step: 0.005 }),
    heatingValue: column({
      label: "Lower heating value",
      kind: "specificEnergy",
      hint: "fuel",
      unit: "MJ/kg",
      span: [30, 46],
      step: 0.1,
    }),
    source: textColumn({ label: "Source", longest: 60 }),
  },
  brief: ["fuel", "density", "viscosity", "heatingValue", "source"],
  rows: [1, 12],
  value: [
    fuelRow("roadDiesel", roadDiesel, "inside EN 590's limits; typical, from memory"),
    fuelRow("marineDistillate", marineDistillate, "inside ISO 8217 DMA's; typical, from memory"),
    fuelRow("paraffinicDiesel", paraffinicDiesel, "inside EN 15940's limits; typical, from memory"),
    fuelRow("methylEster", methylEster, "inside EN 14214's limits; typical, from memory"),
    fuelRow("own", roadDiesel, "put your certificate's numbers here"),
  ],
});

export const fuelTemperature = setting("fuelTemperature", {
  label: "Fuel temperature at the high-pressure pump",
  symbol: "T_f",
  kind: "temperature",
  unit: "°C",
  value: 48,
  span: [-10, 90],
  step: 1,
  note: "Warm fuel is thinner and takes more volume for the same heat.",
});
