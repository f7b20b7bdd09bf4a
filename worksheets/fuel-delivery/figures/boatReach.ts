import { axisRoom, plate, px, reading, spot, spotAt, textWidth, write } from "../../drawing";
import { figure } from "../../sheet";
import { propellerRange } from "../consumption";
import { lineThrough, plot } from "./plot";

const height = 180;

export const boatReach = figure({
  key: "boatReach",
  title: "In a boat: range and fuel over speed",
  from: { propellerRange },
  describe: (at, units) => {
    const { curve, cruise } = at.propellerRange;
    const full = curve.at(-1)!;
    const told = (point: typeof full) =>
      `${units.text("length", point.range, "boat")} at ${units.text("velocity", point.way, "boat")}, burning ${units.text("massFlow", point.fuelFlow, "fuel")}`;
    return `At the promised engine speed the tank reaches ${told(full)}; at cruise ${told(cruise)}.`;
  },
  draw: (at, { width, units }) => {
    const knots = (value: number) => units.number("velocity", value, "boat");
    const miles = (value: number) => units.number("length", value, "boat");
    const flow = (value: number) => units.number("massFlow", value, "fuel");
    const { curve, cruise } = at.propellerRange;
    const top = 40;
    const below = top + height + axisRoom + 44;
    const { svg, ground } = plate(width, below + height * 0.7 + axisRoom + 4);
    const xTitle = `Boat speed, ${units.unit("velocity", "boat")}`;
    const x0 = [knots(curve[0]!.way), knots(Math.max(curve.at(-1)!.way, cruise.way))] as const;
    const left = 54;
    const upper = plot(ground, {
      x: x0,
      y: [0, Math.max(...curve.map(({ range }) => miles(range)))],
      xTitle,
      yTitle: `Range to the reserve, ${units.unit("length", "boat")}`,
      width,
      top,
      height,
      left,
    });
    const lower = plot(ground, {
      x: x0,
      y: [0, flow(Math.max(curve.at(-1)!.fuelFlow, cruise.fuelFlow))],
      xTitle,
      yTitle: `Fuel flow, ${units.unit("massFlow", "fuel")}`,
      width,
      top: below,
      height: height * 0.7,
      left,
    });
    const ranges = curve.map(({ way, range }) => [upper.x(knots(way)), upper.y(miles(range))] as const);
    const flows = curve.map(({ way, fuelFlow }) => [lower.x(knots(way)), lower.y(flow(fuelFlow))] as const);
    ground.append("path").attr("class", "line-1").attr("d", lineThrough(ranges));
    ground.append("path").attr("class", "line-2").attr("d", lineThrough(flows));
    curve.forEach((_, row) => {
      spotAt(ground, row, ranges[row]![0], ranges[row]![1]);
      spot(ground, row, { x: flows[row]![0] - 8, y: lower.top, width: 16, height: lower.bottom - lower.top });
    });
    const place = upper.x(knots(cruise.way));
    for (const { top: from, bottom } of [upper, lower]) {
      ground.append("path").attr("class", "limit").attr("d", `M${px(place)},${bottom}V${from}`);
    }
    const words = `cruise: ${reading(units, "length", cruise.range, { hint: "boat" })}`;
    const reach = textWidth(words, { bold: true });
    const level = upper.y(miles(cruise.range));
    ground.append("circle").attr("class", "ring").attr("cx", px(place)).attr("cy", px(level)).attr("r", 5);
    spotAt(ground, curve.length, place, level);
    // The line falls to the right: below it on the left, or above it on the right, nothing is in the way.
    const before = place - reach - 8;
    const behind = before < left + 4 && place + 10 + reach <= width;
    write(ground, words, {
      x: behind ? place + 10 : Math.max(left + 4, before),
      y: behind ? level - 8 : Math.min(level + 18, upper.bottom - 6),
      look: "one",
    });
    const burnt = lower.y(flow(cruise.fuelFlow));
    write(ground, units.text("massFlow", cruise.fuelFlow, "fuel"), {
      x: place - 8,
      y: Math.max(burnt - 8, lower.top + 12),
      anchor: "end",
      look: "two",
    });
    return svg;
  },
  table: (at, units) => {
    const { curve, cruise } = at.propellerRange;
    return {
      columns: [
        ["Engine speed", units.unit("rotationalSpeed")],
        ["Power", units.unit("power")],
        ["Boat speed", units.unit("velocity", "boat")],
        ["Fuel flow", units.unit("massFlow", "fuel")],
        ["Running time", units.unit("time", "running hours")],
        ["Range", units.unit("length", "boat")],
      ],
      rows: [...curve, cruise].map((point) => [
        units.number("rotationalSpeed", point.engineSpeed),
        units.number("power", point.power),
        units.number("velocity", point.way, "boat"),
        units.number("massFlow", point.fuelFlow, "fuel"),
        units.number("time", point.time, "running hours"),
        units.number("length", point.range, "boat"),
      ]),
    };
  },
});
