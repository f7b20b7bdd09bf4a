import { narrow, plate, resized, widest, wrapped, write } from "../../drawing";
import type { FigureFrame } from "../../sheet";
import { drawBelt } from "./beltDrawing";
import { factsOf } from "./beltFacts";
import { labelBelt } from "./beltLabels";
import type { View } from "./beltPath";
import { drawFaults } from "./faultMarks";
import { firstMarks } from "./frontBoard";
import { scaleBar } from "./scaleBar";
import { extentOf, type ShownBelt } from "./shownBelt";

/** Widths from which two belts stand side by side, and how tall a belt may then be, in CSS pixels. */
const sideBySide = 640;
const tallest = 460;
/** Room for labels around a belt. */
const margin = { wide: 84, slim: 64, y: 44 };

/** Every belt by itself, all to one scale. */
export function drawPanels(beltRuns: readonly ShownBelt[], { width, units }: FigureFrame): SVGSVGElement {
  const abreast = width >= sideBySide ? 2 : 1;
  const side = width < narrow ? margin.slim : margin.wide;
  const extents = beltRuns.map((belt) => extentOf([belt]));
  const rows = Array.from({ length: Math.ceil(beltRuns.length / abreast) }, (_, i) =>
    extents.slice(i * abreast, (i + 1) * abreast),
  );
  const room = Math.min(
    ...rows.map((row) => (width - 2 * side * row.length) / row.reduce((sum, extent) => sum + extent.width, 0)),
  );
  const scale = Math.min(room, tallest / Math.max(...extents.map(({ height }) => height)));
  const marks = firstMarks(beltRuns);

  const { svg, ground } = plate(width, 1);
  let foot = 0;
  rows.forEach((row, r) => {
    const top = foot + 34;
    const spare = (width - row.reduce((sum, extent) => sum + extent.width * scale, 0)) / row.length;
    const height = Math.max(...row.map((extent) => extent.height)) * scale + 2 * margin.y;
    let left = 0;
    row.forEach((extent, i) => {
      const belt = beltRuns[r * abreast + i]!;
      const box = { x: left, y: top, width: extent.width * scale + spare, height };
      left += box.width;
      const x0 = box.x + (box.width - extent.width * scale) / 2;
      const y0 = box.y + (box.height - extent.height * scale) / 2;
      const view: View = { x: (x) => x0 + (x - extent.left) * scale, y: (y) => y0 + (extent.high - y) * scale, scale };
      const title = belt.fault === undefined ? belt.name : `${belt.name}: cannot be laid`;
      write(ground, title, { x: box.x + 2, y: box.y - 14, look: "band" });
      drawBelt(ground, belt, { view, mark: marks.get(belt.mark)! });
      const facts = (at: number) => factsOf(belt, at, units);
      const taken = drawFaults(ground, belt, { view, units, bounds: box });
      let low = labelBelt(ground, { belt, view, units, bounds: box, facts, listed: false, lengths: false, taken });
      for (const line of belt.fault === undefined ? [] : wrapped(`■ ${belt.fault}`, box.width - 12, { bold: true })) {
        low += 17;
        write(ground, line, { x: box.x + 2, y: low - 4, look: "past" });
      }
      foot = Math.max(foot, low);
    });
  });
  scaleBar(ground, { x: 2, y: foot + 14, scale, units });
  const turns = `crank turns ${beltRuns[0]?.travel ?? "clockwise"}`;
  if (width > widest([turns]) + 180) write(ground, turns, { x: width - 2, y: foot + 18.5, anchor: "end", look: "mute" });
  return resized(svg, width, foot + 28);
}
