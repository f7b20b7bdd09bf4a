import { leastExcessAir } from "../../lib/charge";
import { affineWheel, type DriveSpeeds, hydraulicTorque } from "../../lib/drive";
import { structure } from "../../lib/graph";
import type { Density, Length, Power, PressureDifference, RotationalSpeed, Torque, VolumeFlow } from "../../lib/quantity";
import { excessAirRatio } from "../air-demand/inputs";
import { blowerInletPressure, blowerShaftPower } from "../boost/cells";
import { ambientPressure, idleSpeed, ratedSpeed } from "../brief/cells";
import { injectedVolume } from "../fuel-delivery/cells";
import { type DeliveryPoint, deliverySweep } from "../fuel-delivery/deliverySweep";
import { sweptAt } from "../fuel-delivery/sweptAt";
import { fullExcessAirFrom, slowExcessAir } from "../matching/inputs";
import { slowAirOf } from "../matching/slowAir";
import { alternatorPower } from "./accessories";
import { beltRuns } from "./beltRuns";
import { type ElectricalPoint, electricalBudget } from "./budgets";
import type { LaidFrontBelt } from "./frontBelts";
import { hydraulicDisplacement, hydraulicEfficiency, hydraulicPressure } from "./inputs";
import { type BlowerDuty, blowerTorqueAt } from "./torqueOverSpeed";

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

/** What sheets say of the units beside the table. */
interface Stated {
  readonly sweep: readonly DeliveryPoint[];
  readonly alternatorPower: Power;
  readonly hydraulicTorque: Torque;
  readonly currents: readonly ElectricalPoint[];
  /** the engine's speeds */
  readonly speeds: DriveSpeeds;
  readonly blower: Omit<BlowerDuty, "torque"> & { readonly power: Power };
}

export const unitLoads = structure("unitLoads", {
  label: "Power and torque of each driven unit",
  from: {
    beltRuns,
    blowerShaftPower,
    blowerInletPressure,
    ambientPressure,
    ratedSpeed,
    idleSpeed,
    excessAirRatio,
    slowExcessAir,
    fullExcessAirFrom,
    injectedVolume,
    deliverySweep,
    alternatorPower,
    electricalBudget,
    hydraulicDisplacement,
    hydraulicPressure,
    hydraulicEfficiency,
  },
  compute: (at) => {
    const { beltRuns, ratedSpeed, ambientPressure, injectedVolume } = at;
    const slowAir = slowAirOf(at);
    const excessAirShare = (speed: RotationalSpeed) => leastExcessAir(at.excessAirRatio, slowAir, speed) / at.excessAirRatio;
    const stated: Stated = {
      sweep: at.deliverySweep,
      alternatorPower: at.alternatorPower,
      hydraulicTorque: hydraulicTorque({
        displacement: at.hydraulicDisplacement,
        pressureRise: at.hydraulicPressure,
        mechanicalEfficiency: at.hydraulicEfficiency,
      }),
      currents: at.electricalBudget,
      speeds: beltRuns[0]!.members[0]!.at,
      blower: { power: at.blowerShaftPower, inletPressure: at.blowerInletPressure, ambientPressure, ratedSpeed, injectedVolume, excessAirShare },
    };
    const all = beltRuns.flatMap(({ belt, members }) => members.map((member) => ({ belt: belt.mark, member })));
    return all.flatMap(({ belt, member }): readonly UnitLoad[] => {
      const { unit, role, at: speeds } = member;
      if (role === "crank" || role === "idler") return [];
      const alike = all.filter((other) => other.member.role === role);
      const torqueAt = torques(member, stated, { count: alike.length, place: alike.findIndex((other) => other.member === member) });
      const torque = torqueAt.rated;
      const power = (torque * 2 * Math.PI * speeds.rated) as Power;
      return [{ belt, unit, role, speed: speeds.rated, power, torque, torqueAt }];
    });
  },
  formula: "M_i = \\frac{P_i}{2\\pi n_i}, \\qquad M_{bl}(N) = M_{bl}\\,\\max\\left(\\frac{V_f(N)\\,\\lambda(N)}{V_f\\,\\lambda},\\ \\frac{p_0}{p_3}\\right)",
  source:
    "definition; affinity laws for the wheels of coolant pump and fan; conservation of mass for the blower; the fuel sheet's sweep for the fuel pump",
  assumptions: [
    "The blower is geared to the engine, so its pressure ratio stays over speed, and the pressure before it goes with the fuel for one stroke V_f(N) of the full-load map and with the least excess air λ(N), as the match has it; it sinks no lower than the air outside. That is what the map asks for: turbochargers that do not reach it leave less torque, as the match's line shows. Beyond the promised speed the torque stays, since wheels turn on when the governor takes the fuel away.",
    "The fuel pump's torque is that of the fuel sheet along its full-load map, straight between the steps; at overspeed as at the highest speed.",
    "Hydraulic pump, raw-water pump and compressors keep their torque over speed: displacement and pressure make it.",
    "Coolant pump and fan follow the square of speed in torque; an alternator gives the loads' mean current, or all it can where that is less.",
    "Units alike share what their sheet states: blowers and alternators alike; hydraulic pumps each take their displacement, fuel pumps what each delivers.",
  ],
});

/** Where a unit stands among those of its role. */
interface Alike {
  readonly count: number;
  readonly place: number;
}

/** A unit's torque at each of the engine's speeds. */
function torques(member: Member, stated: Stated, alike: Alike): UnitLoad["torqueAt"] {
  const torqueAt = torqueOf(member, stated, alike);
  return {
    idle: torqueAt("idle"),
    cruise: torqueAt("cruise"),
    rated: torqueAt("rated"),
    maximum: torqueAt("maximum"),
    overspeed: torqueAt("overspeed"),
  };
}

function torqueOf({ role, power, at }: Member, stated: Stated, { count, place }: Alike): (speed: keyof DriveSpeeds) => Torque {
  const { sweep, speeds } = stated;
  const of = (watts: number) => (watts / (2 * Math.PI * at.rated)) as Torque;
  switch (role) {
    case "fuelPump":
      return (speed) => sweptAt(sweep, speeds[speed], ({ torques }) => torques[place]!) as Torque;
    case "blower": {
      const duty = { ...stated.blower, torque: of(stated.blower.power / count) };
      return (speed) => blowerTorqueAt(duty, sweep, speeds[speed]);
    }
    case "hydraulicPump":
      return () => stated.hydraulicTorque;
    case "alternator":
      return alternatorTorque(at, of(stated.alternatorPower / count), stated.currents);
    case "coolantPump":
    case "fan": {
      const wheel = wheelAt(at.rated, of(power));
      return (speed) => (affineWheel(wheel, { speed: at[speed] }).power / (2 * Math.PI * at[speed])) as Torque;
    }
    default:
      return () => of(power);
  }
}

/** An alternator gives the loads' mean current at each speed, or all it can. */
function alternatorTorque(at: DriveSpeeds, rated: Torque, currents: readonly ElectricalPoint[]) {
  const work = currents.find(({ speed }) => speed === "rated")!.load;
  return (speed: keyof DriveSpeeds): Torque => {
    if (speed === "rated") return rated;
    const { output, load } = currents.find((point) => point.speed === speed)!;
    return (work > 0 ? (rated * at.rated * Math.min(output, load)) / (at[speed] * work) : 0) as Torque;
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
