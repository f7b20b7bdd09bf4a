import type { OperatingPoint, PathStation } from "../../../lib/charge";
import { figures, leading, plate, px, resized, share, spot, stepBand, writeLines } from "../../drawing";
import { type FigureFrame, type FigureUnits, figure } from "../../sheet";
import { matched } from "../solved";
import { elementName, elementWords } from "./elementWords";
import { inSentence, listed, sentences } from "./runWords";
import { stationList, stationNames } from "./stationList";

/** Treads shorter than this have a list below them instead of names. */
const leastTread = 94;

export const chargeSteps = figure({
  key: "chargeSteps",
  title: "The charge along its path at the match",
  from: { matched },
  describe: ({ matched }, units) => {
    const { stations } = matched;
    const [air, manifold] = [stations[0]!, stations.at(-1)!];
    const hottest = stations.reduce((most, each) => (each.temperature > most.temperature ? each : most));
    return sentences(
      `With ${units.text("power", matched.brakePower)} on it at ${units.text("rotationalSpeed", matched.engineSpeed)} the charge comes from ${units.text("pressure", air.pressure, "boost")} in the open air to ${units.text("pressure", manifold.pressure, "boost")} and ${units.text("temperature", manifold.temperature)} in the manifold.`,
      shareWords(stations, units),
      bypassWords(matched),
      `It is hottest ${hottest.number === 0 ? "in the open air" : `after the ${inSentence(elementName(hottest))}`}, at ${units.text("temperature", hottest.temperature)}.`,
    );
  },
  draw: ({ matched }, frame) => drawSteps(matched, frame),
  table: ({ matched }, units) => ({
    columns: [
      "Station",
      "No.",
      ["Pressure", units.unit("pressure", "boost")],
      ["Temperature", units.unit("temperature")],
      "Pressure ratio of the element before",
      ["Share of the rise", units.unit("fraction")],
    ],
    rows: matched.stations.map((station) => [
      station.name,
      station.number,
      units.number("pressure", station.pressure, "boost"),
      units.number("temperature", station.temperature),
      station.pressureRatio,
      station.number === 0 || station.share === undefined ? "–" : units.number("fraction", station.share),
    ]),
  }),
});

/** Who makes the rise, and what is lost on the way. */
function shareWords(stations: readonly PathStation[], units: FigureUnits): string {
  const known = stations.slice(1).filter(({ share: part }) => part !== undefined);
  const rises = stations.at(-1)!.pressure > stations[0]!.pressure;
  if (known.length === 0 || !rises) return "The manifold holds no more than the open air.";
  const makers = known.filter(({ share: part }) => part! > 0);
  const made = makers.map((each, i) => {
    const name = inSentence(elementName(each));
    return `the ${name} ${i === 0 ? "makes " : ""}${share(units, each.share!)}`;
  });
  const lost = known.reduce((sum, { share: part }) => sum + Math.max(0, -part!), 0);
  const taken = lost > 0.0005 ? `; the rest of the path takes ${share(units, lost)} back` : "";
  return `Of the rise in pressure ${listed(made)}${taken}.`;
}

/** An open bypass, which leaves a blower at a ratio of 1. */
function bypassWords({ blowers }: OperatingPoint): string {
  return blowers.some(({ bypassOpen }) => bypassOpen) ? "The blower's bypass stands open: it turns without load." : "";
}

function drawSteps({ stations }: OperatingPoint, { width, units }: FigureFrame): SVGSVGElement {
  const [left, right] = [2, width - 2];
  const column = (right - left) / stations.length;
  const named = column >= leastTread;
  const middle = (i: number) => left + (i + 0.5) * column;
  const edge = (i: number) => left + i * column;
  const bands = { left, right, middle, edge, units };
  const pressureTop = named ? 3 * leading + 26 : 16;
  const temperatureTop = pressureTop + 190 + 38;
  const foot = temperatureTop + 110;
  const { svg, ground } = plate(width, foot);
  stations.forEach((_, i) => {
    spot(ground, i, { x: edge(i), y: pressureTop + 8, width: column, height: foot - pressureTop });
  });
  const threads = stations.slice(1).map((station, i) => {
    const x = edge(i + 1);
    if (!named) return `M${px(x)},${pressureTop + 10}V${foot}`;
    const part = station.share === undefined ? "" : share(units, station.share);
    const lines = [elementName(station), elementWords(station), part];
    writeLines(ground, lines, { x, y: 13, anchor: "middle", look: ["strong", "", "mute"] });
    return `M${px(x)},${13 + 2 * leading + 6}V${foot}`;
  });
  ground.insert("path", ":first-child").attr("class", "grid").attr("d", threads.join(""));
  const bare = (value: number) => figures(value, named ? 4 : 3);
  stepBand(ground, {
    ...bands,
    title: `Absolute pressure, ${units.unit("pressure", "boost")}`,
    top: pressureTop,
    height: 190,
    values: stations.map(({ pressure }) => units.number("pressure", pressure, "boost")),
    words: stations.map(({ pressure }) => bare(units.number("pressure", pressure, "boost"))),
    fromZero: true,
    look: "line-1",
  });
  stepBand(ground, {
    ...bands,
    title: `Temperature, ${units.unit("temperature")}`,
    top: temperatureTop,
    height: 96,
    values: stations.map(({ temperature }) => units.number("temperature", temperature)),
    words: stations.map(({ temperature }) => bare(units.number("temperature", temperature))),
    fromZero: false,
    look: "line-2",
  });
  const list = named ? stationNames : stationList;
  return resized(svg, width, list(ground, stations, { ...bands, top: foot + 12 }));
}
