import { alternatorLoad, hydraulicShaftPower } from "../../lib/drive";
import { cell } from "../../lib/graph";
import type { ElectricCurrent, Power, RotationalSpeed } from "../../lib/quantity";
import { ratedSpeed } from "../brief/cells";
import { frontBelts } from "./beltRuns";
import { membersOfRole } from "./frontBelts";
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

export const hydraulicPower = cell("hydraulicPower", {
  label: "Hydraulic pump, power at its shaft",
  kind: "power",
  symbol: "P_h",
  from: { hydraulicDisplacement, hydraulicPressure, hydraulicEfficiency, ratedSpeed, frontBelts },
  compute: ({ hydraulicDisplacement, hydraulicPressure, hydraulicEfficiency, ratedSpeed, frontBelts }) =>
    totalOf(
      membersOfRole(frontBelts, "hydraulicPump").map(({ ratio }) =>
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
    "A flow-control valve sends the surplus back at the same pressure, so the whole displacement counts.",
    "i_h is a pump's turns for one of the crank; the sum is over all hydraulic pumps of the table, and zero if there is none.",
  ],
});

export const alternatorPower = cell("alternatorPower", {
  label: "Alternator, power at its shaft",
  kind: "power",
  symbol: "P_a",
  from: { busVoltage, electricalLoad, alternatorEfficiency, ratedSpeed, frontBelts },
  compute: ({ busVoltage, electricalLoad, alternatorEfficiency, ratedSpeed, frontBelts }) => {
    const alternators = membersOfRole(frontBelts, "alternator");
    return totalOf(
      alternators.map(({ ratio }) => {
        const speed = (ratedSpeed * ratio) as RotationalSpeed;
        return alternatorLoad({
          voltage: busVoltage,
          current: (electricalLoad / alternators.length) as ElectricCurrent,
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
  assumptions: [
    "The high-pressure fuel pump is counted apart, since its power follows the fuel; its part of the belt's loss is left out.",
  ],
});

function totalOf(powers: readonly Power[]): Power {
  return powers.reduce<number>((sum, power) => sum + power, 0) as Power;
}
