import type { BeltRun, Pulley } from "../../../lib/drive";
import {
  type Box,
  clearSpot,
  type Disc,
  type Group,
  leading,
  px,
  reading,
  type Segment,
  widest,
  wrapped,
  write,
  writeLines,
} from "../../drawing";
import type { FigureUnits } from "../../sheet";
import type { View } from "./beltPath";
import type { ShownBelt } from "./shownBelt";

/** How wide a pulley's name may be before it breaks, and how short a span may be to have its length beside it, in CSS pixels. */
const widestName = 96;
const shortest = 52;

export interface Labelling {
  readonly belt: ShownBelt;
  readonly view: View;
  readonly units: FigureUnits;
  /** Labels stay inside. */
  readonly bounds: Box;
  /** What is said of each pulley below its name, a line each. */
  readonly facts: (at: number) => readonly string[];
  /** All pulleys are numbered, and named in a list below. */
  readonly listed: boolean;
  /** Spans have their lengths beside them. */
  readonly lengths: boolean;
  /** Where something is written already. */
  readonly taken: readonly Box[];
}

/** Names pulleys beside them, where there is room, else by numbers in a list below; gives back how far down it reached. */
export function labelBelt(group: Group, labelling: Labelling): number {
  const { belt, view, units, bounds, facts } = labelling;
  const { pulleys } = belt.layout;
  const disc = ({ x, y, pitchRadius }: Pulley): Disc => ({
    x: view.x(x),
    y: view.y(y),
    radius: pitchRadius * view.scale,
  });
  const arms = belt.members.filter(({ mount }) => mount === "pivoting");
  const discs = [
    ...pulleys.map(disc).map((each) => ({ ...each, radius: each.radius + 4 })),
    ...arms.map(({ guide }): Disc => ({ x: view.x(guide.x), y: view.y(guide.y), radius: 8 })),
  ];
  const segments = [
    ...(belt.run?.spans ?? []).map(({ start, end }) => [start, end] as const),
    ...arms.map((arm) => [arm, arm.guide] as const),
  ].map(([from, to]): Segment => [view.x(from.x), view.y(from.y), view.x(to.x), view.y(to.y)]);
  const boxes: Box[] = [...labelling.taken];
  const middle = {
    x: pulleys.reduce((sum, { x }) => sum + view.x(x), 0) / pulleys.length,
    y: pulleys.reduce((sum, { y }) => sum + view.y(y), 0) / pulleys.length,
  };
  let foot = bounds.y + bounds.height;
  let listed = 0;
  pulleys.forEach((pulley, i) => {
    const name = wrapped(pulley.name, widestName, { bold: true });
    const said = facts(i);
    const lines = [...name, ...said];
    const own = disc(pulley);
    const outward = Math.atan2(own.y - middle.y, own.x - middle.x);
    const size = { width: widest(lines, { bold: true }), height: lines.length * leading };
    const spot = labelling.listed ? undefined : clearSpot(own, size, outward, { discs, segments, boxes, bounds });
    if (spot) {
      boxes.push(spot);
      if (spot.away > 12) leader(group, own, spot);
      const looks = lines.map((line, at) => (at < name.length ? "strong" : line.startsWith("■") ? "past" : ""));
      writeLines(group, lines, { x: spot.x + spot.width / 2, y: spot.y + 13, anchor: "middle", look: looks });
      return;
    }
    listed += 1;
    if (inside(own, bounds)) write(group, String(listed), { x: own.x, y: own.y + 4.5, anchor: "middle", look: "strong" });
    for (const line of wrapped(`${listed} ${pulley.name}, ${said.join(", ")}`, bounds.width - 8)) {
      foot += leading;
      write(group, line, { x: bounds.x + 2, y: foot - 4 });
    }
  });
  if (labelling.lengths && belt.run) labelSpans(group, belt.run, { view, units, discs, segments, boxes, bounds });
  return foot;
}

interface Around {
  readonly view: View;
  readonly units: FigureUnits;
  readonly discs: readonly Disc[];
  readonly segments: readonly Segment[];
  readonly boxes: Box[];
  readonly bounds: Box;
}

/** The free length of each span beside its middle, where there is room. */
function labelSpans(group: Group, { spans }: BeltRun, { view, units, discs, segments, boxes, bounds }: Around): void {
  spans.forEach(({ start, end, length, direction }) => {
    if (length * view.scale < shortest) return;
    const text = reading(units, "length", length, { digits: 3 });
    const middle: Disc = { x: view.x((start.x + end.x) / 2), y: view.y((start.y + end.y) / 2), radius: 3 };
    if (!inside(middle, bounds)) return;
    // To the left of the travel as the screen shows it, or to the right; along the belt there is no room.
    const aside = -direction - Math.PI / 2;
    const size = { width: widest([text]), height: leading };
    const spot = clearSpot(middle, size, aside, { discs, segments, boxes, bounds });
    if (!spot || spot.away > 20) return;
    boxes.push(spot);
    write(group, text, { x: spot.x + spot.width / 2, y: spot.y + 13, anchor: "middle", look: "mute" });
  });
}

function inside({ x, y }: Disc, bounds: Box): boolean {
  return x >= bounds.x && y >= bounds.y && x <= bounds.x + bounds.width && y <= bounds.y + bounds.height;
}

/** A hair from a label to the pulley that it names. */
function leader(group: Group, own: Disc, spot: Box): void {
  const x = Math.min(Math.max(own.x, spot.x), spot.x + spot.width);
  const y = Math.min(Math.max(own.y, spot.y), spot.y + spot.height);
  const away = Math.hypot(own.x - x, own.y - y);
  const share = own.radius / away;
  group
    .append("path")
    .attr("class", "thread")
    .attr("d", `M${px(x)},${px(y)}L${px(own.x + (x - own.x) * share)},${px(own.y + (y - own.y) * share)}`);
}
