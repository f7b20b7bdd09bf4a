import { type Box, overlap } from "./hatching";

export interface Disc {
  readonly x: number;
  readonly y: number;
  readonly radius: number;
}

/** Ends of a straight line: x and y of the one, x and y of the other. */
export type Segment = readonly [number, number, number, number];

/** What a label must not cover. */
export interface Obstacles {
  readonly discs: readonly Disc[];
  readonly segments: readonly Segment[];
  readonly boxes: readonly Box[];
  /** The label must lie within. */
  readonly bounds: Box;
}

const directions = 24;
const distances = [7, 20, 36, 56, 80];

/**
 * Where a label of some size lies clear of everything and nearest to its disc, or undefined if there is no such place.
 *
 * @param disc what the label names; it stands outside it
 * @param size the label's box
 * @param outward direction in which it would rather stand, clockwise from the right, as y runs down [rad]
 * @param obstacles what it must keep clear of, its own disc among them
 */
export function clearSpot(
  disc: Disc,
  size: { readonly width: number; readonly height: number },
  outward: number,
  obstacles: Obstacles,
): (Box & { readonly away: number }) | undefined {
  for (const away of distances) {
    for (let turn = 0; turn < directions; turn += 1) {
      // Outward first, then ever further to either side.
      const step = (turn % 2 === 0 ? 1 : -1) * Math.ceil(turn / 2);
      const angle = outward + (step * 2 * Math.PI) / directions;
      const box = boxBeside(disc, size, angle, away);
      if (isClear(box, obstacles)) return { ...box, away };
    }
  }
  return undefined;
}

/** The box that stands at some distance from a disc in a direction. */
function boxBeside(
  { x, y, radius }: Disc,
  { width, height }: { width: number; height: number },
  angle: number,
  away: number,
): Box {
  const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
  const reach = radius + away;
  return { x: x + reach * cos + (width / 2) * (cos - 1), y: y + reach * sin + (height / 2) * (sin - 1), width, height };
}

function isClear(box: Box, { discs, segments, boxes, bounds }: Obstacles): boolean {
  if (
    box.x < bounds.x ||
    box.y < bounds.y ||
    box.x + box.width > bounds.x + bounds.width ||
    box.y + box.height > bounds.y + bounds.height
  ) {
    return false;
  }
  return (
    discs.every((disc) => !meetsDisc(box, disc)) &&
    boxes.every((other) => !overlap(box, other, 4)) &&
    segments.every((segment) => !meetsSegment(box, segment))
  );
}

/** Whether a box and a disc share a point. */
export function meetsDisc({ x, y, width, height }: Box, disc: Disc): boolean {
  const dx = disc.x - Math.min(Math.max(disc.x, x), x + width);
  const dy = disc.y - Math.min(Math.max(disc.y, y), y + height);
  return dx * dx + dy * dy < disc.radius * disc.radius;
}

/** Whether a box and a straight line share a point: what is left of the line after cutting it at each side. */
export function meetsSegment({ x, y, width, height }: Box, [x0, y0, x1, y1]: Segment): boolean {
  // Most lines lie to one side of the box.
  if (Math.max(x0, x1) < x || Math.min(x0, x1) > x + width) return false;
  if (Math.max(y0, y1) < y || Math.min(y0, y1) > y + height) return false;
  if (x0 === x1 || y0 === y1) return true;
  const [left, right] = [(x - x0) / (x1 - x0), (x + width - x0) / (x1 - x0)];
  const [top, bottom] = [(y - y0) / (y1 - y0), (y + height - y0) / (y1 - y0)];
  const from = Math.max(0, Math.min(left, right), Math.min(top, bottom));
  const to = Math.min(1, Math.max(left, right), Math.max(top, bottom));
  return from <= to;
}
