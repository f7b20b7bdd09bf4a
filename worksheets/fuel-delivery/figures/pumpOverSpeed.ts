import { axisRoom, leading, plate, px, share, spot, textWidth, write } from "../../drawing";
import { figure } from "../../sheet";
import { deliverySweep, efficientRange } from "../deliverySweep";
import { drivenPumps } from "../drivenPumps";
import { ratedSpeed } from "../../brief/cells";
import { between, lineThrough, plot } from "./plot";

const height = 230;

export const pumpOverSpeed = figure({
  key: "pumpOverSpeed",
  title: "Fuel asked for and delivered over engine speed",
  from: { deliverySweep, efficientRange, drivenPumps, ratedSpeed },
  describe: (at, units) => {
    const tight = tightest(at.deliverySweep);
    const spare = tight.delivered / tight.asked - 1;
    const speed = (value: number) => units.text("rotationalSpeed", value);
    return [
      `At full load the rail asks for at most ${units.text("massFlow", Math.max(...at.deliverySweep.map(({ asked }) => asked)), "fuel")}.`,
      `It is tightest at ${speed(tight.engineSpeed)}, where the pump can deliver ${units.text("massFlow", tight.delivered, "fuel")}: ${share(units, Math.abs(spare))} ${spare >= 0 ? "to spare" : "too little"}.`,
      `The pump works near its best, ${share(units, at.efficientRange.best)}, from ${speed(at.efficientRange.from)} to ${speed(at.efficientRange.to)}.`,
    ].join(" ");
  },
  draw: (at, { width, units }) => {
    const flow = (value: number) => units.number("massFlow", value, "fuel");
    const rpm = (value: number) => units.number("rotationalSpeed", value);
    const sweep = at.deliverySweep;
    const [low, high] = [sweep[0]!.engineSpeed, sweep.at(-1)!.engineSpeed];
    const most = Math.max(...sweep.flatMap(({ asked, delivered }) => [asked, delivered]), 1e-9);
    const top = 40;
    const { svg, ground } = plate(width, top + height + axisRoom + 2 * leading + 54);
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
    const low1 = Math.floor(sweep.length * 0.45);
    write(ground, "rail asks for", { x: wanted[low1]![0] + 6, y: wanted[low1]![1] + 24, look: "one" });
    write(ground, "burnt", { x: burnt[low1]![0] + 6, y: burnt[low1]![1] + 24 + leading, look: "mute" });

    const band = bottom + axisRoom + 22;
    const [from, to] = [x(rpm(at.efficientRange.from)), x(rpm(at.efficientRange.to))];
    ground
      .append("rect")
      .attr("class", "middle")
      .attr("x", px(from))
      .attr("y", band)
      .attr("width", px(Math.max(2, to - from)))
      .attr("height", 4);
    const words = `${spare < 0 ? "■ " : ""}${share(units, Math.abs(spare))} ${spare >= 0 ? "to spare" : "too little"} at ${units.text("rotationalSpeed", tight.engineSpeed)}`;
    write(ground, words, { x: left, y: bottom + axisRoom + 8, look: spare < 0 ? "past" : "strong" });
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
    return svg;
  },
  table: (at, units) => {
    const flow = units.unit("massFlow", "fuel");
    return {
      columns: [
        ["Engine speed", units.unit("rotationalSpeed")],
        ["Burnt", flow],
        ["Rail asks for", flow],
        ["Pumps can deliver", flow],
        ["To spare", units.unit("fraction")],
        ["Pump's efficiency", units.unit("fraction")],
      ],
      rows: at.deliverySweep.map((point) => [
        units.number("rotationalSpeed", point.engineSpeed),
        units.number("massFlow", point.burnt, "fuel"),
        units.number("massFlow", point.asked, "fuel"),
        units.number("massFlow", point.delivered, "fuel"),
        units.number("fraction", point.asked > 0 ? point.delivered / point.asked - 1 : 0),
        units.number("fraction", point.efficiency),
      ]),
    };
  },
});

function tightest<Point extends { readonly delivered: number; readonly asked: number }>(sweep: readonly Point[]): Point {
  return sweep.reduce((a, b) => (a.delivered / a.asked <= b.delivered / b.asked ? a : b));
}
