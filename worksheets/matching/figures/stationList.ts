import type { PathStation } from "../../../lib/charge";
import { type Group, leading, px, wrapped, write, writeLines } from "../../drawing";
import type { FigureUnits } from "../../sheet";
import { aligned, elementWords } from "./elementWords";

interface Frame {
  readonly left: number;
  readonly right: number;
  readonly middle: (i: number) => number;
  readonly edge: (i: number) => number;
  readonly units: FigureUnits;
  readonly top: number;
}

/** Names of the stations under their treads. Gives back the height it ends at. */
export function stationNames(group: Group, stations: readonly PathStation[], { middle, edge, top }: Frame): number {
  const rows = stations.map(({ number, name }) => wrapped(`${number} ${name}`, edge(1) - edge(0) - 8));
  rows.forEach((lines, i) => {
    writeLines(group, lines, { x: middle(i), y: top + 8, anchor: "middle" });
  });
  return top + 8 + (Math.max(...rows.map(({ length }) => length)) - 1) * leading + 8;
}

/** Numbers under the treads, and a list that says what each of them is. Gives back the height it ends at. */
export function stationList(group: Group, stations: readonly PathStation[], frame: Frame): number {
  const { left, right, middle, units, top } = frame;
  stations.forEach(({ number }, i) => {
    write(group, String(number), { x: middle(i), y: top + 8, anchor: "middle", look: "strong" });
  });
  const ends = [right - 128, right - 68, right];
  const head = top + 36;
  [units.unit("pressure", "boost"), units.unit("temperature"), "ratio"].forEach((text, i) => {
    write(group, text, { x: ends[i]!, y: head, anchor: "end", look: "mute" });
  });
  group
    .append("path")
    .attr("class", "axis")
    .attr("d", `M${px(left)},${head + 7}H${px(right)}`);
  const pressures = aligned(stations.map(({ pressure }) => units.number("pressure", pressure, "boost")));
  const temperatures = aligned(stations.map(({ temperature }) => units.number("temperature", temperature)));
  stations.forEach((station, i) => {
    const y = head + 25 + i * (leading + 2);
    write(group, `${station.number}  ${station.name}`, { x: left, y });
    const words = [pressures[i]!, temperatures[i]!, elementWords(station)];
    words.forEach((text, k) => {
      write(group, text, { x: ends[k]!, y, anchor: "end", look: k === 2 ? "mute" : "" });
    });
  });
  return head + 25 + (stations.length - 1) * (leading + 2) + 8;
}
