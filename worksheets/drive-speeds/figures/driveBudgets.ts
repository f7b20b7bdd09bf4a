import { scaleLinear } from "d3";
import {
  axisLeft,
  figures,
  type Group,
  plate,
  px,
  reading,
  spot,
  write,
} from "../../drawing";
import { type FigureFrame, figure } from "../../sheet";
import { beltRuns } from "../beltRuns";
import { type ElectricalPoint, electricalBudget, type HydraulicPoint, hydraulicBudget } from "../budgets";
import { engineSpeeds } from "./engineSpeeds";
import { drawSpeeds, type SpeedAxis, speedAxis, speedRoom } from "./speedAxis";

/** Height of each of the two plots, in CSS pixels. */
const height = 190;
const head = 26;

/** What is given and what is asked for, at one engine speed. */
interface Supply {
  readonly speed: number;
  readonly given: number;
  readonly asked: number;
}

export const driveBudgets = figure({
  key: "driveBudgets",
  title: "Current and oil over engine speed: what is given and what is asked for",
  from: { electricalBudget, hydraulicBudget, beltRuns },
  describe: ({ electricalBudget, hydraulicBudget }, units) => {
    const current = (value: number) => reading(units, "electricCurrent", value);
    const flow = (value: number) => reading(units, "volumeFlow", value, { hint: "coolant" });
    const short = engineSpeeds.flatMap(({ key, phrase }) => {
      const point = electricalBudget.find(({ speed }) => speed === key)!;
      return point.balance < 0 ? [`at ${phrase} ${current(-point.balance)} are missing`] : [];
    });
    const idle = electricalBudget.find(({ speed }) => speed === "idle")!;
    const dry = engineSpeeds.flatMap(({ key, phrase }) => {
      const { flow: given, used } = hydraulicBudget.find(({ speed }) => speed === key)!;
      return given < used ? [`at ${phrase} the oil pump gives ${flow(given)} of ${flow(used)}`] : [];
    });
    const hottest = hydraulicBudget.reduce((a, b) => (b.heat > a.heat ? b : a));
    const words = engineSpeeds.find(({ key }) => key === hottest.speed)!.phrase;
    return [
      short.length > 0
        ? `The batteries are drawn down: ${short.join(", ")}.`
        : `The alternator carries its loads at every speed; at idle ${current(idle.balance)} are left of ${current(idle.output)}.`,
      ...(dry.length > 0 ? [`${dry.join(", ").replace(/^a/, "A")}.`] : []),
      `Most heat goes into the oil at ${words}: ${reading(units, "power", hottest.heat)}.`,
    ].join(" ");
  },
  draw: ({ electricalBudget, hydraulicBudget, beltRuns }, { width, units }) => {
    const speeds = beltRuns[0]!.members[0]!.at;
    const axis = speedAxis(speeds, [52, width - 22]);
    const first = { top: head + speedRoom.above, bottom: head + speedRoom.above + height };
    const second = { top: first.bottom + 62, bottom: first.bottom + 62 + height };
    const { svg, ground } = plate(width, second.bottom + speedRoom.below);
    engineSpeeds.forEach(({ key }, i) => {
      spot(ground, i, { x: axis.x(speeds[key]) - 13, y: first.top - 8, width: 26, height: second.bottom - first.top + 8 });
    });
    write(ground, `Current, ${units.unit("electricCurrent")}`, { x: 2, y: 16, look: "band" });
    write(ground, `Oil, ${units.unit("volumeFlow", "coolant")}`, { x: 2, y: second.top - 14, look: "band" });
    drawSpeeds(ground, { axis, speeds, top: first.top, bottom: second.bottom, plots: [first, second], units, width });
    plot(ground, axis, first, {
      points: electricalBudget.map((point) => supply(speeds[point.speed], point, units)),
      names: ["alternator", "loads"],
    });
    plot(ground, axis, second, {
      points: hydraulicBudget.map((point) => flowSupply(speeds[point.speed], point, units)),
      names: ["pump", "loads"],
    });
    return svg;
  },
  table: ({ electricalBudget, hydraulicBudget, beltRuns }, units) => {
    const speeds = beltRuns[0]!.members[0]!.at;
    const current = (value: number) => units.number("electricCurrent", value);
    const flow = (value: number) => units.number("volumeFlow", value, "coolant");
    return {
      columns: [
        "At",
        ["Engine speed", units.unit("rotationalSpeed")],
        ...["Alternator", "Electrical loads", "Left for the batteries"].map((name) => [name, units.unit("electricCurrent")] as const),
        ...["Oil given", "Oil used"].map((name) => [name, units.unit("volumeFlow", "coolant")] as const),
        ...["Pump's shaft", "Put to use", "Heat into the oil"].map((name) => [name, units.unit("power")] as const),
      ],
      rows: engineSpeeds.map(({ key, phrase }) => {
        const { output, load, balance } = electricalBudget.find(({ speed }) => speed === key)!;
        const oil = hydraulicBudget.find(({ speed }) => speed === key)!;
        return [
          phrase,
          units.number("rotationalSpeed", speeds[key]),
          ...[output, load, balance].map(current),
          ...[oil.flow, oil.used].map(flow),
          ...[oil.shaftPower, oil.useful, oil.heat].map((power) => units.number("power", power)),
        ];
      }),
    };
  },
});

