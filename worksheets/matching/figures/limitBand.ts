import { type Box, type Group, hatching, leading, px, rowsFor, textWidth, write } from "../../drawing";
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

/** A strip told by pattern and, beneath each limit's longest stretch, by its name. Gives back the height it took. */
export function limitBand(
  group: Group,
  stretches: readonly Stretch[],
  { left, right, top, title, known }: Frame,
): number {
  const all = joined(stretches).filter(({ from, to }) => to > from);
  write(group, title, { x: left, y: top + 10, look: "mute" });
  const y = top + strip.title + 3;
  for (const each of all) {
    const box = { x: each.from, y, width: each.to - each.from, height: strip.thick };
    if (!each.past && !each.empty && !known.includes(each.name)) known.push(each.name);
    fill(group, box, each, known.indexOf(each.name));
    if (each.empty) continue;
    group
      .append("path")
      .attr("class", each.past ? "hatch-past" : "outline hair")
      .attr("d", `M${px(box.x)},${y}h${px(box.width)}v${strip.thick}h${px(-box.width)}z`);
  }
  const named = new Map<string, Stretch>();
  for (const each of all) {
    if (each.name === "") continue;
    const before = named.get(each.name);
    if (!before || each.to - each.from > before.to - before.from) named.set(each.name, each);
  }
  const labels = [...named.values()].map((each) => {
    const text = each.past ? `■ ${each.name}` : each.name;
    const size = textWidth(text, { bold: each.past === true });
    const middle = (each.from + each.to) / 2;
    return { each, text, size, middle, at: Math.min(Math.max(middle, left + size / 2), right - size / 2) };
  });
  const rows = rowsFor(labels.map(({ at, size }) => ({ at, size })));
  const base = (i: number) => y + strip.thick + 16 + rows[i]! * leading;
  const threads = labels.map(({ at, middle, size }, i) => {
    if (rows[i] === 0 && Math.abs(at - middle) <= size / 2) return "";
    return `M${px(Math.min(Math.max(middle, at - size / 2), at + size / 2))},${y + strip.thick}V${base(i) - 11}`;
  });
  group.append("path").attr("class", "thread").attr("d", threads.join(""));
  labels.forEach(({ each, text, at }, i) => {
    const look = each.past ? "past" : each.empty ? "mute" : "";
    write(group, text, { x: at, y: base(i), anchor: "middle", look });
  });
  return strip.title + 3 + strip.thick + 6 + (1 + Math.max(-1, ...rows)) * leading;
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
