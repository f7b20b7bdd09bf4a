import { narrow, plate, resized, widest, wrapped, write } from "../../drawing";
import type { FigureFrame } from "../../sheet";
import { drawBelt } from "./beltDrawing";
import { factsOf } from "./beltFacts";
import { labelBelt } from "./beltLabels";
import { drawFaults } from "./faultMarks";
import { firstMarks } from "./frontBoard";
import { panelLayout, viewInto } from "./panelLayout";
import { scaleBar } from "./scaleBar";
import { extentOf, type ShownBelt } from "./shownBelt";

/** Widths from which two belts stand side by side, and how tall a belt may then be, in CSS pixels. */
const sideBySide = 560;
const tallest = 460;
/** Room for labels around a belt. */
const margin = { wide: 84, slim: 64, y: 44 };

/** Every belt by itself, all to one scale. */
export function drawPanels(beltRuns: readonly ShownBelt[], { width, units }: FigureFrame): SVGSVGElement {
  const extents = beltRuns.map((belt) => extentOf([belt]));
  const { scale, rows } = panelLayout(extents, {
    width,
    abreast: width >= sideBySide ? 2 : 1,
    side: width < narrow ? margin.slim : margin.wide,
    above: margin.y,
    tallest,
  });
  const marks = firstMarks(beltRuns);
  const { svg, ground } = plate(width, 1);
  let foot = 0;
  for (const { panels, height } of rows) {
    const top = foot + 34;
    for (const { at, left, width: across } of panels) {
      const belt = beltRuns[at]!;
      const bounds = { x: left, y: top, width: across, height };
      const view = viewInto(extents[at]!, bounds, scale);
      const title = belt.fault === undefined ? belt.name : `${belt.name}: cannot be laid`;
      write(ground, title, { x: bounds.x + 2, y: bounds.y - 14, look: "band" });
      drawBelt(ground, belt, { view, mark: marks.get(belt.mark)! });
      const facts = (i: number) => factsOf(belt, i, units);
      const taken = drawFaults(ground, belt, { view, units, bounds });
      let low = labelBelt(ground, { belt, view, units, bounds, facts, listed: false, lengths: false, taken });
      for (const line of belt.fault === undefined ? [] : wrapped(`■ ${units.refusal(belt.fault)}`, across - 12, { bold: true })) {
        low += 17;
        write(ground, line, { x: bounds.x + 2, y: low - 4, look: "past" });
      }
      foot = Math.max(foot, low);
    }
  }
  scaleBar(ground, { x: 2, y: foot + 14, scale, units });
  const turns = `crank turns ${beltRuns[0]?.travel ?? "clockwise"}`;
  if (width > widest([turns]) + 180) write(ground, turns, { x: width - 2, y: foot + 18.5, anchor: "end", look: "mute" });
  return resized(svg, width, foot + 28);
}
