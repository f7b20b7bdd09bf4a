import { axisRoom, plate, px, spot, write } from "../../drawing";
import { figure } from "../../sheet";
import { tankLimit } from "../inputs";
import { tankCourse } from "../tank";
import { lineThrough, plot } from "./plot";

const height = 170;

export const tankWarming = figure({
  key: "tankWarming",
  title: "The tank over a run",
  from: { tankCourse, tankLimit },
  describe: (at, units) => {
    const [start, end] = [at.tankCourse[0]!, at.tankCourse.at(-1)!];
    const degrees = (value: number) => units.text("temperature", value);
    return `From ${degrees(start.temperature)} the fuel in the tank goes to ${degrees(end.temperature)} in ${units.text("time", end.time, "running hours")}, when the reserve is reached; ${degrees(at.tankLimit)} is allowed.`;
  },
  draw: (at, { width, units }) => {
    const hours = (value: number) => units.number("time", value, "running hours");
    const degrees = (value: number) => units.number("temperature", value);
    const course = at.tankCourse;
    const top = 40;
    const { svg, ground } = plate(width, top + height + axisRoom + 4);
    const shown = [...course.map(({ temperature }) => temperature), at.tankLimit].map(degrees);
    const { x, y, left, right } = plot(ground, {
      x: [0, hours(course.at(-1)!.time)],
      y: [Math.min(...shown) - 2, Math.max(...shown) + 2],
      xTitle: `Running time, ${units.unit("time", "running hours")}`,
      yTitle: `Fuel in the tank, ${units.unit("temperature")}`,
      width,
      top,
      height,
    });
    const line = course.map(({ time, temperature }) => [x(hours(time)), y(degrees(temperature))] as const);
    const limit = y(degrees(at.tankLimit));
    ground.append("path").attr("class", "limit").attr("d", `M${px(left)},${px(limit)}H${px(right)}`);
    write(ground, "allowed", { x: right - 4, y: limit - 6, anchor: "end", look: "strong" });
    ground.append("path").attr("class", "line-1").attr("d", lineThrough(line));
    line.forEach(([place], row) => {
      spot(ground, row, { x: place - 8, y: top, width: 16, height });
    });
    const past = course.at(-1)!.temperature > at.tankLimit;
    const words = `${past ? "■ " : ""}${units.text("temperature", course.at(-1)!.temperature)} at the reserve`;
    const [endX, endY] = line.at(-1)!;
    const above = endY - 10 > top + 12;
    write(ground, words, {
      x: Math.min(endX, right) - 4,
      y: above ? endY - 10 : endY + 20,
      anchor: "end",
      look: past ? "past" : "one",
    });
    write(ground, "full", { x: left + 6, y: line[0]![1] + (line[0]![1] > top + height - 24 ? -8 : 20), look: "mute" });
    return svg;
  },
  table: (at, units) => ({
    columns: [
      ["Running time", units.unit("time", "running hours")],
      ["Fuel in the tank", units.unit("temperature")],
      ["Level", units.unit("fraction")],
    ],
    rows: at.tankCourse.map(({ time, temperature, level }) => [
      units.number("time", time, "running hours"),
      units.number("temperature", temperature),
      units.number("fraction", level),
    ]),
  }),
});
