import { area, scaleLinear } from "d3";
import { axisRoom, figures, type Group, narrow, plate, px, reading, spread, textWidth, write } from "../../drawing";
import type { FigureFrame } from "../../sheet";
import { curve, type EndLabel, endLabels, endRoom, numbersRoom, panel, strips, titleRoom, upwards } from "./panel";

/** The engine and its propeller at one speed. */
export interface DutyPoint {
  readonly speed: number;
  /** What the engine may give, and what the propeller takes [W]. */
  readonly enginePower: number;
  readonly propellerPower: number;
  /** What the chosen parts give by the match [W]; undefined where they give nothing. */
  readonly partsPower: number | undefined;
  /** Fuel on the propeller's curve, one engine [m³/s]. */
  readonly fuelFlow: number;
}

/** A part of the boat's duty, on the propeller's curve. */
export interface DutyPart {
  readonly speed: number;
  readonly power: number;
  readonly fuelFlow: number;
  /** Speed of the boat [m/s], and how far its tank lasts at that [m]. */
  readonly boatSpeed: number;
  readonly range: number;
}

interface Duty extends FigureFrame {
  /** In ascending order of speed. */
  readonly points: readonly DutyPoint[];
  /** In ascending order of speed. */
  readonly parts: readonly DutyPart[];
  /** Points that the figure's table lists, by their number; the parts' rows follow theirs. */
  readonly listed: readonly number[];
  /** The promised point, and what it is called. */
  readonly rated: { readonly speed: number; readonly power: number; readonly name: string };
}

const head = { one: 44, two: 64 };
const between = 66;

