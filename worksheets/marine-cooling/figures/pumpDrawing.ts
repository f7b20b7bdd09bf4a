import { scaleLinear } from "d3";
import {
  axisRoom,
  clearSpot,
  leading,
  narrow,
  plate,
  px,
  reading,
  type Segment,
  textWidth,
  widest,
  wrapped,
  write,
  writeLines,
} from "../../drawing";
import type { FigureFrame } from "../../sheet";
import { curve, endLabels, endRoom, numbersRoom, panel, upwards } from "./panel";

/** Flow [m³/s] and the pressure that goes with it [Pa]. */
export interface LinePoint {
  readonly flow: number;
  readonly pressure: number;
}

/** A pump's curve, or a line's. */
export interface LineCurve {
  readonly name: string;
  readonly points: readonly LinePoint[];
  readonly look: "line-1" | "line-2" | "outline" | "outline faint";
}

/** Where a pump's curve and a line's meet. */
export interface Crossing extends LinePoint {
  readonly name: string;
  /** The one at which the pump runs; the others are rings. */
  readonly main: boolean;
}

interface PumpPicture extends FigureFrame {
  readonly pumps: readonly LineCurve[];
  readonly lines: readonly LineCurve[];
  readonly crossings: readonly Crossing[];
  /** Flow that the heat asks for [m³/s]. */
  readonly needed: number | undefined;
}

const wordsOf = { "line-1": "one", "line-2": "two", outline: "strong", "outline faint": "mute" } as const;

/** Pressure over flow: what the pump makes, what the line takes, and where the two agree. */
export function drawPump({ pumps, lines, crossings, needed, width, units }: PumpPicture): SVGSVGElement {
  const flow = (value: number) => units.number("volumeFlow", value, "coolant");
  const pressure = (value: number) => units.number("pressureDifference", value);
  const placed = ({ points }: LineCurve) =>
    points.map((point): readonly [number, number] => [flow(point.flow), pressure(point.pressure)]);
  const all = [...pumps, ...lines].flatMap(placed);
  const top = 58;
  const height = width < narrow ? 250 : 290;
  const y = upwards([0, ...all.map(([, up]) => up)], top, height);
  const left = numbersRoom([y]);
  const inLines = ({ name }: LineCurve) => wrapped(name, width < narrow ? 80 : 160, { bold: true });
  const right = width - endRoom(lines.map(inLines));
  const x = scaleLinear([0, Math.max(...all.map(([across]) => across), flow(needed ?? 0))], [left, right]);
  const { svg, ground } = plate(width, top + height + axisRoom);
  const { bottom } = panel(ground, {
    x,
    y,
    title: `Pressure over flow, ${units.unit("pressureDifference")}`,
    titleAt: 2,
    across: `Raw-water flow, ${units.unit("volumeFlow", "coolant")}`,
  });
  if (needed !== undefined) {
    ground
      .append("path")
      .attr("class", "limit")
      .attr("d", `M${px(x(flow(needed)))},${px(bottom)}V${top}`);
    const words = `heat asks for ${reading(units, "volumeFlow", needed, { hint: "coolant" })}`;
    write(ground, words, {
      x: Math.max(left, Math.min(x(flow(needed)) - textWidth(words) / 2, width - textWidth(words) - 2)),
      y: top - 6,
      look: "mute",
    });
  }
  for (const each of [...lines, ...pumps]) curve(ground, { x, y }, placed(each), each.look);
  endLabels(
    ground,
    lines.map((each) => ({ lines: inLines(each), y: y(placed(each).at(-1)![1]), look: [wordsOf[each.look]] })),
    { x: right, span: [top - 4, bottom + 6] },
  );

  // Labels of crossings and pumps look for places clear of all curves and of each other.
  const segments = [
    ...[...pumps, ...lines].flatMap((each) => segmentsOf(placed(each).map(([a, b]) => [x(a), y(b)] as const))),
    ...(needed === undefined ? [] : [[x(flow(needed)), top, x(flow(needed)), bottom] as const]),
  ];
  const discs = crossings.map((each) => ({ x: x(flow(each.flow)), y: y(pressure(each.pressure)), radius: 6 }));
  const boxes: { x: number; y: number; width: number; height: number }[] = [];
  const bounds = { x: left, y: top, width: right - left, height: bottom - top };
  const mainDisc = discs[crossings.findIndex(({ main }) => main)];
  // The one that matters most is drawn over the others, and its words choose their place first.
  const inTurn = crossings.map((_, i) => i).sort((a, b) => Number(crossings[a]!.main) - Number(crossings[b]!.main));
  for (const i of inTurn) {
    const disc = discs[i]!;
    ground
      .append("circle")
      .attr("class", crossings[i]!.main ? "dark" : "ring")
      .attr("data-row", i)
      .attr("cx", px(disc.x))
      .attr("cy", px(disc.y))
      .attr("r", 5);
  }
  for (const i of [...inTurn].reverse()) {
    const { name, main, ...point } = crossings[i]!;
    const disc = discs[i]!;
    if (!main && mainDisc && Math.hypot(disc.x - mainDisc.x, disc.y - mainDisc.y) < 14) continue;
    const words = [name, reading(units, "volumeFlow", point.flow, { hint: "coolant" })];
    const size = { width: widest(words, { bold: true }), height: 2 * leading };
    const outward = main ? 0 : Math.PI * 1.1;
    const place =
      clearSpot(disc, size, outward, { discs, segments, boxes, bounds }) ??
      clearSpot(disc, size, outward, { discs, segments: [], boxes, bounds });
    if (!place) continue;
    boxes.push(place);
    if (place.away > 20) {
      const to = { x: within(disc.x, place.x, place.width), y: within(disc.y, place.y, place.height) };
      ground
        .append("path")
        .attr("class", "thread")
        .attr("d", `M${px(disc.x)},${px(disc.y)}L${px(to.x)},${px(to.y)}`);
    }
    writeLines(ground, words, { x: place.x, y: place.y + 13, look: [main ? "strong" : "", "mute"] });
  }
  for (const each of pumps) {
    const ends = placed(each).map(([a, b]) => ({ x: x(a), y: y(b), radius: 2 }));
    const size = { width: textWidth(each.name, { bold: true }), height: leading };
    for (const end of [ends.at(-1)!, ends[Math.floor(ends.length / 2)]!, ends[0]!]) {
      const place = clearSpot(end, size, -Math.PI / 4, { discs, segments, boxes, bounds });
      if (!place) continue;
      boxes.push(place);
      write(ground, each.name, { x: place.x, y: place.y + 13, look: wordsOf[each.look] });
      break;
    }
  }
  return svg;
}

function segmentsOf(points: readonly (readonly [number, number])[]): readonly Segment[] {
  return points.slice(1).map((to, i): Segment => [points[i]![0], points[i]![1], to[0], to[1]]);
}

/** The place in a span that lies nearest to another. */
const within = (at: number, from: number, size: number) => Math.min(Math.max(at, from), from + size);
