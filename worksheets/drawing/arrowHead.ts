import { px } from "./plate";

/**
 * Path of a slender filled arrow head.
 *
 * @param x tip
 * @param y tip
 * @param direction where it points, clockwise from the right, as y runs down [rad]
 * @param size length from tip to heel, in CSS pixels
 */
export function arrowHead(x: number, y: number, direction: number, size = 8): string {
  const [cos, sin] = [Math.cos(direction), Math.sin(direction)];
  const at = (back: number, aside: number) => `${px(x - back * cos - aside * sin)},${px(y - back * sin + aside * cos)}`;
  return `M${px(x)},${px(y)}L${at(size, size * 0.36)}L${at(size * 0.78, 0)}L${at(size, -size * 0.36)}Z`;
}
