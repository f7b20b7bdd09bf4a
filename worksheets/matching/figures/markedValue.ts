import { type Box, clearSpot, type Disc, type Group, px, type Segment, textWidth, write } from "../../drawing";
import type { Corner } from "./shapes";

/** A dot on a line, and the value that stands beside it. */
export interface MarkedValue {
  readonly at: Corner;
  readonly text: string;
  /** Class of the text, such as "one" or "two". */
  readonly look: string;
  /** Lines that the text keeps clear of. */
  readonly lines: readonly (readonly Corner[])[];
  /** What the text keeps clear of beside them. */
  readonly boxes?: readonly Box[];
  /** Where the text must lie. */
  readonly bounds: Box;
}

/** Direction in which a value would rather stand: upwards [rad]. */
const upwards = -Math.PI / 2;

/** Draws a dot and its value, where it covers no line; gives back where the value stands. */
export function markedValue(
  group: Group,
  { at: [x, y], text, look, lines, boxes = [], bounds }: MarkedValue,
): Box {
  group.append("circle").attr("class", "dark").attr("cx", px(x)).attr("cy", px(y)).attr("r", 4.5);
  const disc: Disc = { x, y, radius: 7 };
  const size = { width: textWidth(text, { bold: true }), height: 14 };
  const obstacles = { discs: [disc], segments: segmentsOf(lines), boxes, bounds };
  const box = clearSpot(disc, size, upwards, obstacles) ?? { x: bounds.x + bounds.width - size.width, y: bounds.y, ...size };
  write(group, text, { x: box.x, y: box.y + 11, look });
  return box;
}

/** The straight pieces of some lines. */
export function segmentsOf(lines: readonly (readonly Corner[])[]): readonly Segment[] {
  return lines.flatMap((line) => line.slice(1).map((to, i): Segment => [...line[i]!, ...to]));
}
