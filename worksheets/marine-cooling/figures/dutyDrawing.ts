import { area, scaleLinear } from "d3";
import { axisRoom, figures, narrow, plate, px, reading, textWidth, write } from "../../drawing";
import type { FigureFrame } from "../../sheet";
import { type EndLabel, curve, endLabels, endRoom, numbersRoom, panel, strips, titleRoom, upwards } from "./panel";

/** The engine and its propeller at one speed. */
export interface DutyPoint {
  readonly speed: number;
  /** What the engine may give there [W]; undefined where it was not asked or cannot run. */
  readonly enginePower: number | undefined;
  /** What the propeller takes [W]. */
  readonly propellerPower: number;
  /** Fuel on the propeller's curve [m³/s]. */
  readonly fuelFlow: number | undefined;
  /** How far the tank lasts on it [m]. */
  readonly range: number | undefined;
}

interface Duty extends FigureFrame {
  /** In ascending order of speed. */
  readonly points: readonly DutyPoint[];
  /** The point for which the boat is rated, and the rating's name. */
  readonly rated: { readonly speed: number; readonly power: number; readonly name: string };
}

/** Pairs of numbers, where both are there. */
const pairs = (
  points: readonly DutyPoint[],
  across: (point: DutyPoint) => number,
  up: (point: DutyPoint) => number | undefined,
): readonly (readonly [number, number])[] =>
  points.flatMap((point) => {
    const value = up(point);
    return value === undefined ? [] : [[across(point), value] as const];
  });

/** The engine's curve over the propeller's, and below them, on one scale of speed, fuel and range. */
export function drawDuty({ points, rated, width, units }: Duty): SVGSVGElement {
  const power = (value: number) => units.number("power", value);
  const speed = ({ speed: own }: { readonly speed: number }) => units.number("rotationalSpeed", own);
  const some = (value: number | undefined, shown: (value: number) => number) =>
    value === undefined ? undefined : shown(value);
  const engine = pairs(points, speed, ({ enginePower }) => some(enginePower, power));
  const propeller = pairs(points, speed, ({ propellerPower }) => power(propellerPower));
  const fuel = pairs(points, speed, ({ fuelFlow }) => some(fuelFlow, (v) => units.number("volumeFlow", v, "fuel")));
  const range = pairs(points, speed, ({ range: own }) => some(own, (v) => units.number("length", v, "boat")));
  const last = points.at(-1)!;
  const ends = {
    engine: ["engine may give", ...inWords(last.enginePower, (v) => reading(units, "power", v))],
    propeller: ["propeller takes", reading(units, "power", last.propellerPower)],
    fuel: inWords(last.fuelFlow, (v) => reading(units, "volumeFlow", v, { hint: "fuel" })),
    range: inWords(last.range, (v) => figures(units.number("length", v, "boat"))),
  };

  const [tall, low, between] = width < narrow ? [230, 92, 64] : [270, 104, 64];
  const powerTitle = `Power, ${units.unit("power")}`;
  const head = textWidth(powerTitle, { size: 15 }) + textWidth(rated.name, { bold: true }) > width * 0.6 ? 62 : 44;
  const tops = [head, head + tall + between, head + tall + low + 2 * between] as const;
  const scales = [
    upwards([0, ...engine.map(([, y]) => y), ...propeller.map(([, y]) => y), power(rated.power)], tops[0], tall),
    upwards([0, ...fuel.map(([, y]) => y)], tops[1], low),
    upwards([0, ...range.map(([, y]) => y)], tops[2], low),
  ] as const;
  const left = numbersRoom(scales);
  const right = width - endRoom(Object.values(ends));
  const x = scaleLinear([speed(points[0]!), speed(last)], [left, right]);
  const { svg, ground } = plate(width, tops[2] + low + axisRoom);
  strips(ground, x, points.map(speed), { top: tops[0], bottom: tops[2] + low });

  ground
    .append("path")
    .attr("class", "wash-1")
    .attr(
      "d",
      reserve(
        points,
        (point) => x(speed(point)),
        (value) => scales[0](power(value)),
      ),
    );
  const titles = [
    powerTitle,
    `Fuel on the propeller curve, ${units.unit("volumeFlow", "fuel")}`,
    `Range on one tank, ${units.unit("length", "boat")}s`,
  ];
  scales.forEach((y, i) => {
    const across = i === 2 ? { across: `Engine speed, ${units.unit("rotationalSpeed")}` } : {};
    panel(ground, { x, y, title: titles[i]!, titleAt: 2, ...across });
  });
  curve(ground, { x, y: scales[0] }, engine, "line-1");
  for (const [i, along] of [propeller, fuel, range].entries()) curve(ground, { x, y: scales[i]! }, along, "line-2");

  const named = (
    own: readonly (readonly [number, number])[],
    lines: readonly string[],
    panelAt: number,
    look: string,
  ): readonly EndLabel[] =>
    own.length === 0 || lines.length === 0
      ? []
      : [{ lines, y: scales[panelAt]!(own.at(-1)![1]), look: [look, "mute"] }];
  const groups = [
    [...named(engine, ends.engine, 0, "one"), ...named(propeller, ends.propeller, 0, "two")],
    named(fuel, ends.fuel, 1, "two"),
    named(range, ends.range, 2, "two"),
  ];
  groups.forEach((labels, i) => {
    const top = tops[i]!;
    endLabels(ground, labels, { x: right, span: [top - 8, top + (i === 0 ? tall : low) + 8] });
  });
  const at = { x: x(speed(rated)), y: scales[0](power(rated.power)) };
  ground
    .append("path")
    .attr("class", "dotted")
    .attr("d", `M${px(at.x)},${head > 44 ? 24 : tops[0] - 16}V${tops[2] + low}`);
  ground.append("circle").attr("class", "dark").attr("cx", px(at.x)).attr("cy", px(at.y)).attr("r", 5);
  write(ground, rated.name, { x: at.x, y: head > 44 ? 18 : tops[0] - titleRoom, anchor: "end", look: "strong" });
  return svg;
}

/** What the engine has to spare over the propeller, as an area over the speeds at which both are known. */
function reserve(points: readonly DutyPoint[], x: (point: DutyPoint) => number, y: (power: number) => number): string {
  const shape = area<DutyPoint>()
    .defined(({ enginePower, propellerPower }) => enginePower !== undefined && enginePower >= propellerPower)
    .x((point) => px(x(point)))
    .y0(({ propellerPower }) => px(y(propellerPower)))
    .y1(({ enginePower }) => px(y(enginePower ?? 0)));
  return shape(points) ?? "";
}

const inWords = (value: number | undefined, text: (value: number) => string): readonly string[] =>
  value === undefined ? [] : [text(value)];
