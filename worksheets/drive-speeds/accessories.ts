import { alternatorLoad, hydraulicShaftPower, ratiosOfRole } from "../../lib/drive";
import { cell } from "../../lib/graph";
import type { ElectricCurrent, Power, RotationalSpeed } from "../../lib/quantity";
import { ratedSpeed } from "../brief/cells";
import {
  accessoryRun,
  alternatorEfficiency,
  beltEfficiency,
  busVoltage,
  electricalLoad,
  hydraulicDisplacement,
  hydraulicEfficiency,
  hydraulicPressure,
  otherAccessoryPower,
} from "./inputs";

export const hydraulicPower = cell("hydraulicPower", {
  label: "Power of the hydraulic pump at its shaft",
  kind: "power",
  symbol: "P_h",
  from: { hydraulicDisplacement, hydraulicPressure, hydraulicEfficiency, ratedSpeed, accessoryRun },
  compute: ({ hydraulicDisplacement, hydraulicPressure, hydraulicEfficiency, ratedSpeed, accessoryRun }) =>
    totalOf(
      ratiosOfRole(accessoryRun, "hydraulicPump").map((ratio) =>
        hydraulicShaftPower({
          displacement: hydraulicDisplacement,
          pressureRise: hydraulicPressure,
          mechanicalEfficiency: hydraulicEfficiency,
          speed: (ratedSpeed * ratio) as RotationalSpeed,
        }),
      ),
    ),
  formula: "P_h = \\sum \\frac{V_h\\,N\\,i_h\\,p_h}{\\eta_h}",
  source: "ISO 4391 (from memory)",
  assumptions: [
    "A flow-control valve throws the surplus off at the same pressure, so the whole displacement counts.",
    "Over all hydraulic pumps of the accessory belt; none, if there is none.",
  ],
});

export const alternatorPower = cell("alternatorPower", {
  label: "Power of the alternator at its shaft",
  kind: "power",
  symbol: "P_a",
  from: { busVoltage, electricalLoad, alternatorEfficiency, ratedSpeed, accessoryRun },
  compute: ({ busVoltage, electricalLoad, alternatorEfficiency, ratedSpeed, accessoryRun }) => {
    const ratios = ratiosOfRole(accessoryRun, "alternator");
    return totalOf(
      ratios.map((ratio) => {
        const speed = (ratedSpeed * ratio) as RotationalSpeed;
        return alternatorLoad({
          voltage: busVoltage,
          current: (electricalLoad / ratios.length) as ElectricCurrent,
          speed,
          efficiencyCurve: [0, 2 * speed].map((at) => ({ speed: at as RotationalSpeed, value: alternatorEfficiency })),
        }).power;
      }),
    );
  },
  formula: "P_a = \\frac{U\\,I}{\\eta_a}",
  source: "definition of efficiency",
  assumptions: ["One efficiency at all speeds.", "Several alternators share the load alike; none carries none."],
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

function totalOf(powers: readonly Power[]): Power {
  return powers.reduce<number>((sum, power) => sum + power, 0) as Power;
}
