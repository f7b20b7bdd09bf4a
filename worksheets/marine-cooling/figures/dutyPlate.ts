import { fuelDensity } from "../../../lib/fluid";
import { isRefusal, type ValuesOf } from "../../../lib/graph";
import type { Pressure, Temperature } from "../../../lib/quantity";
import { dutyCurve } from "../../boat-duty/cells";
import { rating } from "../../boat-duty/inputs";
import { ratedPower, ratedSpeed } from "../../brief/cells";
import { figures } from "../../drawing";
import { propellerRange } from "../../fuel-delivery/consumption";
import { fuelInUse } from "../../fuel-delivery/pumpWork";
import { speedRun } from "../../matching/runs";
import { type FigureUnits, figure } from "../../sheet";
import { type DutyPart, type DutyPoint, drawDuty } from "./dutyDrawing";

const from = { dutyCurve, speedRun, propellerRange, ratedPower, ratedSpeed, rating, fuelInUse };
type At = ValuesOf<typeof from>;

/** State at which tanks are measured: 15 °C, open to the air. */
const reference = { temperature: 288.15 as Temperature, pressure: 101325 as Pressure };

const densityOf = ({ fuelInUse }: At) => fuelDensity(fuelInUse, reference);

/** Engine, propeller and fuel at every speed of the curve. */
function pointsOf(at: At): readonly DutyPoint[] {
  const given = partsGiven(at);
  return at.dutyCurve.map(({ speed, engineLimit, propeller, fuelFlow }) => ({
    speed,
    enginePower: engineLimit,
    propellerPower: propeller,
    partsPower: given(speed),
    fuelFlow: fuelFlow / densityOf(at),
  }));
}

/** The most that the chosen parts give at a speed, on straight lines between the speeds of the match's sweep. */
function partsGiven({ speedRun }: At): (speed: number) => number | undefined {
  const run = speedRun.get();
  const points = isRefusal(run) ? [] : run.filter((point) => point.ok);
  return (speed) => {
    const after = points.findIndex(({ engineSpeed }) => engineSpeed >= speed * (1 - 1e-9));
    const [low, high] = [points[Math.max(0, after - 1)], points[after]];
    if (!low || !high || low.engineSpeed > speed * (1 + 1e-9)) return undefined;
    const part = low === high ? 0 : (speed - low.engineSpeed) / (high.engineSpeed - low.engineSpeed);
    return Math.max(0, low.point.brakePower + part * (high.point.brakePower - low.point.brakePower));
  };
}

/** How what the parts give stands to what the propeller takes, where they come closest. */
function partsWords(points: readonly DutyPoint[], units: FigureUnits): readonly string[] {
  const known = points.flatMap((point) => (point.partsPower === undefined ? [] : [{ ...point, given: point.partsPower }]));
  if (known.length === 0) return ["The chosen parts give no power at these speeds."];
  const room = ({ given, propellerPower }: (typeof known)[number]) => given / propellerPower;
  const tightest = known.reduce((least, point) => (room(point) < room(least) ? point : least));
  const short = room(tightest) < 1 ? ", and the boat would not get past it" : "";
  return [
    `By the match the chosen parts give ${units.text("power", tightest.given)} at ${units.text("rotationalSpeed", tightest.speed)}, where that is closest to what the propeller takes, ${units.text("power", tightest.propellerPower)}${short}.`,
  ];
}

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
  atRest: true,
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
      `${units.text("length", range, "boat")} at ${units.text("velocity", boatSpeed, "boat")}`;
    return [
      `Engine and propeller come closest at ${units.text("rotationalSpeed", closest.speed)}: the engine may give ${units.text("power", closest.enginePower)}, the propeller takes ${units.text("power", closest.propellerPower)}.`,
      ...partsWords(points, units),
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
        ["Parts give", units.unit("power")],
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
            point.partsPower === undefined ? "–" : power(point.partsPower),
            power(point.propellerPower),
            fuel(point.fuelFlow),
            "–",
            "–",
          ]),
        ...partsOf(at).map((part) => [
          "At one speed",
          speed(part.speed),
          "–",
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
