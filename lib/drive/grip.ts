import { type Angle, type Force, type Ratio, requireNotNegative } from "../quantity";
import type { BeltRun } from "./beltLayout";
import { type FrictionContact, grooveFriction, tensionRatioLimit } from "./frictionBelt";

/** A ribbed belt as it runs. */
export interface GrippingBelt {
  readonly run: BeltRun;
  /** tension of each span, in the order of the run's spans, centrifugal part included [N] */
  readonly spans: readonly Force[];
  /** centrifugal tension [N], 0 or above */
  readonly centrifugalTension: Force;
  /** coefficient of friction of belt on pulley [–], above 0 */
  readonly friction: Ratio;
  /** angle between the flanks of a groove [rad] */
  readonly groove: Angle;
}

/** How a belt holds on one pulley. */
export interface Grip {
  readonly name: string;
  /** pull at the pulley [N], 0 or above */
  readonly pull: Force;
  /** pull at which it slips [N]; 0 where the belt hangs loose */
  readonly slipsAt: Force;
}

/**
 * Pull of a ribbed belt at every pulley, and the pull at which it slips there [N]: (T₂ − T_c)(e^(μ φ) − 1), with the
 * friction of the grooves on the ribbed face and that of a flat belt on the back.
 *
 * @param belt run, span tensions and centrifugal tension [N], friction [–] and groove angle [rad]
 * @throws RangeError if the friction is not above 0 or the centrifugal tension negative
 * @source Euler and Eytelwein; Shigley, Mechanical Engineering Design (from memory)
 * @example grips({ run: beltRun({ travel: "clockwise", pulleys: [{ name: "crank", x: 0, y: 0, pitchRadius: 0.05, contact: "toothed" }, { name: "fan", x: 0, y: 0.3, pitchRadius: 0.05, contact: "toothed" }] }), spans: [108.1317666, 900], centrifugalTension: 75, friction: 0.35, groove: 0.6981317 })[1].slipsAt // 791.868
 */
export function grips({ run, spans, centrifugalTension, friction, groove }: GrippingBelt): readonly Grip[] {
  requireNotNegative("grips: centrifugalTension", centrifugalTension, "N");
  const grooved = grooveFriction(friction, groove);
  return run.pulleys.map(({ name, contact, wrap }, i) => {
    const [before, after] = [spans.at(i - 1)!, spans[i]!];
    const slack = Math.max(0, Math.min(before, after) - centrifugalTension);
    const held: FrictionContact = { friction: contact === "back" ? friction : grooved, wrap };
    return {
      name,
      pull: Math.abs(after - before) as Force,
      slipsAt: (slack * (tensionRatioLimit(held) - 1)) as Force,
    };
  });
}
