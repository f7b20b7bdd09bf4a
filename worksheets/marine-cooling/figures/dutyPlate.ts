import { rangeOnTank } from "../../../lib/cooling";
import { fuelDensity } from "../../../lib/fluid";
import type { ValuesOf } from "../../../lib/graph";
import type { MassFlow, Pressure, Temperature } from "../../../lib/quantity";
import { dutyCurve, dutyRows } from "../../boat-duty/cells";
import { engineCount, rating, tankReserve, tankVolume } from "../../boat-duty/inputs";
import { ratedPower, ratedSpeed } from "../../brief/cells";
import { figures } from "../../drawing";
import { fuelChoice, fuels } from "../../fuel-delivery/inputs";
import { figure } from "../../sheet";
import { type DutyPart, type DutyPoint, drawDuty } from "./dutyDrawing";

const from = { dutyCurve, dutyRows, ratedPower, ratedSpeed, rating, tankVolume, tankReserve, engineCount, fuelChoice };
type At = ValuesOf<typeof from>;

/** State at which tanks are measured: 15 °C, open to the air. */
const reference = { temperature: 288.15 as Temperature, pressure: 101325 as Pressure };

const densityOf = ({ fuelChoice }: At) => fuelDensity(fuels[fuelChoice], reference);

/** Engine, propeller and fuel at every speed of the curve. */
const pointsOf = (at: At): readonly DutyPoint[] =>
  at.dutyCurve.map(({ speed, engineLimit, propeller, fuelFlow }) => ({
    speed,
    enginePower: engineLimit,
    propellerPower: propeller,
    fuelFlow: fuelFlow / densityOf(at),
  }));

/** The parts of the duty, from the slowest, each as if the whole tank were used for it alone. */
export function partsOf(at: At): readonly DutyPart[] {
  return [...at.dutyRows]
    .sort((a, b) => a.speed - b.speed)
    .map(({ speed, power, fuelFlow, boatSpeed }) => ({
      speed,
      power,
      fuelFlow: fuelFlow / densityOf(at),
      boatSpeed,
      range: rangeOnTank({
        fuel: at.tankVolume * densityOf(at),
        reserve: at.tankReserve,
        fuelFlow: (at.engineCount * fuelFlow) as MassFlow,
        boatSpeed,
      }).distance,
    }));
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
          "Duty",
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
