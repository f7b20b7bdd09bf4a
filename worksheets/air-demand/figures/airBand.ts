import { scaleLinear } from "d3";
import {
  axisBelow,
  axisRoom,
  type Group,
  hatching,
  leading,
  px,
  rowsFor,
  share,
  spot,
  textWidth,
  write,
} from "../../drawing";
import { barHeight, type Columns, rowPlaces, rowWords, upright } from "./powerBand";

interface Air {
  readonly needed: number;
  readonly perMeter: number;
  readonly meters: number;
  /** Highest flow of one meter. */
  readonly capacity: number;
  readonly marks: readonly { readonly name: string; readonly flow: number }[];
  /** Row of the air needed in the figure's numbers; meters, one meter and the marks follow it. */
  readonly row: number;
}

/** Rows for the marks' labels, at most. */
const markRows = 3;

/** Height of the band, in CSS pixels. */
export function airBandHeight({ pitch }: Pick<Columns, "pitch">): number {
  return 2 * pitch + 8 + markRows * leading + 12 + axisRoom + leading + 4;
}

/** Air that is needed against what the meters hold, meter by meter, with other flows marked on the same scale. */
export function airBand(group: Group, { needed, perMeter, meters, capacity, marks, row }: Air, frame: Columns): void {
  const { units, left, right, top, pitch, stacked } = frame;
  const shown = (flow: number) => units.number("massFlow", flow);
  const holds = meters * capacity;
  const scale = scaleLinear([0, shown(Math.max(needed, holds, ...marks.map(({ flow }) => flow)))], [left, right]);
  const at = (flow: number) => scale(shown(flow));
  const places = rowPlaces(frame);
  const past = needed > holds;
  const rows = [top + places.bar, top + pitch + places.bar] as const;
  const bottom = rows[1] + barHeight + 8 + markRows * leading + 8;

  write(group, "Air, against what the meters read", { x: 2, y: top - 16, look: "band" });
  axisBelow(group, {
    at: scale,
    ticks: scale.ticks(Math.max(3, Math.floor((right - left) / 90))),
    ends: [left, right],
    across: bottom,
    title: `Air flow, ${units.unit("massFlow")}`,
  });

  for (const i of [0, 1]) spot(group, row + i, { x: 0, y: top + i * pitch, width: frame.width, height: pitch });
  group
    .append("rect")
    .attr("class", "solid")
    .attr("data-row", row)
    .attr("x", px(left))
    .attr("y", rows[0])
    .attr("width", px(at(needed) - left))
    .attr("height", barHeight);
  const shares = Array.from(
    { length: meters - 1 },
    (_, i) => `M${px(at(((i + 1) * needed) / meters))},${rows[0]}v${barHeight}`,
  );
  group.append("path").attr("class", "seam").attr("d", shares.join(""));
  if (past) {
    const over = { x: at(holds), y: rows[0], width: at(needed) - at(holds), height: barHeight };
    group
      .append("rect")
      .attr("class", "paper")
      .attr("x", px(over.x))
      .attr("y", over.y)
      .attr("width", px(over.width))
      .attr("height", barHeight);
    group.append("path").attr("class", "hatch-past").attr("d", hatching(over, 4));
  }

  const filled = Math.min(perMeter, capacity);
  const cells = Array.from({ length: meters }, (_, i) => i * capacity);
  const block = (from: number, to: number) => `M${px(at(from))},${rows[1]}H${px(at(to))}v${barHeight}H${px(at(from))}z`;
  group
    .append("path")
    .attr("class", "wash-1")
    .attr("data-row", row + 2)
    .attr("d", cells.map((from) => block(from, from + filled)).join(""));
  group
    .append("path")
    .attr("class", "outline")
    .attr("data-row", row + 1)
    .attr("d", cells.map((from) => block(from, from + capacity)).join(""));

  const labels = marks.map(({ name, flow }) => {
    const text = `${name} ${units.text("massFlow", flow)}`;
    const size = textWidth(text);
    const x = at(flow);
    // Beside its line: to the right, else to the left, else across it.
    const start =
      x + 6 + size <= frame.width ? x + 6 : x - 6 - size >= 2 ? x - 6 - size : Math.max(2, frame.width - size);
    return { text, x, start, size };
  });
  const low = rows[1] + barHeight + 8;
  const taken = rowsFor(
    labels.map(({ x, start, size }) => {
      const [from, to] = [Math.min(x - 2, start), Math.max(x + 2, start + size)];
      return { at: (from + to) / 2, size: to - from };
    }),
    4,
  );
  const base = labels.map((_, i) => low + taken[i]! * leading + 13);
  const lines = labels.map(({ x, start, size }, i) => {
    const across = start < x && x < start + size;
    const above = `M${px(x)},${rows[0] - (stacked ? 2 : 5)}v${barHeight + (stacked ? 2 : 5)}`;
    return `${above}${upright(x, rows[0] + barHeight, rows[1], stacked)}M${px(x)},${rows[1]}V${px(base[i]! - (across ? 14 : 0))}`;
  });
  group.append("path").attr("class", "outline").attr("d", lines.join(""));
  labels.forEach(({ text, start, size }, i) => {
    spot(group, row + 3 + i, { x: start - 2, y: base[i]! - 13, width: size + 4, height: leading });
    write(group, text, { x: start, y: base[i]! });
  });
  rowWords(group, frame, 0, ["Air needed", units.text("massFlow", needed), share(units, needed / holds)], true);
  rowWords(group, frame, 1, ["Meters at full span", units.text("massFlow", holds), share(units, 1)], false);
  const room = share(units, 1 - perMeter / capacity);
  const words = past
    ? `■ ${units.text("massFlow", needed - holds)} more than the meters read`
    : `${units.text("massFlow", perMeter)} through each of ${meters}, ${room} of span left`;
  write(group, words, { x: stacked ? 2 : left, y: bottom + axisRoom + leading, look: past ? "past" : "mute" });
}
