import type { ChargePath } from "../../../lib/charge";
import { plate, share, spot, stepBand } from "../../drawing";
import { figure } from "../../sheet";
import { chargePath } from "../cells";
import { elementMarks, stationNames } from "./chargeElements";
import { shareBar, shareBarHeight } from "./shareBar";

/** Open air and manifold of a path. */
const ends = ({ stations }: ChargePath) => [stations[0]!, stations.at(-1)!] as const;

/** The share of one element in the rise of pressure; undefined where nothing rises. */
const shareOf = (path: ChargePath, key: string) => path.pressureShares.find((each) => each.key === key)?.share;

export const chargeStaircase = figure({
  key: "chargeStaircase",
  title: "The charge, from the open air to the manifold",
  from: { chargePath },
  describe: ({ chargePath }, units) => {
    const [air, manifold] = ends(chargePath);
    const [first, second] = [shareOf(chargePath, "turbochargers"), shareOf(chargePath, "blower")];
    const lines = [
      `From ${units.text("pressure", air.pressure, "boost")} outside the charge comes to ${units.text("pressure", manifold.pressure, "boost")} and ${units.text("temperature", manifold.temperature)} in the manifold, ${units.text("density", manifold.density)} dense.`,
    ];
    if (first !== undefined && second !== undefined) {
      lines.push(
        `Of the rise in pressure the turbochargers make ${share(units, first)} and the blower ${share(units, second)}; filter and coolers take ${share(units, first + second - 1)} back.`,
      );
    }
    return lines.join(" ");
  },
  draw: ({ chargePath }, { width, units }) => {
    const [left, right] = [2, width - 2];
    const column = (right - left) / chargePath.stations.length;
    const stacked = column < 98;
    const middle = (i: number) => left + (i + 0.5) * column;
    const edge = (i: number) => left + i * column;
    const frame = { left, right, middle, edge, units, stacked };
    const elementsTop = shareBarHeight + 34;
    const pressureTop = elementsTop + (stacked ? 84 : 52);
    const pressureHeight = 190;
    const temperatureTop = pressureTop + pressureHeight + 38;
    const temperatureHeight = 96;
    const namesTop = temperatureTop + temperatureHeight + 26;

    const { svg, ground } = plate(width, namesTop + stationNames.height(chargePath, frame));
    chargePath.stations.forEach((_, i) => {
      spot(ground, i, { x: edge(i), y: pressureTop + 8, width: column, height: namesTop - pressureTop - 16 });
    });
    const threads = ground.append("path").attr("class", "grid");
    shareBar(ground, chargePath, { left, right, top: 24, units });
    const hairlines = elementMarks(ground, chargePath, { ...frame, top: elementsTop, bottom: namesTop - 8 });
    threads.attr("d", hairlines);
    stepBand(ground, {
      ...frame,
      title: `Absolute pressure, ${units.unit("pressure", "boost")}`,
      top: pressureTop,
      height: pressureHeight,
      values: chargePath.stations.map(({ pressure }) => units.number("pressure", pressure, "boost")),
      words: chargePath.stations.map(({ pressure }) => bare(units.text("pressure", pressure, "boost"))),
      fromZero: true,
      look: "line-1",
    });
    stepBand(ground, {
      ...frame,
      title: `Temperature, ${units.unit("temperature")}`,
      top: temperatureTop,
      height: temperatureHeight,
      values: chargePath.stations.map(({ temperature }) => units.number("temperature", temperature)),
      words: chargePath.stations.map(({ temperature }) => bare(units.text("temperature", temperature))),
      fromZero: false,
      look: "line-2",
    });
    stationNames.draw(ground, chargePath, { ...frame, top: namesTop });
    return svg;
  },
  table: ({ chargePath }, units) => ({
    columns: [
      "Station",
      ["Pressure", units.unit("pressure", "boost")],
      ["Temperature", units.unit("temperature")],
      ["Density", units.unit("density")],
      "Element before it",
      "Pressure ratio",
      ["Share of the rise", units.unit("fraction")],
    ],
    rows: chargePath.stations.map(({ name, pressure, temperature, density }, i) => {
      const element = i === 0 ? undefined : chargePath.pressureShares[i - 1];
      return [
        name,
        units.number("pressure", pressure, "boost"),
        units.number("temperature", temperature),
        units.number("density", density),
        element?.name ?? "–",
        element?.pressureRatio ?? "–",
        element?.share === undefined ? "–" : units.number("fraction", element.share),
      ];
    }),
  }),
});

/** A number without its unit, which the band's title gives. */
function bare(text: string): string {
  return text.split("\u00a0")[0]!;
}
