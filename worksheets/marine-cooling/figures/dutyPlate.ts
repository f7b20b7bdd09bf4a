import { fuelDensity } from "../../../lib/fluid";
import type { ValuesOf } from "../../../lib/graph";
import type { Pressure, Temperature } from "../../../lib/quantity";
import { dutyCurve } from "../../boat-duty/cells";
import { rating } from "../../boat-duty/inputs";
import { ratedPower, ratedSpeed } from "../../brief/cells";
import { figures } from "../../drawing";
import { propellerRange } from "../../fuel-delivery/consumption";
import { fuelInUse } from "../../fuel-delivery/pumpWork";
import { figure } from "../../sheet";
import { type DutyPart, type DutyPoint, drawDuty } from "./dutyDrawing";

const from = { dutyCurve, propellerRange, ratedPower, ratedSpeed, rating, fuelInUse };
type At = ValuesOf<typeof from>;

/** State at which tanks are measured: 15 °C, open to the air. */
const reference = { temperature: 288.15 as Temperature, pressure: 101325 as Pressure };

const densityOf = ({ fuelInUse }: At) => fuelDensity(fuelInUse, reference);

/** Engine, propeller and fuel at every speed of the curve. */
const pointsOf = (at: At): readonly DutyPoint[] =>
  at.dutyCurve.map(({ speed, engineLimit, propeller, fuelFlow }) => ({
    speed,
    enginePower: engineLimit,
    propellerPower: propeller,
    fuelFlow: fuelFlow / densityOf(at),
  }));

/** Shares of the promised speed at which the fuel sheet's range is shown. */
const shown = [0.4, 0.6, 0.75, 0.85, 1];

/** The boat on the propeller's curve from the slowest on, each as if the whole tank were used for it alone. */
const partsOf = (at: At): readonly DutyPart[] =>
  at.propellerRange.curve
    .filter(({ engineSpeed }) => shown.some((share) => Math.abs(engineSpeed / at.ratedSpeed - share) < 1e-9))
    .map(({ engineSpeed, power, way, fuelFlow, range }) => ({
      speed: engineSpeed,
      power,
      fuelFlow: fuelFlow / densityOf(at),
      boatSpeed: way,
      range,
    }));

/** Every fourth point of the curve is listed. */
const listed = (points: readonly DutyPoint[]) => points.map((_, i) => i).filter((i) => i % 4 === 0);

/** The first words of the rating's own. */
const ratingName = (at: At) => rating.options[at.rating].split(",")[0]!;

export const dutyPlate = figure({
  key: "dutyPlate",
  title: "Engine, propeller, fuel and range",
  from,
  describe: (at, units) => {
    const points = pointsOf(at);
    const closest = points.reduce((least, point) =>
      point.enginePower / point.propellerPower < least.enginePower / least.propellerPower ? point : least,
    );
    const parts = partsOf(at);
    const [farthest, fastest] = [
      parts.reduce<DutyPart | undefined>((most, part) => (most && most.range >= part.range ? most : part), undefined),
      parts.at(-1),
    ];
    const part = ({ range, boatSpeed }: DutyPart) =>
      `${units.text("length", range, "boat")}s at ${units.text("velocity", boatSpeed, "boat")}`;
    return [
      `Engine and propeller come closest at ${units.text("rotationalSpeed", closest.speed)}: the engine may give ${units.text("power", closest.enginePower)}, the propeller takes ${units.text("power", closest.propellerPower)}.`,
      ...(farthest && fastest
        ? [`The tank lasts ${part(farthest)}${fastest === farthest ? "" : ` and ${part(fastest)}`}.`]
        : []),
    ].join(" ");
  },
  draw: (at, { width, units }) => {
    const points = pointsOf(at);
    const name = `${ratingName(at)}, ${figures(units.number("power", at.ratedPower))} ${units.unit("power")}`;
    const rated = { speed: at.ratedSpeed, power: at.ratedPower, name };
    return drawDuty({ points, parts: partsOf(at), listed: listed(points), rated, width, units });
  },
  table: (at, units) => {
    const points = pointsOf(at);
    const speed = (value: number) => units.number("rotationalSpeed", value);
    const power = (value: number) => units.number("power", value);
    const fuel = (value: number) => units.number("volumeFlow", value, "fuel");
    return {
      columns: [
        "Where",
        ["Engine speed", units.unit("rotationalSpeed")],
        ["Engine may give", units.unit("power")],
        ["Propeller takes", units.unit("power")],
        ["Fuel", units.unit("volumeFlow", "fuel")],
        ["Boat's speed", units.unit("velocity", "boat")],
        ["Range", units.unit("length", "boat")],
      ],
      rows: [
        ...listed(points)
          .map((i) => points[i]!)
          .map((point) => [
            "On the curve",
            speed(point.speed),
            power(point.enginePower),
            power(point.propellerPower),
            fuel(point.fuelFlow),
            "–",
            "–",
          ]),
        ...partsOf(at).map((part) => [
          "At one speed",
          speed(part.speed),
          "–",
          power(part.power),
          fuel(part.fuelFlow),
          units.number("velocity", part.boatSpeed, "boat"),
          units.number("length", part.range, "boat"),
        ]),
      ],
    };
  },
});
