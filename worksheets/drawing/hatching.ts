import { px } from "./plate";

/** An upright rectangle. */
export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/**
 * Path of strokes at 45° that fill a rectangle, clipped to it. A path and not a pattern: patterns need names, which two
 * drawings on a page would share.
 *
 * @param box the rectangle
 * @param pitch distance between strokes along an edge, in CSS pixels
 */
export function hatching({ x, y, width, height }: Box, pitch = 6): string {
  let path = "";
  // Strokes rise to the right: u − v is constant along each, with u from the left and v from the top.
  for (let offset = pitch - ((((x + y) % pitch) + pitch) % pitch); offset < width + height; offset += pitch) {
    const from = offset <= height ? ([0, offset] as const) : ([offset - height, height] as const);
    const to = offset <= width ? ([offset, 0] as const) : ([width, offset - width] as const);
    path += `M${px(x + from[0])},${px(y + from[1])}L${px(x + to[0])},${px(y + to[1])}`;
  }
  return path;
}

/** Whether two rectangles share more than an edge. */
export function overlap(a: Box, b: Box, clearance = 0): boolean {
  return (
    a.x < b.x + b.width + clearance &&
    b.x < a.x + a.width + clearance &&
    a.y < b.y + b.height + clearance &&
    b.y < a.y + a.height + clearance
  );
}
