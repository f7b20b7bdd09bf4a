import { choice } from "../../../lib/graph";
import { setting } from "../../setting";

export const exchangerSeaFlow = setting("exchangerSeaFlow", {
  label: "Sea-water flow for which UA and losses are stated",
  symbol: "q_{w,r}",
  kind: "volumeFlow",
  hint: "coolant",
  unit: "L/min",
  value: 300,
  span: [50, 3000],
  step: 10,
  note: "Each exchanger's UA and each loss along the line hold for this flow through it.",
});

export const seaSideShare = setting("seaSideShare", {
  label: "Resistance to heat that lies on the sea's side",
  symbol: "s_w",
  kind: "fraction",
  unit: "%",
  value: 50,
  span: [10, 90],
  step: 5,
  note: "About half for water against water, a tenth to a third against oil or air: common practice, no source.",
});

export const foulingResistance = setting("foulingResistance", {
  label: "Fouling of the tubes before they are next cleaned",
  symbol: "R_f",
  kind: "foulingResistance",
  unit: "m²·K/W",
  value: 0.0001,
  span: [0, 0.001],
  step: 0.00001,
  note: "Often 0.0001 for sea water below 50 °C and 0.0002 above: Incropera et al., table 11.1, from memory. A warm harbour passes that within a season.",
});

export const cleanCoefficient = setting("cleanCoefficient", {
  label: "Overall coefficient of clean tubes",
  symbol: "U_0",
  kind: "heatTransferCoefficient",
  unit: "W/(m²·K)",
  value: 1200,
  span: [100, 5000],
  step: 50,
  note: "Tells how much surface stands behind a UA, and so how hard the fouling counts; 800 to 1700 for water against water: Incropera et al., table 11.2, from memory.",
});

export const tubeMaterial = choice("tubeMaterial", {
  label: "Tubes that sea water runs in",
  options: {
    copperNickel90: "90/10 copper–nickel",
    copperNickel70: "70/30 copper–nickel",
    aluminiumBrass: "aluminium brass",
    titanium: "titanium",
    other: "other, by the velocity allowed in the pipe",
  },
  value: "copperNickel90",
});
