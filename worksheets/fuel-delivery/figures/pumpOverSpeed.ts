import { axisRoom, type Group, leading, plate, px, share, spot, textWidth, write } from "../../drawing";
import { type FigureUnits, figure } from "../../sheet";
import { deliverySweep, efficientRange } from "../deliverySweep";
import { drivenPumps } from "../drivenPumps";
import { runFrom } from "../../matching/figures/run";
import { hatchedShape } from "../../matching/figures/shapes";
import { type BurntAt, burntBetween, burntByParts, piecesOf } from "./airBurns";
import { between, lineThrough, plot } from "./plot";

const height = 230;
const keyRow = 18;

export const pumpOverSpeed = figure({
  key: "pumpOverSpeed",
  title: "Fuel asked for and delivered over engine speed",
  atRest: true,
  from: { ...runFrom, deliverySweep, efficientRange, drivenPumps },
  describe: (at, units) => {
    const tight = tightest(at.deliverySweep);
    const spare = tight.delivered / tight.asked - 1;
    const speed = (value: number) => units.text("rotationalSpeed", value);
    return [
      `At full load the rail asks for at most ${units.text("massFlow", Math.max(...at.deliverySweep.map(({ asked }) => asked)), "fuel")}.`,
      `It is tightest at ${speed(tight.engineSpeed)}, where the pump can deliver ${units.text("massFlow", tight.delivered, "fuel")}: ${share(units, Math.abs(spare))} ${spare >= 0 ? "more than is asked" : "too little"}.`,
      `The pump works near its best, ${share(units, at.efficientRange.best)}, from ${speed(at.efficientRange.from)} to ${speed(at.efficientRange.to)}.`,
      beyondTheAir(burntByParts(at, at.deliverySweep), units),
    ].join(" ");
  },
  draw: (at, { width, units }) => {
    const flow = (value: number) => units.number("massFlow", value, "fuel");
    const rpm = (value: number) => units.number("rotationalSpeed", value);
    const sweep = at.deliverySweep;
    const [low, high] = [sweep[0]!.engineSpeed, sweep.at(-1)!.engineSpeed];
    const parts = burntByParts(at, sweep);
    const most = Math.max(...sweep.flatMap(({ asked, delivered }) => [asked, delivered]), ...parts.map(({ burnt }) => burnt), 1e-9);
    const top = 40;
    const { svg, ground } = plate(width, top + height + axisRoom + 2 * leading + 72 + 3 * keyRow);
    const { x, y, left, right, bottom } = plot(ground, {
      x: [rpm(low), rpm(high)],
      y: [0, flow(most)],
      xTitle: `Engine speed, ${units.unit("rotationalSpeed")}`,
      yTitle: `Fuel flow at full load, ${units.unit("massFlow", "fuel")}`,
      width,
      top,
      height,
    });
    const given = sweep.map(({ engineSpeed, delivered }) => [x(rpm(engineSpeed)), y(flow(delivered))] as const);
    const wanted = sweep.map(({ engineSpeed, asked }) => [x(rpm(engineSpeed)), y(flow(asked))] as const);
    const burnt = sweep.map(({ engineSpeed, burnt: each }) => [x(rpm(engineSpeed)), y(flow(each))] as const);
    ground.append("path").attr("class", "wash").attr("d", between(given, wanted));
    const short = sweep.map(({ asked, delivered }, i) => (asked > delivered ? given[i]! : wanted[i]!));
    if (sweep.some(({ asked, delivered }) => asked > delivered)) {
      ground.append("path").attr("class", "mark-past").attr("d", between(wanted, short));
    }
    for (const piece of piecesOf(parts)) {
      const places = (read: (each: BurntAt) => number) => piece.map((each) => [x(rpm(each.speed)), y(flow(read(each)))] as const);
      const [own, mapped] = [places((each) => each.burnt), places(({ mapped: each }) => each)];
      // Only where the map asks for more: elsewhere both edges lie on each other.
      const beyond = [...own.map((each, i) => (each[1] > mapped[i]![1] ? each : mapped[i]!)), ...mapped.slice().reverse()];
      ground.append("path").attr("class", "hatch").attr("d", hatchedShape(beyond, 6, Math.PI / 4));
      ground.append("path").attr("class", "outline").attr("d", lineThrough(own));
    }
    ground.append("path").attr("class", "dotted").attr("d", lineThrough(burnt));
    ground.append("path").attr("class", "line-2").attr("d", lineThrough(given));
    ground.append("path").attr("class", "line-1").attr("d", lineThrough(wanted));
    sweep.forEach((_, row) => {
      const [at0, at1] = [given[row]![0] - (right - left) / 30, given[row]![0] + (right - left) / 30];
      spot(ground, row, { x: at0, y: top, width: at1 - at0, height });
    });
    const tight = tightest(sweep);
    const spare = tight.delivered / tight.asked - 1;
    const here = x(rpm(tight.engineSpeed));
    ground
      .append("path")
      .attr("class", "outline")
      .attr("d", `M${px(here - 4)},${px(y(flow(tight.delivered)))}h8m-4,0V${px(y(flow(tight.asked)))}m-4,0h8`);
    const rated = x(rpm(at.ratedSpeed));
    ground.append("path").attr("class", "limit").attr("d", `M${px(rated)},${bottom}V${top}`);
    write(ground, "promised", { x: Math.min(rated, width - textWidth("promised") / 2), y: top - 6, anchor: "middle", look: "mute" });

    const name = "pumps can deliver";
    const room = left + textWidth(name, { bold: true }) + 14;
    const third = Math.max(Math.floor(sweep.length * 0.42), given.findIndex(([place]) => place > room));
    write(ground, name, { x: given[third]![0] - 8, y: given[third]![1] - 10, anchor: "end", look: "two" });
    const band = bottom + axisRoom + 30;
    const [from, to] = [x(rpm(at.efficientRange.from)), x(rpm(at.efficientRange.to))];
    ground
      .append("rect")
      .attr("class", "middle")
      .attr("x", px(from))
      .attr("y", band)
      .attr("width", px(Math.max(2, to - from)))
      .attr("height", 4);
    const words = `${spare < 0 ? "■ " : ""}${share(units, Math.abs(spare))} ${spare >= 0 ? "more than is asked" : "too little"} at ${units.text("rotationalSpeed", tight.engineSpeed)}`;
    write(ground, words, { x: left, y: bottom + axisRoom + 16, look: spare < 0 ? "past" : "strong" });
    write(ground, `pump near its best, ${share(units, at.efficientRange.best)}`, { x: left, y: band + leading + 4, look: "mute" });
    const { ratio, lowestSpeed, highestSpeed } = at.drivenPumps.pumps[0]!;
    const window = [lowestSpeed, highestSpeed].map((each) => units.number("rotationalSpeed", each / ratio));
    const clamp = (value: number) => Math.max(left, Math.min(right, x(value)));
    ground
      .append("path")
      .attr("class", "outline")
      .attr("d", `M${px(clamp(window[0]!))},${band + 2 * leading + 8}H${px(clamp(window[1]!))}`);
    write(ground, `the pump allows up to ${units.text("rotationalSpeed", highestSpeed / ratio)}`, {
      x: left,
      y: band + 2 * leading + 24,
      look: "mute",
    });
    keyOf(ground, { at: band + 2 * leading + 48, rows: [
      ["line-1", "rail asks for"],
      ["dotted", "of that burnt, as the map has it"],
      ...(parts.length > 0 ? [["outline", `the parts burn at most${parts.some(lacksAir) ? "; beyond it hatched" : ""}`] as const] : []),
    ] });
    return svg;
  },
  table: (at, units) => {
    const flow = units.unit("massFlow", "fuel");
    const parts = burntByParts(at, at.deliverySweep);
    const given = (burnt: number | undefined) => (burnt === undefined ? "nothing" : units.number("massFlow", burnt, "fuel"));
    return {
      columns: [
        ["Engine speed", units.unit("rotationalSpeed")],
        ["Burnt", flow],
        ["Rail asks for", flow],
        ["Pumps can deliver", flow],
        ["Parts burn at most", flow],
        ["Pump's efficiency", units.unit("fraction")],
      ],
      rows: at.deliverySweep.map((point) => [
        units.number("rotationalSpeed", point.engineSpeed),
        units.number("massFlow", point.burnt, "fuel"),
        units.number("massFlow", point.asked, "fuel"),
        units.number("massFlow", point.delivered, "fuel"),
        given(burntBetween(parts, point.engineSpeed)),
        units.number("fraction", point.efficiency),
      ]),
    };
  },
});

