import { type Group, px, spotAt } from "../../drawing";
import { type FieldRun, isUnsure } from "./fieldSpan";
import type { FieldView } from "./fieldView";
import type { Corner } from "./shapes";
import { smoothLine } from "./smoothLine";

/** Where the points of a run lie in a field. */
export function runCorners({ run, cornerOf }: FieldView): readonly Corner[] {
  return run.map(({ result }) => cornerOf({ flow: result.correctedFlow, pressureRatio: result.pressureRatio }));
}

/** The line along which the engine runs through a field, with a mark for each speed; the promised speed's can be set. */
export function operatingLine(group: Group, view: FieldView, corners: readonly Corner[]): void {
  const { run } = view;
  for (const { look, corners: piece } of pieces(run, corners)) {
    group.append("path").attr("class", look).attr("d", smoothLine(piece));
  }
  // Below all marks, so that none of them is covered by its neighbour's place.
  run.forEach(({ row }, i) => {
    spotAt(group, row, ...corners[i]!, 7);
  });
  run.forEach(({ row, promised }, i) => {
    const [x, y] = corners[i]!;
    const mark = group
      .append("circle")
      .attr("class", promised ? "dark" : "ring")
      .attr("data-row", row)
      .attr("cx", px(x))
      .attr("cy", px(y))
      .attr("r", promised ? 6 : 3);
    if (promised) mark.attr("data-sets", "ratedSpeed").attr("data-track", trackWords(run, corners));
  });
}

/** A track for the hand: values and places along which a mark may be moved, "value,x,y value,x,y …". */
function trackWords(run: readonly FieldRun[], corners: readonly Corner[]): string {
  return run.map(({ engineSpeed }, i) => [engineSpeed, px(corners[i]![0]), px(corners[i]![1])].join(",")).join(" ");
}

interface Piece {
  readonly look: string;
  readonly corners: Corner[];
}

/** Neighbours that are drawn alike; pieces share their ends. */
function pieces(run: readonly FieldRun[], corners: readonly Corner[]): readonly Piece[] {
  const all: Piece[] = [];
  for (let i = 1; i < run.length; i += 1) {
    const { joined } = run[i]!;
    if (joined === "apart") continue;
    const outside = isUnsure(run[i]!) || isUnsure(run[i - 1]!);
    const look = joined === "leap" ? "leap running" : outside ? "running outside" : "running";
    const last = all.at(-1);
    if (last?.look === look && last.corners.at(-1) === corners[i - 1]) last.corners.push(corners[i]!);
    else all.push({ look, corners: [corners[i - 1]!, corners[i]!] });
  }
  return all;
}
