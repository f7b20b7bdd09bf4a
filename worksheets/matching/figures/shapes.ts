import { type Box, px } from "../../drawing";

/** A corner, in CSS pixels. */
export type Corner = readonly [x: number, y: number];

/** Path of a line through corners. */
export function polyline(corners: readonly Corner[]): string {
  return corners.map(([x, y], i) => `${i === 0 ? "M" : "L"}${px(x)},${px(y)}`).join("");
}

/** Corners of a rectangle. */
export function cornersOf({ x, y, width, height }: Box): readonly Corner[] {
  return [
    [x, y],
    [x + width, y],
    [x + width, y + height],
    [x, y + height],
  ];
}

/**
 * Path of parallel strokes that fill a closed shape, cut at its edge.
 *
 * @param corners the shape's corners in order
 * @param pitch distance between strokes, in CSS pixels
 * @param direction of the strokes, clockwise from the right, as y runs down [rad]
 */
export function hatchedShape(corners: readonly Corner[], pitch: number, direction: number): string {
  const [cos, sin] = [Math.cos(direction), Math.sin(direction)];
  // u runs along the strokes, v across them
  const turned = corners.map(([x, y]) => ({ u: x * cos + y * sin, v: y * cos - x * sin }));
  const across = turned.map(({ v }) => v);
  const last = Math.max(...across);
  let path = "";
  for (let v = Math.ceil(Math.min(...across) / pitch) * pitch; v < last; v += pitch) {
    const cuts: number[] = [];
    turned.forEach((from, i) => {
      const to = turned[(i + 1) % turned.length]!;
      if (from.v > v === to.v > v) return;
      cuts.push(from.u + ((v - from.v) / (to.v - from.v)) * (to.u - from.u));
    });
    cuts.sort((a, b) => a - b);
    for (let i = 0; i + 1 < cuts.length; i += 2) {
      const [a, b] = [cuts[i]!, cuts[i + 1]!];
      if (b - a < 0.5) continue;
      path += `M${px(a * cos - v * sin)},${px(a * sin + v * cos)}L${px(b * cos - v * sin)},${px(b * sin + v * cos)}`;
    }
  }
  return path;
}
