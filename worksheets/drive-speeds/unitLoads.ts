import { affineWheel, type DriveSpeeds, hydraulicTorque } from "../../lib/drive";
import { structure } from "../../lib/graph";
import type { Density, Length, Power, PressureDifference, RotationalSpeed, Torque, VolumeFlow } from "../../lib/quantity";
import { fuelPumpPower } from "../air-demand/cells";
import { blowerShaftPower } from "../boost/cells";
import { alternatorPower } from "./accessories";
import { beltRuns } from "./beltRuns";
import { type ElectricalPoint, electricalBudget } from "./budgets";
import type { LaidFrontBelt } from "./frontBelts";
import { hydraulicDisplacement, hydraulicEfficiency, hydraulicPressure } from "./inputs";

type Member = LaidFrontBelt["members"][number];

/** What a driven unit takes from its belt. */
export interface UnitLoad {
  /** letter of its belt */
  readonly belt: string;
  readonly unit: string;
  readonly role: Member["role"];
  /** its speed, power and torque at the promised speed */
  readonly speed: RotationalSpeed;
  readonly power: Power;
  readonly torque: Torque;
  /** torque at its shaft at each of the engine's speeds [N·m] */
  readonly torqueAt: { readonly [At in keyof DriveSpeeds]: Torque };
}

interface Powers {
  readonly blowerShaftPower: Power;
  readonly fuelPumpPower: Power;
  readonly alternatorPower: Power;
}

export const unitLoads = structure("unitLoads", {
  label: "Power and torque of each driven unit",
  from: {
    beltRuns,
    blowerShaftPower,
    fuelPumpPower,
    alternatorPower,
    electricalBudget,
    hydraulicDisplacement,
    hydraulicPressure,
    hydraulicEfficiency,
  },
  compute: ({ beltRuns, electricalBudget, hydraulicDisplacement, hydraulicPressure, hydraulicEfficiency, ...powers }) => {
    const pumpTorque = hydraulicTorque({
      displacement: hydraulicDisplacement,
      pressureRise: hydraulicPressure,
      mechanicalEfficiency: hydraulicEfficiency,
    });
    const all = beltRuns.flatMap(({ belt, members }) => members.map((member) => ({ belt: belt.mark, member })));
    return all.flatMap(({ belt, member }): readonly UnitLoad[] => {
      const { unit, role, at } = member;
      if (role === "crank" || role === "idler") return [];
      const alike = all.filter((other) => other.member.role === role).length;
      const turning = 2 * Math.PI * at.rated;
      const torque = (
        role === "hydraulicPump" ? pumpTorque : statedPower(member, powers, alike) / turning
      ) as Torque;
      const power = (role === "hydraulicPump" ? pumpTorque * turning : statedPower(member, powers, alike)) as Power;
      return [{ belt, unit, role, speed: at.rated, power, torque, torqueAt: torques(member, torque, electricalBudget) }];
    });
  },
  formula: "M_i = \\frac{P_i}{2\\pi n_i}",
  source: "definition; affinity laws for the wheels of coolant pump and fan",
  assumptions: [
    "Over engine speed the torque of blower, fuel pump, hydraulic pump, raw-water pump and compressors is taken as it is at the promised speed: displacement and pressure make it, and at full load the pressures change little.",
    "Coolant pump and fan follow the square of speed in torque; an alternator gives the loads' mean current, or all it can where that is less.",
    "Units alike share what their sheet states: fuel and current alike; hydraulic pumps each take their displacement.",
  ],
});

/** What another cell, or the table, gives a unit at the promised speed. */
function statedPower({ role, power }: Member, powers: Powers, alike: number): Power {
  const shared =
    role === "blower"
      ? powers.blowerShaftPower
      : role === "fuelPump"
        ? powers.fuelPumpPower
        : role === "alternator"
          ? powers.alternatorPower
          : undefined;
  return (shared === undefined ? power : shared / alike) as Power;
}

/** A unit's torque at each of the engine's speeds, from what it is at the promised speed. */
function torques({ role, at }: Member, rated: Torque, currents: readonly ElectricalPoint[]): UnitLoad["torqueAt"] {
  const delivered = (speed: keyof DriveSpeeds): number => {
    const { output, load } = currents.find((point) => point.speed === speed)!;
    return Math.min(output, load);
  };
  const work = currents.find(({ speed }) => speed === "rated")!.load;
  const torqueAt = (speed: keyof DriveSpeeds): Torque => {
    const turning = at[speed];
    if (speed === "rated") return rated;
    if (role === "alternator") {
      return (work > 0 ? (rated * at.rated * delivered(speed)) / (turning * work) : 0) as Torque;
    }
    if (role !== "coolantPump" && role !== "fan") return rated;
    const { power } = affineWheel(wheelAt(at.rated, rated), { speed: turning });
    return (power / (2 * Math.PI * turning)) as Torque;
  };
  return {
    idle: torqueAt("idle"),
    cruise: torqueAt("cruise"),
    rated,
    maximum: torqueAt("maximum"),
    overspeed: torqueAt("overspeed"),
  };
}

/** A wheel of which only speed and power matter. */
function wheelAt(speed: RotationalSpeed, torque: Torque) {
  return {
    speed,
    diameter: 1 as Length,
    density: 1 as Density,
    flow: 0 as VolumeFlow,
    pressureRise: 0 as PressureDifference,
    power: (torque * 2 * Math.PI * speed) as Power,
  };
}