/** Whether the map has more burnt at a speed than the air there can burn. */
const lacksAir = ({ burnt, mapped }: BurntAt): boolean => mapped > burnt * (1 + 1e-6);

/** Says whether and where the map has more burnt than the air of the match's parts can burn. */
function beyondTheAir(parts: readonly BurntAt[], units: FigureUnits): string {
  const over = parts.filter(lacksAir);
  if (parts.length === 0) return "The match's parts give no power at any speed.";
  if (over.length === 0) return "The match's parts can burn all that the map asks for, wherever they give power.";
  const worst = over.reduce((a, b) => (b.burnt / b.mapped < a.burnt / a.mapped ? b : a));
  const fuel = (value: number) => units.text("massFlow", value, "fuel");
  return `At ${over.length} of ${parts.length} speeds the map asks for more fuel than the match's parts can burn; most so at ${units.text("rotationalSpeed", worst.speed)}, where it has ${fuel(worst.mapped)} burnt and they stop at ${fuel(worst.burnt)}, for ${worst.binding.name.toLowerCase()}.`;
}

interface Key {
  readonly at: number;
  readonly rows: readonly (readonly [look: string, words: string])[];
}

/** Says which line is which. */
function keyOf(group: Group, { at, rows }: Key): void {
  rows.forEach(([look, words], i) => {
    const y = at + i * keyRow;
    group.append("path").attr("class", look).attr("d", `M2,${y - 4.5}h34`);
    write(group, words, { x: 44, y });
  });
}

function tightest<Point extends { readonly delivered: number; readonly asked: number }>(sweep: readonly Point[]): Point {
  return sweep.reduce((a, b) => (a.delivered / a.asked <= b.delivered / b.asked ? a : b));
}
