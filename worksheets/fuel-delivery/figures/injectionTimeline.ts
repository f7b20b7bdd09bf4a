import { cylinderPressureAt } from "../../../lib/fuel";
import type { CrankAngle } from "../../../lib/quantity";
import { axisRoom, dimension, figures, type Group, leading, plate, px, spot, textWidth, write } from "../../drawing";
import { type FigureUnits, figure } from "../../sheet";
import { injectionAngle } from "../cells";
import { injectionStart, injectionWindow, latestEnd, peakAngle } from "../inputs";
import { cylinderTrace, injectionCourse } from "../timing";
import { lineThrough, type Plot, plot } from "./plot";

/** A crank angle with its sign, as a drawing has it. */
export function degrees(units: FigureUnits, angle: number): string {
  return `${figures(units.number("crankAngle", angle), 3)}°`;
}

const rateHeight = 170;
const pressureHeight = 130;

export const injectionTimeline = figure({
  key: "injectionTimeline",
  title: "Injections along the crank, and what they spray against",
  from: { injectionCourse, cylinderTrace, injectionStart, injectionWindow, injectionAngle, latestEnd, peakAngle },
  describe: (at, units) => {
    const { pulses, last } = at.injectionCourse;
    const each = pulses.map(
      ({ name, start, end, volume }) =>
        `${name.toLowerCase()} injection ${units.text("volumePerStroke", volume)} from ${degrees(units, start)} to ${degrees(units, end)}`,
    );
    const left = at.latestEnd - last;
    return [
      `Counted from top dead centre: ${each.join("; ") || "no fuel at 0°"}.`,
      `The pressure in the cylinder is ${units.text("pressure", at.cylinderTrace.compression, "boost")} there and peaks at ${units.text("pressure", at.cylinderTrace.peak, "boost")}.`,
      `The last fuel may come at ${degrees(units, at.latestEnd)}: ${degrees(units, Math.abs(left))} ${left >= 0 ? "are left" : "are missing"}.`,
      `From the main injection's start ${degrees(units, at.injectionWindow)} are allowed, up to ${degrees(units, windowOf(at).end)}: all fuel at one go takes ${degrees(units, at.injectionAngle)}.`,
    ].join(" ");
  },
  draw: (at, { width, units }) => {
    const { pulses, first, last } = at.injectionCourse;
    const crank = (angle: number) => units.number("crankAngle", angle);
    const rate = (flow: number) => units.number("volumeFlow", flow, "small");
    const bar = (pressure: number) => units.number("pressure", pressure, "boost");
    const margin = 0.08;
    const from = Math.min(first, 0, -at.injectionStart) - margin;
    const allowed = windowOf(at);
    const to = Math.max(last, at.latestEnd, at.peakAngle, allowed.end) + 1.6 * margin;
    const highest = Math.max(...pulses.flatMap((pulse) => pulse.rate.map(({ flow }) => flow)), 1e-9);
    const top = 92;
    const pressureTop = top + rateHeight + axisRoom + 42;
    const { svg, ground } = plate(width, pressureTop + pressureHeight + axisRoom + 4);
    const left = 54;
    const title = "Crank angle after top dead centre, °";
    const upper = plot(ground, {
      x: [crank(from), crank(to)],
      y: [0, rate(highest) * 1.22],
      xTitle: title,
      yTitle: `Rate of injection, ${units.unit("volumeFlow", "small")}`,
      width,
      top,
      height: rateHeight,
      left,
      titleAbove: 76,
    });
    const angles = Array.from({ length: 121 }, (_, i) => from + (i / 120) * (to - from));
    const pressures = angles.map((angle) => cylinderPressureAt(at.cylinderTrace, angle as CrankAngle));
    const lower = plot(ground, {
      x: [crank(from), crank(to)],
      y: [0, bar(at.cylinderTrace.peak) * 1.1],
      xTitle: title,
      yTitle: `Cylinder pressure, ${units.unit("pressure", "boost")}`,
      width,
      top: pressureTop,
      height: pressureHeight,
      left,
    });
    for (const each of [upper, lower]) deadCentre(ground, each);
    pulses.forEach((pulse, row) => {
      const points = pulse.rate.map(({ angle, flow }) => [upper.x(crank(angle)), upper.y(rate(flow))] as const);
      const [begin, end] = [upper.x(crank(pulse.start)), upper.x(crank(pulse.end))];
      ground.append("path").attr("class", "wash-1").attr("data-row", row).attr("d", `${lineThrough(points)}Z`);
      ground.append("path").attr("class", "line-1").attr("d", lineThrough(points));
      ground
        .append("rect")
        .attr("class", "wash")
        .attr("x", px(begin))
        .attr("y", lower.top)
        .attr("width", px(end - begin))
        .attr("height", lower.bottom - lower.top);
      spot(ground, row, { x: begin - 6, y: upper.top, width: Math.max(12, end - begin + 12), height: rateHeight });
      const words = pulse.name;
      const half = textWidth(words, { bold: true }) / 2;
      const crest = Math.min(...points.map(([, y]) => y));
      const volume = units.text("volumePerStroke", pulse.volume).split("/stroke")[0]!;
      const inside = end - begin > 2 * half + 16;
      const centre = Math.max(left + half, Math.min((begin + end) / 2, width - half - 2));
      const middle = inside ? besideDeadCentre(centre, upper.x(0), Math.max(half, textWidth(volume) / 2) + 6, [begin, end]) : centre;
      write(ground, words, { x: middle, y: inside ? (upper.bottom + crest) / 2 : crest - 8, anchor: "middle", look: inside ? "one plain" : "one" });
      if (!inside) return;
      write(ground, volume, {
        x: middle,
        y: (upper.bottom + crest) / 2 + leading,
        anchor: "middle",
        look: "mute plain",
      });
      dimension(ground, begin, end, crest - 10);
      write(ground, degrees(units, pulse.end - pulse.start), { x: middle, y: crest - 15, anchor: "middle", look: "strong" });
    });
    ground
      .append("path")
      .attr("class", "line-2")
      .attr("data-row", pulses.length + 1)
      .attr("d", lineThrough(angles.map((angle, i) => [lower.x(crank(angle)), lower.y(bar(pressures[i]!))])));
    windowAbove(ground, upper, {
      from: crank(allowed.start),
      to: crank(allowed.end),
      past: at.injectionAngle > at.injectionWindow,
      width,
      words: `${degrees(units, at.injectionWindow)} allowed, all at one go takes ${degrees(units, at.injectionAngle)}`,
      row: pulses.length + 2,
    });
    limitAt(ground, upper, { at: crank(at.latestEnd), past: last > at.latestEnd, width, words: `last fuel by ${degrees(units, at.latestEnd)}`, row: pulses.length });
    return svg;
  },
  table: (at, units) => {
    const { pulses, last } = at.injectionCourse;
    const rows = pulses.map(({ name, start, end, volume, opening }) => [
      `${name} injection`,
      units.number("crankAngle", start),
      units.number("crankAngle", end),
      units.number("volumePerStroke", volume),
      units.number("fraction", opening),
    ]);
    return {
      columns: [
        "What",
        ["From", "°"],
        ["To", "°"],
        ["Fuel", units.unit("volumePerStroke")],
        ["Needle opens", units.unit("fraction")],
      ],
      rows: [
        ...rows,
        ["Latest end allowed", units.number("crankAngle", last), units.number("crankAngle", at.latestEnd), 0, 0],
        ["Peak cylinder pressure", units.number("crankAngle", at.peakAngle), units.number("crankAngle", at.peakAngle), 0, 0],
        ["Window for all fuel at one go", units.number("crankAngle", windowOf(at).start), units.number("crankAngle", windowOf(at).end), 0, 0],
      ],
    };
  },
});

