import type { Angle, Count, Length } from "../quantity";

/** Turning direction as seen from the front of the engine. */
export type Rotation = "clockwise" | "counterclockwise";

/** Which face of the belt lies on a pulley. The toothed face is the ribbed face of a ribbed belt. */
export type BeltContact = "toothed" | "back";

/** A point in the plane of the belt, as seen from the front of the engine. */
export interface Point {
  /** to the right of the origin [m] */
  readonly x: Length;
  /** above the origin [m] */
  readonly y: Length;
}

/** A pulley or an idler in the plane of the belt. */
export interface Pulley extends Point {
  /** what the page calls it; unique in a layout */
  readonly name: string;
  /** from the axis to the belt's pitch line [m], above 0 */
  readonly pitchRadius: Length;
  /** the face of the belt that lies on it */
  readonly contact: BeltContact;
  /** teeth of a toothed pulley [–]; left out for a smooth one */
  readonly teeth?: Count;
}

/** The pulleys that a belt runs over, seen from the front of the engine: x to the right, y up. */
export interface BeltLayout {
  /** in the order in which the belt meets them, the crank pulley first; at least two */
  readonly pulleys: readonly Pulley[];
  /** the way the belt goes around, which is the way the crank turns, seen from the front */
  readonly travel: Rotation;
}

/** A pulley with the belt around it. */
export interface RunPulley extends Pulley {
  /** arc of contact [rad], 0 to 3π/2 */
  readonly wrap: Angle;
  /** where the belt comes on to the pulley */
  readonly start: Point;
  /** where the belt leaves it */
  readonly end: Point;
  /** whole teeth within the arc of contact [–]; left out for a smooth pulley */
  readonly teethInMesh?: Count;
  /** +1 where it turns with the crank, −1 where it turns against it */
  readonly sense: 1 | -1;
}

/** A straight part of the belt, in the direction of travel. */
export interface BeltSpan {
  /** name of the pulley that the belt leaves */
  readonly from: string;
  /** name of the pulley that the belt meets next */
  readonly to: string;
  /** where the belt leaves the first */
  readonly start: Point;
  /** where it comes on to the second */
  readonly end: Point;
  /** free length [m] */
  readonly length: Length;
  /** direction of travel, counterclockwise from the x axis [rad], −π to π */
  readonly direction: Angle;
}

/** A belt drawn tight over a layout. */
export interface BeltRun {
  /** length along the pitch line [m] */
  readonly length: Length;
  /** in belt order */
  readonly pulleys: readonly RunPulley[];
  /** in belt order; the first leaves the first pulley */
  readonly spans: readonly BeltSpan[];
}
