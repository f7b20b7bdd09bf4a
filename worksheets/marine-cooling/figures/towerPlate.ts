import type { ValuesOf } from "../../../lib/graph";
import { figures } from "../../drawing";
import { tower, towerCurve, wetBulb } from "../../land-cooling/cells";
import { supplyLimit } from "../../land-cooling/inputs";
import { type FigureUnits, figure } from "../../sheet";
import { type CurveField, drawCurves } from "./curveFields";

const from = { towerCurve, tower, wetBulb, supplyLimit };
type At = ValuesOf<typeof from>;

/** The tower's water over the load, in numbers of the units shown. */
function fieldOf(at: At, units: FigureUnits): CurveField {
  const warm = (temperature: number) => units.number("temperature", temperature);
  const share = (value: number) => units.number("fraction", value);
  return {
    title: `Water of the tower, ${units.unit("temperature")}`,
    across: `Load, ${units.unit("fraction")}`,
    curves: [
      {
        name: "leaves the cell",
        points: at.towerCurve.map((point) => [share(point.load), warm(point.hotWater)] as const),
        look: "line-2",
      },
      {
        name: "comes to it",
        points: at.towerCurve.map((point) => [share(point.load), warm(point.coldWater)] as const),
        look: "line-1",
      },
    ],
    listed: at.towerCurve.map((point) => share(point.load)),
    firstRow: 0,
    limit: { at: warm(at.supplyLimit), text: `leaving at most ${figures(warm(at.supplyLimit))}` },
  };
}

export const towerPlate = figure({
  key: "towerPlate",
  title: "The tower's water in the test cell",
  from,
  describe: ({ tower, wetBulb, supplyLimit }, units) => {
    const text = (temperature: number) => units.text("temperature", temperature);
    return `With a wet bulb of ${text(wetBulb)} the tower sends water of ${text(tower.coldWater)} to the cell and takes it back at ${text(tower.hotWater)}, where ${text(supplyLimit)} is allowed.`;
  },
  draw: (at, { width, units }) => drawCurves({ fields: [fieldOf(at, units)], width, alike: false }),
  table: (at, units) => ({
    columns: [
      "What",
      ["Load", units.unit("fraction")],
      ["Comes to the cell", units.unit("temperature")],
      ["Leaves it", units.unit("temperature")],
    ],
    rows: at.towerCurve.map(({ load, coldWater, hotWater }) => [
      "Tower",
      units.number("fraction", load),
      units.number("temperature", coldWater),
      units.number("temperature", hotWater),
    ]),
  }),
});
