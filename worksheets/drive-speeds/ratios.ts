import { driveRatio } from "../../lib/drive";
import { cell } from "../../lib/graph";
import { frontBelts } from "./beltRuns";
import { membersOfRole } from "./frontBelts";
import { blowerDrivenTeeth, blowerDriverTeeth, rawWaterDrivenTeeth, rawWaterDriverTeeth } from "./inputs";

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
  from: { frontBelts },
  compute: ({ frontBelts }) => {
    const pump = membersOfRole(frontBelts, "fuelPump")[0];
    if (pump) return pump.ratio;
    throw new RangeError("fuel pump: no pulley of the table is the high-pressure fuel pump's; one must be");
  },
  formula: "i_f = \\frac{z_{crank}}{z_{pump}}",
  source: "ISO 5294 (from memory)",
  assumptions: ["If several fuel pumps are driven, the first counts."],
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
