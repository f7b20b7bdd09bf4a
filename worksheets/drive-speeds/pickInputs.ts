import { choice } from "../../lib/graph";
import { setting } from "../setting";

export const pickRole = choice("pickRole", {
  label: "Pick pulleys and belt for",
  options: {
    blower: "the blower",
    hydraulicPump: "the hydraulic pump",
    fuelPump: "the high-pressure fuel pump",
    alternator: "the alternator",
    rawWaterPump: "the raw-water pump",
  },
  value: "blower",
});

export const pickRatio = setting("pickRatio", {
  label: "Ratio wanted",
  symbol: "i_w^*",
  kind: "ratio",
  unit: "",
  value: 1.85,
  span: [0.2, 5],
  step: 0.01,
});

export const pickTolerance = setting("pickTolerance", {
  label: "The ratio may be off by",
  symbol: "x_i",
  kind: "fraction",
  unit: "%",
  value: 2,
  span: [0.1, 15],
  step: 0.1,
});

export const pickCrankFewest = setting("pickCrankFewest", {
  label: "Crank pulley, fewest teeth to look at",
  symbol: "z_{k,min}",
  kind: "count",
  unit: "",
  value: 28,
  span: [18, 120],
  step: 1,
});

export const pickCrankMost = setting("pickCrankMost", {
  label: "Crank pulley, most teeth to look at",
  symbol: "z_{k,max}",
  kind: "count",
  unit: "",
  value: 60,
  span: [18, 120],
  step: 1,
});
