import { isRefusal, type ValuesOf } from "../../../lib/graph";
import { ambientTemperature } from "../../brief/cells";
import { figures } from "../../drawing";
import { type LandCurvePoint, landCurve, limitingAir } from "../../land-cooling/cells";
import { vehicleSpeed } from "../../land-cooling/inputs";
import { type FigureUnits, figure } from "../../sheet";
import { type CurveField, drawCurves } from "./curveFields";
import { notDrawn } from "./notDrawn";

const from = { landCurve, limitingAir, ambientTemperature, vehicleSpeed };
type At = ValuesOf<typeof from>;

/** The curve, or in words why there is none. */
function curveOf({ landCurve }: At): readonly LandCurvePoint[] | string {
  const curve = landCurve.get();
  return isRefusal(curve) ? curve.words : curve;
}

/** The hottest day over the vehicle's speed. */
function fieldsOf(at: At, curve: readonly LandCurvePoint[], units: FigureUnits): readonly CurveField[] {
  const warm = (temperature: number) => units.number("temperature", temperature);
  const speed = (value: number) => units.number("velocity", value, "road");
  const degrees = units.unit("temperature");
  const whole = (temperature: number) => figures(warm(temperature));
  return [
    {
      title: `Hottest day with the radiator, ${degrees}`,
      across: `Vehicle's speed, ${units.unit("velocity", "road")}`,
      curves: [
        {
          name: "hottest day",
          points: curve.map((point) => [speed(point.speed), warm(point.limitingAir)] as const),
          look: "line-1",
        },
      ],
      listed: curve.map((point) => speed(point.speed)),
      firstRow: 0,
      here: { at: speed(at.vehicleSpeed), text: "as driven" },
      limit: { at: warm(at.ambientTemperature), text: `brief's air, ${whole(at.ambientTemperature)}` },
    },
  ];
}

export const landPlate = figure({
  key: "landPlate",
  title: "The hottest day that the radiator bears",
  atRest: true,
  from,
  describe: (at, units) => {
    const curve = curveOf(at);
    if (typeof curve === "string") return `Not drawn: ${units.refusal(curve)}`;
    const text = (temperature: number) => units.text("temperature", temperature);
    const left = at.limitingAir - at.ambientTemperature;
    const difference = units.text("temperatureDifference", Math.abs(left));
    return `At ${units.text("velocity", at.vehicleSpeed, "road")} the radiator holds the engine's water at its limit up to ${text(at.limitingAir)} outside, ${difference} ${left >= 0 ? "above" : "below"} the air of the brief.`;
  },
  draw: (at, { width, units }) => {
    const curve = curveOf(at);
    if (typeof curve === "string") return notDrawn(units.refusal(curve), width);
    return drawCurves({ fields: fieldsOf(at, curve, units), width, alike: false });
  },
  table: (at, units) => {
    const curve = curveOf(at);
    return {
      columns: [
        "What",
        ["Vehicle's speed", units.unit("velocity", "road")],
        ["Hottest day", units.unit("temperature")],
        ["Engine water today", units.unit("temperature")],
        ["Air through the core", units.unit("volumeFlow")],
      ],
      rows:
        typeof curve === "string"
          ? []
          : curve.map((point) => [
              "Radiator",
              units.number("velocity", point.speed, "road"),
              units.number("temperature", point.limitingAir),
              units.number("temperature", point.coolant),
              units.number("volumeFlow", point.airFlow),
            ]),
    };
  },
});
