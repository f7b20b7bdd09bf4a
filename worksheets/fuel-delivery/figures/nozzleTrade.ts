import { nozzleAreaForWindow } from "../../../lib/fuel";
import type { Pressure } from "../../../lib/quantity";
import { axisRoom, plate, px, spot, spotAt, textWidth, write } from "../../drawing";
import { figure } from "../../sheet";
import { windowed } from "../cells";
import { holeDiameter, nozzleHoles, railPressure } from "../inputs";
import { lineThrough, plot } from "./plot";

const steps = 22;
const height = 190;

type Windowed = Parameters<typeof nozzleAreaForWindow>[0];

/** Hole diameters that just fit the window, over rail pressure: from well above the cylinder's to 2700 bar. */
export function tradeOf(wanted: Windowed, holes: number) {
  const lowest = Math.max(300e5, 1.5 * wanted.cylinderPressure);
  const highest = Math.max(2700e5, 1.2 * lowest);
  return Array.from({ length: steps + 1 }, (_, i) => {
    // Closer together at low pressure, where the curve bends.
    const pressure = (lowest * (highest / lowest) ** (i / steps)) as Pressure;
    const area = nozzleAreaForWindow({ ...wanted, railPressure: pressure });
    return { pressure, diameter: Math.sqrt((4 * area) / (Math.PI * holes)) };
  });
}

export const nozzleTrade = figure({
  key: "nozzleTrade",
  title: "Holes against pressure: what just fits the window",
  from: { windowed, nozzleHoles, holeDiameter, railPressure },
  describe: (at, units) => {
    const micro = (value: number) => units.text("length", value, "small");
    const trade = tradeOf(at.windowed, at.nozzleHoles);
    const [low, high] = [trade[0]!, trade.at(-1)!];
    return `From ${units.text("pressure", low.pressure, "rail")} to ${units.text("pressure", high.pressure, "rail")} the hole that just fits the window shrinks from ${micro(low.diameter)} to ${micro(high.diameter)}. The nozzle has ${micro(at.holeDiameter)} at ${units.text("pressure", at.railPressure, "rail")}.`;
  },
  draw: (at, { width, units }) => {
    const bar = (value: number) => units.number("pressure", value, "rail");
    const micro = (value: number) => units.number("length", value, "small");
    const trade = tradeOf(at.windowed, at.nozzleHoles);
    const top = 40;
    const { svg, ground } = plate(width, top + height + axisRoom + 4);
    const diameters = [...trade.map(({ diameter }) => diameter), at.holeDiameter].map(micro);
    const { x, y, bottom, right } = plot(ground, {
      x: [bar(trade[0]!.pressure), bar(trade.at(-1)!.pressure)],
      y: [0.92 * Math.min(...diameters), 1.04 * Math.max(...diameters)],
      xTitle: `Rail pressure, ${units.unit("pressure", "rail")}`,
      yTitle: `Hole diameter, ${units.unit("length", "small")}`,
      width,
      top,
      height,
    });
    const line = trade.map(({ pressure, diameter }) => [x(bar(pressure)), y(micro(diameter))] as const);
    ground
      .append("path")
      .attr("class", "wash")
      .attr("d", `${lineThrough(line)}V${px(top)}H${px(line[0]![0])}Z`);
    ground.append("path").attr("class", "line-1").attr("d", lineThrough(line));
    trade.forEach((_, row) => {
      const reach = row === 0 ? 4 : Math.min(9, (line[row]![0] - line[row - 1]![0]) / 2 + 1);
      spot(ground, row, { x: line[row]![0] - reach, y: top, width: 2 * reach, height: bottom - top });
    });
    const here = [x(bar(at.railPressure)), y(micro(at.holeDiameter))] as const;
    ground.append("circle").attr("class", "ring").attr("cx", px(here[0])).attr("cy", px(here[1])).attr("r", 5);
    spotAt(ground, trade.length, here[0], here[1]);
    const words = "this nozzle";
    const side = here[0] + textWidth(words, { bold: true }) + 14 > right ? "end" : "start";
    write(ground, words, { x: here[0] + (side === "end" ? -10 : 10), y: here[1] - 9, anchor: side, look: "strong" });
    write(ground, "fits the window", { x: right - 6, y: top + 18, anchor: "end", look: "mute" });
    write(ground, "takes too long", { x: line[0]![0] + 12, y: bottom - 12, look: "mute" });
    return svg;
  },
  table: (at, units) => ({
    columns: [
      ["Rail pressure", units.unit("pressure", "rail")],
      ["Hole diameter", units.unit("length", "small")],
    ],
    rows: [
      ...tradeOf(at.windowed, at.nozzleHoles).map(({ pressure, diameter }) => [
        units.number("pressure", pressure, "rail"),
        units.number("length", diameter, "small"),
      ]),
      [units.number("pressure", at.railPressure, "rail"), units.number("length", at.holeDiameter, "small")],
    ],
  }),
});
