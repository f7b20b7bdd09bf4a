import type { BeltRun, Point, Pulley, Rotation, RunPulley, ToothProfile } from "../../../lib/drive";
import { px } from "../../drawing";

/** From metres right of and above the crank to the drawing. */
export interface View {
  readonly x: (metres: number) => number;
  readonly y: (metres: number) => number;
  /** CSS pixels for each metre. */
  readonly scale: number;
}

/** Whether a pulley turns clockwise as the front of the engine shows it. */
export function turnsClockwise({ sense }: Pick<RunPulley, "sense">, crank: Rotation): boolean {
  return (sense === 1) === (crank === "clockwise");
}

/**
 * Path of a belt in its direction of travel: straight along the tangents, around each pulley by its arc of contact.
 *
 * @param run the belt over its pulleys
 * @param crank the way the crank turns, seen from the front
 * @param view where it is drawn
 * @param depth how far the path lies to the toothed side of the pitch line [m]
 */
export function beltPath({ pulleys }: BeltRun, crank: Rotation, view: View, depth = 0): string {
  const at = (pulley: RunPulley, { x, y }: Point) => {
    const share = reach(pulley, depth) / pulley.pitchRadius;
    return `${px(view.x(pulley.x + (x - pulley.x) * share))},${px(view.y(pulley.y + (y - pulley.y) * share))}`;
  };
  const around = pulleys.map((pulley, i) => {
    const radius = px(reach(pulley, depth) * view.scale);
    const arc = `A${radius},${radius} 0 ${pulley.wrap > Math.PI ? 1 : 0} ${turnsClockwise(pulley, crank) ? 1 : 0} ${at(pulley, pulley.end)}`;
    return `${i === 0 ? "M" : "L"}${at(pulley, pulley.start)}${pulley.wrap > 0 ? arc : ""}`;
  });
  return `${around.join("")}Z`;
}

/** Radius at some depth to the toothed side: nearer to the axis of a pulley in the teeth, further from that of one on the back. */
function reach({ pitchRadius, contact }: RunPulley, depth: number): number {
  return Math.max(0, contact === "toothed" ? pitchRadius - depth : pitchRadius + depth);
}

/** Outline of a toothed pulley with all its teeth, one on top. */
export function toothedOutline({ x, y, pitchRadius, teeth }: Pulley, profile: ToothProfile, view: View): string {
  const count = teeth ?? 0;
  const tip = pitchRadius - profile.pitchLineDistance;
  const step = (2 * Math.PI) / count;
  const land = 0.2 * step;
  const at = (radius: number, angle: number) =>
    `${px(view.x(x) + radius * view.scale * Math.sin(angle))},${px(view.y(y) - radius * view.scale * Math.cos(angle))}`;
  let path = `M${at(tip, -land)}`;
  for (let tooth = 0; tooth < count; tooth += 1) {
    const angle = tooth * step;
    // The groove's curve reaches half as deep as its control point.
    path += `L${at(tip, angle + land)}Q${at(tip - 2 * profile.toothHeight, angle + step / 2)} ${at(tip, angle + step - land)}`;
  }
  return `${path}Z`;
}

/** The part of a pulley that the belt holds: from its axis to both ends of the arc of contact. */
export function wrapSector(pulley: RunPulley, crank: Rotation, view: View): string {
  const { x, y, pitchRadius, start, end, wrap } = pulley;
  const radius = px(pitchRadius * view.scale);
  const at = (point: Point) => `${px(view.x(point.x))},${px(view.y(point.y))}`;
  const arc = `A${radius},${radius} 0 ${wrap > Math.PI ? 1 : 0} ${turnsClockwise(pulley, crank) ? 1 : 0} ${at(end)}`;
  return `M${px(view.x(x))},${px(view.y(y))}L${at(start)}${arc}Z`;
}