function supply(speed: number, { output, load }: ElectricalPoint, units: FigureFrame["units"]): Supply {
  return { speed, given: units.number("electricCurrent", output), asked: units.number("electricCurrent", load) };
}

function flowSupply(speed: number, { flow, used }: HydraulicPoint, units: FigureFrame["units"]): Supply {
  return { speed, given: units.number("volumeFlow", flow, "coolant"), asked: units.number("volumeFlow", used, "coolant") };
}

interface Plotted {
  readonly points: readonly Supply[];
  /** Of what is given, and of what is asked for. */
  readonly names: readonly [string, string];
}

/** Two lines over engine speed; what is missing between them is hatched. */
function plot(
  group: Group,
  { x, ends }: SpeedAxis,
  { top, bottom }: { readonly top: number; readonly bottom: number },
  { points, names }: Plotted,
): void {
  const ordered = [...points].sort((a, b) => a.speed - b.speed);
  const most = Math.max(...ordered.flatMap(({ given, asked }) => [given, asked])) || 1;
  const y = scaleLinear([0, most * 1.14], [bottom, top]);
  axisLeft(group, { at: y, ticks: y.ticks(4), ends: [bottom, top + 11], across: ends[0], grid: ends[1] });
  group.append("path").attr("class", "axis").attr("d", `M${px(ends[0])},${bottom}H${px(ends[1])}`);
  for (const [i, to] of ordered.slice(1).entries()) drawShortfall(group, ordered[i]!, to, x, y);
  const path = (of: (point: Supply) => number) =>
    ordered.map((point, i) => `${i === 0 ? "M" : "L"}${px(x(point.speed))},${px(y(of(point)))}`).join("");
  group.append("path").attr("class", "line-1").attr("d", path(({ given }) => given));
  group.append("path").attr("class", "line-2").attr("d", path(({ asked }) => asked));
  for (const { speed, given, asked } of ordered) {
    const short = given < asked;
    const at = px(x(speed));
    group.append("path").attr("class", short ? "mark-past" : "solid").attr("d", short ? `M${px(x(speed) - 4.5)},${px(y(given) - 4.5)}h9v9h-9Z` : `M${px(x(speed) - 3.5)},${px(y(given))}a3.5,3.5 0 1 1 7,0a3.5,3.5 0 1 1 -7,0Z`);
    group.append("circle").attr("class", "ring").attr("cx", at).attr("cy", px(y(asked))).attr("r", 3);
  }
  nameLines(group, ordered, { x, y, ends, names, bottom });
}

interface Named {
  readonly x: (speed: number) => number;
  readonly y: (value: number) => number;
  readonly ends: readonly [number, number];
  readonly names: readonly [string, string];
  readonly bottom: number;
}

/** Names both lines near their right ends, the upper one above and the lower one below, or between them where it has no room. */
function nameLines(group: Group, points: readonly Supply[], { x, y, ends, names, bottom }: Named): void {
  const { speed, given, asked } = points.at(-1)!;
  const lowest = y(Math.min(given, asked));
  const lower = lowest + (lowest + 24 > bottom ? -9 : 20);
  const upper = Math.min(y(Math.max(given, asked)) - 9, lower - 16);
  const name = (text: string, at: number, look: string): void =>
    write(group, text, { x: Math.min(x(speed), ends[1]) - 8, y: at, anchor: "end", look });
  name(`${names[0]} ${figures(given, 3)}`, given >= asked ? upper : lower, "one");
  name(`${names[1]} ${figures(asked, 3)}`, given >= asked ? lower : upper, "two");
}

/** Hatches where less is given than asked for, between two neighbouring speeds. */
function drawShortfall(group: Group, from: Supply, to: Supply, x: (speed: number) => number, y: (value: number) => number): void {
  const [before, after] = [from.asked - from.given, to.asked - to.given];
  if (before <= 0 && after <= 0) return;
  const cross = before * after < 0 ? before / (before - after) : undefined;
  const at = (share: number): Supply => ({
    speed: from.speed + share * (to.speed - from.speed),
    given: from.given + share * (to.given - from.given),
    asked: from.asked + share * (to.asked - from.asked),
  });
  const [first, last] = [at(before > 0 ? 0 : cross!), at(after > 0 ? 1 : cross!)];
  const corners = [
    [first.speed, first.asked],
    [last.speed, last.asked],
    [last.speed, last.given],
    [first.speed, first.given],
  ] as const;
  const outline = corners.map(([speed, value]) => `${px(x(speed))},${px(y(value))}`);
  group.append("path").attr("class", "short").attr("d", `M${outline.join("L")}Z`);
  // Strokes up and down, each from the one line to the other: clipped by their own ends.
  let strokes = "";
  for (let place = x(first.speed) + 4; place < x(last.speed); place += 6) {
    const share = (place - x(from.speed)) / (x(to.speed) - x(from.speed));
    const { given, asked } = at(share);
    strokes += `M${px(place)},${px(y(given))}L${px(place)},${px(y(asked))}`;
  }
  group.append("path").attr("class", "hatch-past").attr("d", strokes);
}
