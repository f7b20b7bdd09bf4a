import { alternatorLoad, hydraulicShaftPower } from "../../lib/drive";
import { cell } from "../../lib/graph";
import type { Power, RotationalSpeed } from "../../lib/quantity";
import { ratedSpeed } from "../brief/cells";
import {
  alternatorEfficiency,
  beltEfficiency,
  busVoltage,
  electricalLoad,
  hydraulicDisplacement,
  hydraulicEfficiency,
  hydraulicPressure,
  otherAccessoryPower,
} from "./inputs";
import { alternatorDriveRatio, hydraulicDriveRatio } from "./ratios";

export const hydraulicPower = cell("hydraulicPower", {
  label: "Power of the hydraulic pump at its shaft",
  kind: "power",
  symbol: "P_h",
  from: { hydraulicDisplacement, hydraulicPressure, hydraulicEfficiency, ratedSpeed, hydraulicDriveRatio },
  compute: ({ hydraulicDisplacement, hydraulicPressure, hydraulicEfficiency, ratedSpeed, hydraulicDriveRatio }) =>
    hydraulicShaftPower({
      displacement: hydraulicDisplacement,
      pressureRise: hydraulicPressure,
      mechanicalEfficiency: hydraulicEfficiency,
      speed: (ratedSpeed * hydraulicDriveRatio) as RotationalSpeed,
    }),
  formula: "P_h = \\frac{V_h\\,N\\,i_h\\,p_h}{\\eta_h}",
  source: "ISO 4391 (from memory)",
  assumptions: ["A flow-control valve throws the surplus off at the same pressure, so the whole displacement counts."],
});

export const alternatorPower = cell("alternatorPower", {
  label: "Power of the alternator at its shaft",
  kind: "power",
  symbol: "P_a",
  from: { busVoltage, electricalLoad, alternatorEfficiency, ratedSpeed, alternatorDriveRatio },
  compute: ({ busVoltage, electricalLoad, alternatorEfficiency, ratedSpeed, alternatorDriveRatio }) => {
    const speed = (ratedSpeed * alternatorDriveRatio) as RotationalSpeed;
    const efficiencyCurve = [0, 2 * speed].map((at) => ({ speed: at as RotationalSpeed, value: alternatorEfficiency }));
    return alternatorLoad({ voltage: busVoltage, current: electricalLoad, speed, efficiencyCurve }).power;
  },
  formula: "P_a = \\frac{U\\,I}{\\eta_a}",
  source: "definition of efficiency",
  assumptions: ["One efficiency at all speeds."],
});

export const accessoryPower = cell("accessoryPower", {
  label: "Accessories together, at the crank",
  kind: "power",
  symbol: "P_x",
  from: { hydraulicPower, alternatorPower, beltEfficiency, otherAccessoryPower },
  compute: ({ hydraulicPower, alternatorPower, beltEfficiency, otherAccessoryPower }) =>
    ((hydraulicPower + alternatorPower) / beltEfficiency + otherAccessoryPower) as Power,
  formula: "P_x = \\frac{P_h + P_a}{\\eta_b} + P_o",
  source: "sum of loads",
  assumptions: ["The fuel pump is counted apart, since its power follows the fuel."],
});
