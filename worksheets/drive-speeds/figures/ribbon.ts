import type { BeltRun, Rotation, RunPulley } from "../../../lib/drive";
import { px } from "../../drawing";
import { turnsClockwise, type View } from "./beltPath";

/** Corners of an arc's ribbon lie no further apart than this, seen from its axis [rad]. */
const fine = 0.12;

interface Ribbon {
  readonly run: BeltRun;
  readonly travel: Rotation;
  readonly view: View;
  /** Width of the ribbon on each span, in the order of the run's spans, in CSS pixels. */
  readonly widths: readonly number[];
}

type Corner = readonly [x: number, y: number];

/**
 * A ribbon that lies on the back of a belt, as wide on each span as is said, growing or shrinking round the pulleys.
 *
 * @returns outlines of its parts: one for each pulley, and one for each span that leaves it
 */
export function ribbon({ run, travel, view, widths }: Ribbon): { readonly arcs: readonly string[]; readonly spans: readonly string[] } {
  const along = run.pulleys.map((pulley, i) => arcCorners(pulley, travel, view, widths.at(i - 1)!, widths[i]!));
  const arcs = along.map(({ line, back }) => outline(line, back));
  const spans = along.map(({ line, back }, i) => {
    const next = along[(i + 1) % along.length]!;
    return outline([line.at(-1)!, next.line[0]!], [back.at(-1)!, next.back[0]!]);
  });
  return { arcs, spans };
}

/** The line that the ribbon's outer edge follows, all round. */
export function ribbonEdge({ run, travel, view, widths }: Ribbon): string {
  const corners = run.pulleys.flatMap(
    (pulley, i) => arcCorners(pulley, travel, view, widths.at(i - 1)!, widths[i]!).back,
  );
  return `M${corners.map(written).join("L")}Z`;
}

/** Corners along the pitch line round a pulley, and along the ribbon's outer edge. */
function arcCorners(
  pulley: RunPulley,
  travel: Rotation,
  view: View,
  before: number,
  after: number,
): { readonly line: readonly Corner[]; readonly back: readonly Corner[] } {
  const { x, y, pitchRadius, start, wrap, contact } = pulley;
  const [cx, cy, radius] = [view.x(x), view.y(y), pitchRadius * view.scale];
  // On the screen y runs down, and clockwise is the way of growing angles.
  const first = Math.atan2(view.y(start.y) - cy, view.x(start.x) - cx);
  const way = turnsClockwise(pulley, travel) ? 1 : -1;
  const outward = contact === "toothed" ? 1 : -1;
  const steps = Math.max(1, Math.ceil(wrap / fine));
  const at = (reach: number, angle: number): Corner => [cx + reach * Math.cos(angle), cy + reach * Math.sin(angle)];
  const corners = Array.from({ length: steps + 1 }, (_, i) => {
    const angle = first + (way * wrap * i) / steps;
    const width = before + ((after - before) * i) / steps;
    return { line: at(radius, angle), back: at(Math.max(0, radius + outward * width), angle) };
  });
  return { line: corners.map(({ line }) => line), back: corners.map(({ back }) => back) };
}

function outline(there: readonly Corner[], back: readonly Corner[]): string {
  return `M${[...there, ...back.toReversed()].map(written).join("L")}Z`;
}

function written([x, y]: Corner): string {
  return `${px(x)},${px(y)}`;
}
