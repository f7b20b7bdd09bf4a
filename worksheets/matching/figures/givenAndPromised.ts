import { type Box, clearSpot, type Disc, type Group, px, textWidth, write } from "../../drawing";
import { segmentsOf } from "./markedValue";
import type { Corner } from "./shapes";

interface Marks {
  readonly x: number;
  /** Height of the promise. */
  readonly promised: { readonly y: number; readonly text: string };
  /** Height of what is given, and its marks' further attributes; undefined where nothing is. */
  readonly given: { readonly y: number; readonly text: string; readonly track: string } | undefined;
  readonly short: boolean;
  /** Corners of the line that the words keep clear of. */
  readonly line: readonly Corner[];
  /** What the words keep clear of beside it. */
  readonly title: Box;
  /** Where the words must lie. */
  readonly bounds: Box;
  /** Foot of the dotted line down from the marks. */
  readonly foot: number;
}

/** The promise as a cross, what is given as a dot that can be moved along its track, and their values beside them. */
export function givenAndPromised(group: Group, marks: Marks): void {
  const { x, promised, given, short, line, title, bounds, foot } = marks;
  const highest = Math.min(promised.y, given?.y ?? promised.y);
  const path = (look: string, d: string) => group.append("path").attr("class", look).attr("d", d);
  path("dotted", `M${px(x)},${px(foot)}V${px(highest)}`);
  path("outline thick", `M${px(x - 7)},${px(promised.y)}h14M${px(x)},${px(promised.y - 7)}v14`);
  if (given) {
    group
      .append("circle")
      .attr("class", "dark")
      .attr("cx", px(x))
      .attr("cy", px(given.y))
      .attr("r", 5)
      .attr("data-sets", "ratedSpeed")
      .attr("data-track", given.track);
  }
  const cross: Disc = { x, y: promised.y, radius: 8 };
  const dot: Disc = { x, y: given?.y ?? promised.y, radius: 8 };
  const discs = given ? [cross, dot] : [cross];
  const segments = segmentsOf([line]);
  const boxes: Box[] = [title];
  const label = (text: string, look: string, disc: Disc, outward: number): void => {
    const size = { width: textWidth(text, { bold: true }), height: 14 };
    // The higher mark's words stay above it and the lower one's below, so that nobody takes one for the other.
    const half = outward < 0 ? { ...bounds, height: disc.y - bounds.y } : { ...bounds, y: disc.y, height: bounds.y + bounds.height - disc.y };
    const within = (own: Box) => clearSpot(disc, size, outward, { discs, segments, boxes, bounds: own });
    const spot = (given && within(half)) ?? within(bounds);
    const box = spot ?? { x: bounds.x + bounds.width - size.width, y: bounds.y + boxes.length * 20, ...size };
    boxes.push(box);
    write(group, text, { x: box.x, y: box.y + 11, look });
  };
  const above = (promised.y < dot.y ? -1 : 1) * (Math.PI / 2);
  label(promised.text, "strong", cross, given ? above : Math.PI);
  if (given) label(`${short ? "■ " : ""}${given.text}`, short ? "past" : "one", dot, -above);
  else label("■ nothing is given here", "past", cross, Math.PI / 2);
}
