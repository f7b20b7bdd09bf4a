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

/** A point of the propeller's curve at a speed between two of those worked out, each value on the straight line between theirs. */
export function pointAt(points: readonly DutyPoint[], speed: number): DutyPoint | undefined {
  const after = points.findIndex((point) => point.speed >= speed * (1 - 1e-9));
  const [low, high] = [points[Math.max(0, after - 1)], points[after]];
  if (!low || !high || speed < low.speed) return undefined;
  const part = high === low ? 1 : (speed - low.speed) / (high.speed - low.speed);
  const between = (key: keyof DutyPoint) => low[key] + part * (high[key] - low[key]);
  return {
    speed,
    enginePower: between("enginePower"),
    propellerPower: between("propellerPower"),
    fuelFlow: between("fuelFlow"),
  };
}

/**
 * The boat on this sheet's propeller curve from the slowest on, each as if the whole tank were used for it alone. The
 * fuel sheet tells way and tank, but reckons with a propeller of the full promised power: its range is taken in
 * proportion to the fuel that this propeller asks for.
 */
export function partsOf(at: At): readonly DutyPart[] {
  const points = pointsOf(at);
  return at.propellerRange.curve
    .filter(({ engineSpeed }) => shown.some((share) => Math.abs(engineSpeed / at.ratedSpeed - share) < 1e-9))
    .flatMap(({ engineSpeed, way, fuelFlow, range }) => {
      const own = pointAt(points, engineSpeed);
      return own
        ? [
            {
              speed: engineSpeed,
              power: own.propellerPower,
              fuelFlow: own.fuelFlow,
              boatSpeed: way,
              range: (range * fuelFlow) / (own.fuelFlow * densityOf(at)),
            },
          ]
        : [];
    });
}

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
