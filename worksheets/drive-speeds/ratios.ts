import { driveRatio, ratioOfRole } from "../../lib/drive";
import { cell } from "../../lib/graph";
import { accessoryRun, blowerDrivenTeeth, blowerDriverTeeth, rawWaterDrivenTeeth, rawWaterDriverTeeth } from "./inputs";

export const blowerDriveRatio = cell("blowerDriveRatio", {
  label: "Blower drive ratio",
  kind: "ratio",
  symbol: "i_b",
  from: { driverTeeth: blowerDriverTeeth, drivenTeeth: blowerDrivenTeeth },
  compute: driveRatio,
  formula: "i_b = \\frac{z_1}{z_2}",
  source: "ISO 5294 (from memory): a toothed belt does not slip",
});

export const fuelPumpDriveRatio = cell("fuelPumpDriveRatio", {
  label: "Fuel pump drive ratio",
  kind: "ratio",
  symbol: "i_f",
  from: { accessoryRun },
  compute: ({ accessoryRun }) => ratioOfRole(accessoryRun, "fuelPump"),
  formula: "i_f = \\frac{z_{crank}}{z_{pump}}",
  source: "ISO 5294 (from memory)",
  assumptions: ["Teeth from the accessory belt; if it drives several fuel pumps, the first counts."],
});

export const rawWaterDriveRatio = cell("rawWaterDriveRatio", {
  label: "Raw-water pump drive ratio",
  kind: "ratio",
  symbol: "i_w",
  from: { driverTeeth: rawWaterDriverTeeth, drivenTeeth: rawWaterDrivenTeeth },
  compute: driveRatio,
  formula: "i_w = \\frac{z_3}{z_4}",
  source: "ISO 5294 (from memory)",
});
