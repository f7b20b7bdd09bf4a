import type { ChargePath } from "../../../lib/charge";
import { figures, type Group, leading, px, reading, wrapped, write, writeLines } from "../../drawing";
import type { FigureUnits } from "../../sheet";

interface Frame {
  readonly middle: (i: number) => number;
  readonly edge: (i: number) => number;
  readonly left: number;
  readonly right: number;
  readonly units: FigureUnits;
  /** Too narrow for names side by side. */
  readonly stacked: boolean;
  readonly top: number;
}

const names: Readonly<Record<string, string>> = {
  filter: "Filter",
  turbochargers: "Turbochargers",
  coolerBeforeBlower: "Intercooler",
  blower: "Blower",
  coolerAfterBlower: "Aftercooler",
};

/** Names of the elements over their risers, with pressure ratio or loss; gives back the hairlines down from them. */
export function elementMarks(group: Group, path: ChargePath, frame: Frame & { readonly bottom: number }): string {
  const { edge, units, stacked, top, bottom } = frame;
  return path.pressureShares
    .map(({ key, name, pressureRatio }, i) => {
      const x = edge(i + 1);
      const [before, after] = [path.stations[i]!.pressure, path.stations[i + 1]!.pressure];
      const raises = key === "turbochargers" || key === "blower";
      const words = raises
        ? `× ${figures(pressureRatio)}`
        : reading(units, "pressureDifference", after - before, { digits: 2, hint: "boost" });
      const y = top + (stacked && i % 2 === 1 ? 2 * leading + 4 : 0);
      writeLines(group, [names[key] ?? name, words], { x, y, anchor: "middle", look: ["strong", "mute"] });
      return `M${px(x)},${y + leading + 6}V${bottom}`;
    })
    .join("");
}

/** The stations' numbers, names and densities under the bands. */
export const stationNames = {
  height: ({ stations }: ChargePath, frame: Omit<Frame, "top">): number =>
    frame.stacked
      ? 3 * leading + 14 + Math.ceil(stations.length / 2) * (leading + 2)
      : 3 * leading + nameLines(stations, frame) * leading + 2,
  draw: (group: Group, { stations }: ChargePath, frame: Frame): void => {
    const { middle, edge, left, units, stacked, top } = frame;
    const rows = nameLines(stations, frame);
    const densityTop = top + (stacked ? leading : rows * leading) + 10;
    stations.forEach(({ name, density }, i) => {
      if (stacked) write(group, String(i), { x: middle(i), y: top + 8, anchor: "middle", look: "strong" });
      else writeLines(group, wrapped(name, edge(1) - edge(0) - 8), { x: middle(i), y: top + 8, anchor: "middle" });
      write(group, figures(units.number("density", density), 3), {
        x: middle(i),
        y: densityTop + leading + 6,
        anchor: "middle",
        look: "strong",
      });
    });
    write(group, `Density, ${units.unit("density")}`, { x: left, y: densityTop + 4, look: "mute" });
    if (!stacked) return;
    stations.forEach(({ name }, i) => {
      const half = Math.ceil(stations.length / 2);
      write(group, `${i} ${name}`, {
        x: i < half ? left : (frame.left + frame.right) / 2,
        y: densityTop + 2 * leading + 18 + (i % half) * (leading + 2),
        look: "mute",
      });
    });
  },
};

function nameLines(stations: ChargePath["stations"], { edge }: Pick<Frame, "edge">): number {
  return Math.max(...stations.map(({ name }) => wrapped(name, edge(1) - edge(0) - 8).length));
}
