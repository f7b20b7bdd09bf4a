import type { ValuesOf } from "../../../lib/graph";
import { ambientTemperature } from "../../brief/cells";
import { figures } from "../../drawing";
import { limitingAir, landCurve, tower, towerCurve } from "../../land-cooling/cells";
import { landCooledBy, supplyLimit, vehicleSpeed } from "../../land-cooling/inputs";
import { figure, type FigureUnits } from "../../sheet";
import { type CurveField, drawCurves } from "./curveFields";

const from = {
  landCurve,
  towerCurve,
  limitingAir,
  tower,
  ambientTemperature,
  vehicleSpeed,
  supplyLimit,
  landCooledBy,
};
type At = ValuesOf<typeof from>;

/** The hottest day over the vehicle's speed, and the tower's water over the load. */
function fieldsOf(at: At, units: FigureUnits): readonly CurveField[] {
  const warm = (temperature: number) => units.number("temperature", temperature);
  const speed = (value: number) => units.number("velocity", value, "road");
  const share = (value: number) => units.number("fraction", value);
  const degrees = units.unit("temperature");
  const whole = (temperature: number) => figures(warm(temperature));
  return [
    {
      title: `Hottest day with the radiator, ${degrees}`,
      across: `Vehicle's speed, ${units.unit("velocity", "road")}`,
      curves: [
        {
          name: "limit",
          points: at.landCurve.map((point) => [speed(point.speed), warm(point.limitingAir)] as const),
          look: "line-1",
        },
      ],
      listed: at.landCurve.map((point) => speed(point.speed)),
      firstRow: 0,
      here: { at: speed(at.vehicleSpeed), text: "as driven" },
      limit: { at: warm(at.ambientTemperature), text: `air of the brief, ${whole(at.ambientTemperature)}` },
    },
    {
      title: `Tower water of the test cell, ${degrees}`,
      across: `Load, ${units.unit("fraction")}`,
      curves: [
        {
          name: "leaves",
          points: at.towerCurve.map((point) => [share(point.load), warm(point.hotWater)] as const),
          look: "line-2",
        },
        {
          name: "comes",
          points: at.towerCurve.map((point) => [share(point.load), warm(point.coldWater)] as const),
          look: "line-1",
        },
      ],
      listed: at.towerCurve.map((point) => share(point.load)),
      firstRow: at.landCurve.length,
      limit: { at: warm(at.supplyLimit), text: `leaving at most ${whole(at.supplyLimit)}` },
    },
  ];
}

export const landPlate = figure({
  key: "landPlate",
  title: "Radiator and tower: the hottest day and the warmest water",
  from,
  describe: (at, units) => {
    const text = (temperature: number) => units.text("temperature", temperature);
    const left = at.limitingAir - at.ambientTemperature;
    const difference = units.text("temperatureDifference", Math.abs(left));
    return [
      `At ${units.text("velocity", at.vehicleSpeed, "road")} the radiator holds the engine's water at its limit up to ${text(at.limitingAir)} outside, ${difference} ${left >= 0 ? "above" : "below"} the air of the brief.`,
      `In the cell the tower sends water of ${text(at.tower.coldWater)} and takes it back at ${text(at.tower.hotWater)}, where ${text(at.supplyLimit)} is allowed.`,
    ].join(" ");
  },
  draw: (at, { width, units }) => drawCurves({ fields: fieldsOf(at, units), width, alike: false }),
  table: (at, units) => {
    const warm = (temperature: number) => units.number("temperature", temperature);
    const degrees = units.unit("temperature");
    return {
      columns: [
        "What",
        "Value",
        "Unit",
        ["Hottest day", degrees],
        ["Engine water today", degrees],
        ["Tower water comes", degrees],
        ["Tower water leaves", degrees],
      ],
      rows: [
        ...at.landCurve.map((point) => [
          "Vehicle",
          units.number("velocity", point.speed, "road"),
          units.unit("velocity", "road"),
          warm(point.limitingAir),
          warm(point.coolant),
          "–",
          "–",
        ]),
        ...at.towerCurve.map((point) => [
          "Test cell, load",
          units.number("fraction", point.load),
          units.unit("fraction"),
          "–",
          "–",
          warm(point.coldWater),
          warm(point.hotWater),
        ]),
      ],
    };
  },
});
