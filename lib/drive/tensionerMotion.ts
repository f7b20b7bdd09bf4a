import type { Angle, Length } from "../quantity";
import type { BeltLayout, Point } from "./beltLayout";

/** A pulley that slides along a line. */
export interface Slide {
  /** direction of the slide, counterclockwise from the x axis, seen from the front [rad] */
  readonly direction: Angle;
}

/** A pulley on an arm that turns. */
export interface Arm {
  /** where the arm is pivoted; its length is the distance from there to the pulley as drawn */
  readonly pivot: Point;
}

/** How a pulley that takes up a belt moves. Positive along the slide, or counterclockwise about the pivot. */
export type TensionerMotion = Slide | Arm;

/** The layout with one pulley moved so far along its slide, or along the circle of its arm [m]. */
export function layoutMoved(layout: BeltLayout, moved: string, motion: TensionerMotion, distance: number): BeltLayout {
  const pulleys = layout.pulleys.map((pulley) =>
    pulley.name === moved ? { ...pulley, ...pointMoved(pulley, motion, distance) } : pulley,
  );
  return { ...layout, pulleys };
}

/** The direction in which a pulley at that place moves on [rad]. */
export function directionOf({ x, y }: Point, motion: TensionerMotion): number {
  if (!("pivot" in motion)) return motion.direction;
  return Math.atan2(y - motion.pivot.y, x - motion.pivot.x) + Math.PI / 2;
}

/** Length of the arm as drawn [m]; none for a slide. */
export function armLength({ x, y }: Point, motion: TensionerMotion): number | undefined {
  return "pivot" in motion ? Math.hypot(x - motion.pivot.x, y - motion.pivot.y) : undefined;
}

function pointMoved(from: Point, motion: TensionerMotion, distance: number): Point {
  if (!("pivot" in motion)) {
    return {
      x: (from.x + distance * Math.cos(motion.direction)) as Length,
      y: (from.y + distance * Math.sin(motion.direction)) as Length,
    };
  }
  const { pivot } = motion;
  const [dx, dy] = [from.x - pivot.x, from.y - pivot.y];
  const turned = distance / Math.hypot(dx, dy);
  const [cos, sin] = [Math.cos(turned), Math.sin(turned)];
  return { x: (pivot.x + cos * dx - sin * dy) as Length, y: (pivot.y + sin * dx + cos * dy) as Length };
}
