import { alternatorLoad, hydraulicShaftPower, meanCurrent } from "../../lib/drive";
import { cell, structure } from "../../lib/graph";
import type { ElectricCurrent, Fraction, Power, RotationalSpeed } from "../../lib/quantity";
import { ratedSpeed } from "../brief/cells";
import { frontBelts } from "./beltRuns";
import { electricalLoads } from "./budgetTables";
import { membersOfRole } from "./frontBelts";
import {
  alternatorEfficiency,
  beltEfficiency,
  busVoltage,
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

export const electricalLoad = cell("electricalLoad", {
  label: "Electrical load at work",
  kind: "electricCurrent",
  symbol: "I",
  from: { electricalLoads },
  compute: ({ electricalLoads }) =>
    meanCurrent(electricalLoads.map(({ current, workShare }) => ({ current, share: workShare }))),
  formula: "I = \\sum_k I_k\\,x_k",
  source: "sum of loads",
  assumptions: ["x are the shares of the time; what is drawn at once may be more."],
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
  from: { hydraulicPower, alternatorPower, frontBelts, beltEfficiency, otherAccessoryPower },
  compute: ({ hydraulicPower, alternatorPower, frontBelts, beltEfficiency, otherAccessoryPower }) => {
    const stated = (["rawWaterPump", "fan", "compressor", "other"] as const).flatMap((role) =>
      membersOfRole(frontBelts, role).map(({ power }) => power),
    );
    return ((hydraulicPower + alternatorPower + totalOf(stated)) / beltEfficiency + otherAccessoryPower) as Power;
  },
  formula: "P_x = \\frac{P_h + P_a + \\sum_k P_k}{\\eta_b} + P_o",
  source: "sum of loads",
  assumptions: [
    "P_k are the powers that the table of pulleys states for raw-water pump, fan, compressors and others; the coolant pump counts as the engine's friction.",
    "The high-pressure fuel pump is counted apart, since its power follows the fuel; its part of the belt's loss is left out.",
  ],
});

/** How the accessories' power goes with the engine's speed; what is left of 1 stays. */
export const accessoryOverSpeed = structure("accessoryOverSpeed", {
  label: "Parts of the accessories' power that go with the engine's speed and with its cube",
  from: { accessoryPower, alternatorPower, frontBelts, beltEfficiency },
  compute: ({ accessoryPower, alternatorPower, frontBelts, beltEfficiency }) => {
    if (accessoryPower === 0) return { withSpeed: 0 as Fraction, withCube: 0 as Fraction };
    const fans = totalOf(membersOfRole(frontBelts, "fan").map(({ power }) => power));
    const [steady, cubic] = [alternatorPower, fans].map((power) => power / beltEfficiency / accessoryPower);
    return { withSpeed: (1 - steady! - cubic!) as Fraction, withCube: cubic as Fraction };
  },
  formula: "P_x(N) = P_a' + P_f'\\left(\\frac{N}{N_r}\\right)^3 + \\left(P_x - P_a' - P_f'\\right)\\frac{N}{N_r}",
  source: "definition; affinity law for the fan",
  assumptions: [
    "The alternator's power P_a' stays, since the loads ask for their current at any speed; a fan's P_f' goes with the cube of the speed; pumps, compressors and what is stated otherwise keep their torque.",
  ],
});

function totalOf(powers: readonly Power[]): Power {
  return powers.reduce<number>((sum, power) => sum + power, 0) as Power;
}
