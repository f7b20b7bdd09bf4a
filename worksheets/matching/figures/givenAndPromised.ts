import { type Group, px, textWidth, write } from "../../drawing";

interface Marks {
  readonly x: number;
  /** Height of the promise. */
  readonly promised: { readonly y: number; readonly text: string };
  /** Height of what is given; undefined where nothing is. */
  readonly given: { readonly y: number; readonly text: string } | undefined;
  readonly short: boolean;
  /** Corners of the line that the words keep clear of. */
  readonly line: readonly (readonly [number, number])[];
  readonly right: number;
  readonly bottom: number;
  /** Foot of the dotted line down from the marks. */
  readonly foot: number;
}

/** The promise as a cross, what is given as a dot, and their values, one above the line and one below. */
export function givenAndPromised(group: Group, marks: Marks): void {
  const { x, promised, given, short, line, right, bottom, foot } = marks;
  const highest = Math.min(promised.y, given?.y ?? promised.y);
  group
    .append("path")
    .attr("class", "dotted")
    .attr("d", `M${px(x)},${px(foot)}V${px(highest)}`);
  group
    .append("path")
    .attr("class", "outline thick")
    .attr("d", `M${px(x - 7)},${px(promised.y)}h14M${px(x)},${px(promised.y - 7)}v14`);
  if (given) group.append("circle").attr("class", "dark").attr("cx", px(x)).attr("cy", px(given.y)).attr("r", 4.5);
  const words = [
    { text: promised.text, look: "strong", y: promised.y },
    given
      ? { text: `${short ? "■ " : ""}${given.text}`, look: short ? "past" : "one", y: given.y }
      : { text: "■ nothing is given here", look: "past", y: promised.y + 1 },
  ].sort((a, b) => a.y - b.y);
  words.forEach(({ text, look }, i) => {
    const size = textWidth(text, { bold: true });
    const middle = Math.min(Math.max(x, size / 2), right - size / 2);
    const [from, to] = [middle - size / 2 - 6, middle + size / 2 + 6];
    const heights = cut(line, from, to);
    const reach = [...heights, words[0]!.y, words[1]!.y];
    const base = i === 0 ? Math.min(...reach) - 9 : Math.min(Math.max(...reach) + 20, bottom - 8);
    write(group, text, { x: middle, y: base, anchor: "middle", look });
  });
}

/** Heights of a line between two places across: at its corners there, and where it enters and leaves. */
function cut(line: readonly (readonly [number, number])[], from: number, to: number): readonly number[] {
  return line.flatMap(([x, y], i) => {
    const heights = x >= from && x <= to ? [y] : [];
    const next = line[i + 1];
    if (!next) return heights;
    for (const edge of [from, to]) {
      if (x < edge && edge < next[0]) heights.push(y + ((edge - x) / (next[0] - x)) * (next[1] - y));
    }
    return heights;
  });
}
