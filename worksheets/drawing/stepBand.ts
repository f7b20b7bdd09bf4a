import { scaleLinear } from "d3";
import { type Box, overlap } from "./hatching";
import { write } from "./label";
import { type Group, px } from "./plate";
import { textWidth } from "./textWidth";

interface StepBand {
  /** Middle of a station's tread, and the riser before it. */
  readonly middle: (i: number) => number;
  readonly edge: (i: number) => number;
  readonly left: number;
  readonly right: number;
  readonly title: string;
  readonly top: number;
  readonly height: number;
  readonly values: readonly number[];
  readonly words: readonly string[];
  /** Zero lies at the band's foot, and the area below the line is shaded. */
  readonly fromZero: boolean;
  readonly look: "line-1" | "line-2";
}

/** Room above the highest tread for its value, in CSS pixels. */
const headroom = 20;

/** A quantity along the path as a stepped line: a tread at each station, a riser at each element. */
export function stepBand(group: Group, band: StepBand): void {
  const { middle, edge, left, right, title, top, height, values, words, fromZero, look } = band;
  const bottom = top + height;
  const [low, high] = [Math.min(...values), Math.max(...values)];
  const span = high - low || Math.abs(high) || 1;
  const scale = scaleLinear(
    [fromZero ? Math.min(0, low) : low - 0.12 * span, fromZero ? high || 1 : high === low ? high + span : high],
    [bottom, top + headroom],
  );

  const line = values
    .map((value, i) => `${i === 0 ? `M${px(left)},` : "V"}${px(scale(value))}H${px(edge(i + 1))}`)
    .join("");
  if (fromZero)
    group
      .append("path")
      .attr("class", "wash-1")
      .attr("d", `${line}V${bottom}H${px(left)}Z`);
  group
    .append("path")
    .attr("class", "dotted")
    .attr("d", `M${px(left)},${px(scale(values[0]!))}H${px(right)}`);
  group
    .append("path")
    .attr("class", "axis")
    .attr("d", `M${px(left)},${bottom}H${px(right)}`);
  group.append("path").attr("class", look).attr("d", line);
  write(group, title, { x: left, y: top + 2, look: "band" });
  const taken: Box[] = [];
  words.forEach((word, i) => {
    const x = middle(i);
    const y = scale(values[i]!) - 7;
    const size = textWidth(word, { bold: true });
    // The title stands above the first treads: a value that would touch it goes under its tread.
    const meets = y - 11 < top + 6 && x - size / 2 < left + textWidth(title, { size: 15 });
    const base = meets ? y + 25 : y;
    const box = { x: Math.max(x - size / 2, left), y: base - 11, width: size, height: 14 };
    // Where treads are shorter than their values, some are left to the numbers.
    if (taken.some((other) => overlap(box, other, 1))) return;
    taken.push(box);
    write(group, word, { x: Math.max(x, left + size / 2), y: base, anchor: "middle", look: "strong" });
  });
}
