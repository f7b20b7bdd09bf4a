import { suctionHead, suctionHeadNeeded as suctionHeadNeededAt } from "../../lib/cooling";
import { seaWater } from "../../lib/fluid";
import { cell } from "../../lib/graph";
import type { Length, PressureDifference, Ratio } from "../../lib/quantity";
import { ambientPressure, ratedSpeed } from "../brief/cells";
import { rawWaterDriveRatio } from "../drive-speeds/ratios";
import { rawWaterPumpHeight, rawWaterStatedSpeed, salinity, seaTemperature, suctionHeadRequired } from "./inputs";
import { rawWaterState } from "./rawWater";

export const strainerLossNow = cell("strainerLossNow", {
  label: "Loss of the strainer as it is",
  kind: "pressureDifference",
  symbol: "\\Delta p_{str}",
  from: { rawWaterState },
  compute: ({ rawWaterState: { strainerLoss, rated, system } }) =>
    (strainerLoss * (rated.volumeFlow / system.referenceFlow) ** 2) as PressureDifference,
  formula: "\\Delta p_{str} = \\frac{\\Delta p_{str,r}}{(1 - b_s)^2}\\left(\\frac{q_w}{q_{w,r}}\\right)^2",
  source: "orifice flow",
});

export const suctionHeadNeeded = cell("suctionHeadNeeded", {
  label: "Suction head that the pump needs",
  kind: "length",
  hint: "duct",
  symbol: "NPSH",
  from: { suctionHeadRequired, ratedSpeed, rawWaterDriveRatio, rawWaterStatedSpeed },
  compute: ({ suctionHeadRequired, ratedSpeed, rawWaterDriveRatio, rawWaterStatedSpeed }) =>
    suctionHeadNeededAt(suctionHeadRequired, ((ratedSpeed * rawWaterDriveRatio) / rawWaterStatedSpeed) as Ratio),
  formula: "NPSH = NPSH_r\\left(\\frac{N\\,i_w}{n_{w,r}}\\right)^2",
  source: "affinity laws, any textbook on pumps",
});

export const suctionHeadGiven = cell("suctionHeadGiven", {
  label: "Suction head at the pump, above boiling",
  kind: "length",
  hint: "duct",
  symbol: "NPSH_a",
  from: { rawWaterState, ambientPressure, rawWaterPumpHeight, salinity, seaTemperature },
  compute: ({ rawWaterState, ambientPressure, rawWaterPumpHeight, salinity, seaTemperature }) => {
    const { strainerLoss, suctionLoss, rated, system } = rawWaterState;
    const squared = (rated.volumeFlow / system.referenceFlow) ** 2;
    const head = suctionHead({
      surfacePressure: ambientPressure,
      levelAbovePump: -rawWaterPumpHeight as Length,
      liquid: seaWater(salinity),
      temperature: seaTemperature,
      lineLoss: (suctionLoss * squared) as PressureDifference,
      strainerLoss: (strainerLoss * squared) as PressureDifference,
    });
    if (head < 0) {
      throw new RangeError(
        `suctionHeadGiven: the suction line loses ${(-head).toFixed(1)} m more than the air can push: the water boils in it and the pump runs dry; clean the strainer, or set the pump lower`,
      );
    }
    return head;
  },
  formula: "NPSH_a = \\frac{p_0 - p_v - \\Delta p_{su} - \\Delta p_{str}}{\\rho_w\\,g} - z_{wp}",
  source: "definition of net positive suction head, any textbook on pumps",
  limits: [{ component: "raw-water pump", side: "least", bound: suctionHeadNeeded }],
});