/** The engine's curve over the propeller's, and below them, on one scale of speed, fuel and range. */
export function drawDuty({ points, parts, listed, rated, width, units }: Duty): SVGSVGElement {
  const power = (value: number) => units.number("power", value);
  const fuel = (value: number) => units.number("volumeFlow", value, "fuel");
  const far = (value: number) => units.number("length", value, "boat");
  const speed = ({ speed: own }: { readonly speed: number }) => units.number("rotationalSpeed", own);
  const last = points.at(-1)!;
  const titles = [
    `Power, ${units.unit("power")}`,
    `Fuel on the propeller curve, ${units.unit("volumeFlow", "fuel")}`,
    `Range, ${units.unit("length", "boat")}, and the boat's speed`,
  ] as const;
  const ends = {
    engine: ["engine may give", reading(units, "power", last.enginePower)],
    propeller: ["propeller takes", reading(units, "power", last.propellerPower)],
    parts: ["parts give", ...(last.partsPower === undefined ? [] : [reading(units, "power", last.partsPower)])],
    fuel: [reading(units, "volumeFlow", last.fuelFlow, { hint: "fuel" })],
  };

  // The promised point's name stands on the first title's line if both fit there, else on a line above.
  const together = textWidth(titles[0], { size: 15 }) + textWidth(rated.name, { bold: true }) < 0.62 * width;
  const [tall, low] = width < narrow ? [230, 92] : [270, 104];
  const first = together ? head.one : head.two;
  const tops = [first, first + tall + between, first + tall + low + 2 * between] as const;
  const scales = [
    upwards(
      [0, ...points.flatMap((each) => [each.enginePower, each.propellerPower, each.partsPower ?? 0].map(power))],
      tops[0],
      tall,
    ),
    upwards([0, ...points.map((each) => fuel(each.fuelFlow))], tops[1], low),
    upwards([0, ...parts.map((each) => 1.15 * far(each.range))], tops[2], low),
  ] as const;
  const left = numbersRoom(scales);
  const right = width - endRoom(Object.values(ends));
  const speeds = [...points, ...parts].map(speed);
  const x = scaleLinear([Math.min(...speeds), Math.max(...speeds)], [left, right]);
  const { svg, ground } = plate(width, tops[2] + low + axisRoom);
  strips(
    ground,
    x,
    listed.map((i) => speed(points[i]!)),
    { top: tops[0], bottom: tops[1] + low },
  );

  const shape = area<DutyPoint>()
    .defined(({ enginePower, propellerPower }) => enginePower >= propellerPower)
    .x((point) => px(x(speed(point))))
    .y0(({ propellerPower }) => px(scales[0](power(propellerPower))))
    .y1(({ enginePower }) => px(scales[0](power(enginePower))));
  ground
    .append("path")
    .attr("class", "wash-1")
    .attr("d", shape(points) ?? "");
  scales.forEach((y, i) => {
    const across = i === 2 ? { across: `Engine speed, ${units.unit("rotationalSpeed")}` } : {};
    panel(ground, { x, y, title: titles[i]!, titleAt: 2, ...across });
  });
  const along = (up: (point: DutyPoint) => number) => points.map((point) => [speed(point), up(point)] as const);
  const curves = [
    along(({ enginePower }) => power(enginePower)),
    along(({ propellerPower }) => power(propellerPower)),
    along(({ fuelFlow }) => fuel(fuelFlow)),
    parts.map((part) => [speed(part), far(part.range)] as const),
    points.flatMap((point) => (point.partsPower === undefined ? [] : [[speed(point), power(point.partsPower)] as const])),
  ] as const;
  if (curves[4].length > 1) curve(ground, { x, y: scales[0] }, curves[4], "outline");
  curve(ground, { x, y: scales[0] }, curves[0], "line-1");
  curve(ground, { x, y: scales[0] }, curves[1], "line-2");
  curve(ground, { x, y: scales[1] }, curves[2], "line-2");
  if (parts.length > 1) curve(ground, { x, y: scales[2] }, curves[3], "thread");

  const end = (lines: readonly string[], which: 0 | 1 | 2 | 4, look: string): EndLabel => {
    const [at, up] = curves[which].at(-1)!;
    return { lines, y: scales[which === 2 ? 1 : 0](up), from: x(at), look: [look, "mute"] };
  };
  const given = curves[4].length > 1 ? [end(ends.parts, 4, "strong")] : [];
  endLabels(ground, [...given, end(ends.engine, 0, "one"), end(ends.propeller, 1, "two")], {
    x: right,
    span: [tops[0] - 8, tops[0] + tall + 8],
  });
  endLabels(ground, [end(ends.fuel, 2, "two")], { x: right, span: [tops[1] - 8, tops[1] + low + 8] });
  const at = { x: x(speed(rated)), y: scales[0](power(rated.power)) };
  ground
    .append("path")
    .attr("class", "dotted")
    .attr("d", `M${px(at.x)},${together ? tops[0] - 16 : 24}V${tops[0] + tall}`);
  ground.append("circle").attr("class", "dark").attr("cx", px(at.x)).attr("cy", px(at.y)).attr("r", 5);
  write(ground, rated.name, { x: at.x, y: together ? tops[0] - titleRoom : 18, anchor: "end", look: "strong" });
  parts.forEach((part, i) => {
    const places = [scales[0](power(part.power)), scales[1](fuel(part.fuelFlow)), scales[2](far(part.range))];
    for (const y of places) ring(ground, listed.length + i, x(speed(part)), y);
  });
  const words = parts.map(({ boatSpeed }) => figures(units.number("velocity", boatSpeed, "boat"), 2));
  const middles = spread(
    parts.map((part, i) => ({ at: x(speed(part)), size: textWidth(words[i]!, { bold: true }) })),
    [left, width - 2],
    8,
  );
  parts.forEach(({ range }, i) => {
    write(ground, words[i]!, { x: middles[i]!, y: scales[2](far(range)) - 10, anchor: "middle", look: "two" });
  });
  return svg;
}

function ring(group: Group, row: number, x: number, y: number): void {
  group.append("circle").attr("class", "ring").attr("data-row", row).attr("cx", px(x)).attr("cy", px(y)).attr("r", 4.5);
}
