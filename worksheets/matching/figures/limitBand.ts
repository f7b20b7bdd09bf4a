import { type Box, type Group, hatching, leading, px, spread, textWidth, wrapped, write, writeLines } from "../../drawing";
import { cornersOf, hatchedShape } from "./shapes";

/** A stretch of the band: over it one limit holds. */
export interface Stretch {
  /** Same words, same pattern. */
  readonly name: string;
  readonly from: number;
  readonly to: number;
  /** Drawn as what may not be. */
  readonly past?: boolean;
  /** Nothing is known here. */
  readonly empty?: boolean;
}

interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly title: string;
  /** Names met before, in the order of their patterns; the band adds its own. */
  readonly known: string[];
}

const strip = { title: 14, thick: 18 };

/** Joins neighbours of one name. */
export function joined(stretches: readonly Stretch[]): readonly Stretch[] {
  const all: Stretch[] = [];
  for (const each of stretches) {
    const last = all.at(-1);
    if (last?.name === each.name && last.past === each.past && last.empty === each.empty)
      all[all.length - 1] = { ...last, to: each.to };
    else all.push(each);
  }
  return all;
}

/** A strip told by pattern and, beneath it, by each limit's name. Gives back the height it took. */
export function limitBand(
  group: Group,
  stretches: readonly Stretch[],
  { left, right, top, title, known }: Frame,
): number {
  const all = joined(stretches).filter(({ from, to }) => to > from);
  write(group, title, { x: left, y: top + 10, look: "mute" });
  const y = top + strip.title + 3;
  for (const each of all) {
    if (!each.past && !each.empty && !known.includes(each.name)) known.push(each.name);
    swatch(group, { x: each.from, y, width: each.to - each.from, height: strip.thick }, each, known.indexOf(each.name));
  }
  const foot = y + strip.thick;
  const labels = longest(all).map((each) => {
    const text = each.past ? `■ ${each.name}` : each.name;
    const look = each.past ? "past" : each.empty ? "mute" : "";
    return { each, text, look, size: textWidth(text, { bold: each.past === true }), at: (each.from + each.to) / 2 };
  });
  const middles = spread(labels, [left, right], 14);
  const fits = labels.every(({ size }, i) => middles[i]! + size / 2 <= right + 0.5 && middles[i]! - size / 2 >= left - 0.5);
  if (fits) {
    const threads = labels.map(({ each, at, size }, i) => {
      const middle = middles[i]!;
      if (Math.abs(at - middle) <= size / 2 - 8) return "";
      const under = Math.min(Math.max(at, middle - size / 2 + 8), middle + size / 2 - 8);
      const from = Math.min(Math.max(under, each.from + 4), each.to - 4);
      return `M${px(from)},${px(foot)}L${px(under)},${px(foot + 7)}`;
    });
    group.append("path").attr("class", "thread").attr("d", threads.join(""));
    labels.forEach(({ text, look }, i) => {
      write(group, text, { x: middles[i]!, y: foot + 18, anchor: "middle", look });
    });
    return foot + 23 - top;
  }
  // Too many names for one line: a list, each beside its pattern.
  let base = foot + 18;
  for (const { each, text, look } of labels) {
    swatch(group, { x: left, y: base - 10, width: 24, height: 11 }, each, known.indexOf(each.name));
    const lines = wrapped(text, right - left - 34, { bold: each.past === true });
    writeLines(group, lines, { x: left + 32, y: base, look: [look] });
    base += lines.length * leading;
  }
  return base - 8 - top;
}

/** The longest stretch of each name, in their order along the strip. */
function longest(all: readonly Stretch[]): readonly Stretch[] {
  const named = new Map<string, Stretch>();
  for (const each of all) {
    if (each.name === "") continue;
    const before = named.get(each.name);
    if (!before || each.to - each.from > before.to - before.from) named.set(each.name, each);
  }
  return [...named.values()].sort((a, b) => a.from - b.from);
}

/** A piece of the strip: its pattern in an outline. */
function swatch(group: Group, box: Box, stretch: Stretch, pattern: number): void {
  fill(group, box, stretch, pattern);
  if (stretch.empty) return;
  group
    .append("path")
    .attr("class", stretch.past ? "hatch-past" : "outline hair")
    .attr("d", `M${px(box.x)},${px(box.y)}h${px(box.width)}v${box.height}h${px(-box.width)}z`);
}

/** Fills by place in the order of names: a wash, strokes one way, the other way, upright, level, crossed. */
function fill(group: Group, box: Box, { past, empty }: Stretch, pattern: number): void {
  const path = (look: string, d: string) => group.append("path").attr("class", look).attr("d", d);
  const area = `M${px(box.x)},${box.y}h${px(box.width)}v${box.height}h${px(-box.width)}z`;
  if (empty) {
    path("dotted", `M${px(box.x)},${box.y + box.height / 2}h${px(box.width)}`);
    return;
  }
  if (past) {
    path("hatch-past", hatching(box, 5));
    return;
  }
  const strokes = [
    () => path("wash-1", area),
    () => path("hatch", hatching(box, 7)),
    () => path("hatch", hatchedShape(cornersOf(box), 5, Math.PI / 4)),
    () => path("hatch", hatchedShape(cornersOf(box), 6, Math.PI / 2)),
    () => path("hatch", hatchedShape(cornersOf(box), 5, 0)),
    () => path("hatch", hatching(box, 8) + hatchedShape(cornersOf(box), 5.6, Math.PI / 4)),
    () => path("wash", area),
  ];
  strokes[pattern % strokes.length]!();
}