/** Where words of some half width stand clear of the line of dead centre, if an injection has the room; else where they stood. */
function besideDeadCentre(middle: number, zero: number, half: number, [begin, end]: readonly [number, number]): number {
  if (Math.abs(middle - zero) >= half) return middle;
  const moved = middle >= zero ? zero + half : zero - half;
  return moved - half >= begin && moved + half <= end ? moved : middle;
}

function deadCentre(group: Group, { x, top, bottom }: Plot): void {
  group.append("path").attr("class", "center").attr("d", `M${px(x(0))},${bottom}V${top}`);
}

/** The crank angles between which all fuel at one go may come: the window counts from where the main injection starts. */
function windowOf(at: { readonly injectionStart: number; readonly injectionWindow: number }) {
  return { start: -at.injectionStart, end: at.injectionWindow - at.injectionStart };
}

interface WindowMark {
  readonly from: number;
  readonly to: number;
  readonly past: boolean;
  readonly width: number;
  readonly words: string;
  readonly row: number;
}

/** A bracket over the plot from the start of a window to its end, which hang down into it. */
function windowAbove(group: Group, { x, top, bottom }: Plot, { from, to, past, width, words, row }: WindowMark): void {
  const [begin, end] = [x(from), x(to)];
  const height = top - 36;
  spot(group, row, { x: begin, y: height - 20, width: end - begin, height: 26 });
  group.append("path").attr("class", "dotted").attr("d", `M${px(begin)},${px(height)}V${bottom}M${px(end)},${px(height)}V${bottom}`);
  dimension(group, begin, end, height, past ? "past" : "");
  const text = past ? `■ ${words}` : words;
  const reach = textWidth(text, { bold: true }) / 2;
  write(group, text, {
    x: Math.max(2 + reach, Math.min((begin + end) / 2, width - reach - 2)),
    y: height - 8,
    anchor: "middle",
    look: past ? "past" : "strong",
  });
}

interface LimitMark {
  readonly at: number;
  readonly past: boolean;
  readonly width: number;
  readonly words: string;
  readonly row: number;
}

function limitAt(group: Group, { x, top, bottom }: Plot, { at, past, width, words, row }: LimitMark): void {
  const place = x(at);
  spot(group, row, { x: place - 7, y: top, width: 14, height: bottom - top });
  group.append("path").attr("class", "limit").attr("data-row", row).attr("d", `M${px(place)},${bottom}V${top - 4}`);
  const text = past ? `■ ${words}` : words;
  const reach = textWidth(text, { bold: true }) / 2;
  write(group, text, {
    x: Math.max(2 + reach, Math.min(place, width - reach - 2)),
    y: top - 10,
    anchor: "middle",
    look: past ? "past" : "strong",
  });
}
