import { isRefusal, type ValuesOf } from "../../../lib/graph";
import type { Temperature } from "../../../lib/quantity";
import { exhaustKind } from "../../boat-duty/inputs";
import { figures } from "../../drawing";
import { type FigureUnits, figure } from "../../sheet";
import { type CurveCircuits, type CurvePoint, propellerCurve } from "../curve";
import { dischargeLimit, jacketTemperature, oilTemperature, wetExhaustLimit } from "../inputs";
import { type CurveField, drawCurves } from "./curveFields";
import { notDrawn } from "./notDrawn";

const from = { propellerCurve, exhaustKind, jacketTemperature, oilTemperature, dischargeLimit, wetExhaustLimit };
type At = ValuesOf<typeof from>;

/** A temperature along the curve, and what it must not pass. */
interface Series {
  readonly title: string;
  /** at the end of its curve, and in a sentence */
  readonly name: string;
  readonly spoken: string;
  readonly limit: Temperature;
  readonly of: (circuits: CurveCircuits) => Temperature | undefined;
}

/** A dry exhaust has no mix. */
const seriesOf = (at: At): readonly Series[] => [
  {
    title: "Jacket water leaving the engine",
    name: "jacket",
    spoken: "the jacket water",
    limit: at.jacketTemperature,
    of: ({ jacket }) => jacket,
  },
  {
    title: "Oil entering its cooler",
    name: "oil",
    spoken: "the oil",
    limit: at.oilTemperature,
    of: ({ oil }) => oil,
  },
  {
    title: "Sea water leaving the last exchanger",
    name: "sea water",
    spoken: "the sea water behind the last exchanger",
    limit: at.dischargeLimit,
    of: ({ seaDischarge }) => seaDischarge,
  },
  ...(at.exhaustKind === "dry"
    ? []
    : [
        {
          title: "Exhaust, gas and water mixed",
          name: "mixed",
          spoken: "the exhaust mixed with its water",
          limit: at.wetExhaustLimit,
          of: ({ mixedExhaust }: CurveCircuits) => mixedExhaust,
        },
      ]),
];

/** The curve, or in words why none of its points has a line and circuits. */
function curveOf({ propellerCurve }: At): readonly CurvePoint[] | string {
  const curve = propellerCurve.get();
  if (isRefusal(curve)) return curve.words;
  if (curve.some(circuitsOf)) return curve;
  return (
    curve.map((point) => ("refused" in point ? point.refused : "")).find((words) => words !== "") ??
    "the raw-water line and its circuits have no answer at any speed of this curve"
  );
}

const circuitsOf = (point: CurvePoint): CurveCircuits | undefined => ("circuits" in point ? point.circuits : undefined);

/** The speeds at which a temperature is known, and what it is there. */
const along = ({ of }: Series, curve: readonly CurvePoint[]) =>
  curve.flatMap((point) => {
    const circuits = circuitsOf(point);
    const temperature = circuits && of(circuits);
    return temperature === undefined ? [] : [{ speed: point.speed, temperature }];
  });

/** A field for each temperature; a row of the numbers is a speed, the same in all of them. */
function fieldsOf(at: At, curve: readonly CurvePoint[], units: FigureUnits): readonly CurveField[] {
  const warm = (temperature: number) => units.number("temperature", temperature);
  const turning = (speed: number) => units.number("rotationalSpeed", speed);
  return seriesOf(at).map((series) => ({
    title: `${series.title}, ${units.unit("temperature")}`,
    across: `Engine speed, ${units.unit("rotationalSpeed")}`,
    curves: [
      {
        name: series.name,
        points: along(series, curve).map(({ speed, temperature }) => [turning(speed), warm(temperature)] as const),
        look: "line-1",
      },
    ],
    listed: curve.map(({ speed }) => turning(speed)),
    firstRow: 0,
    limit: { at: warm(series.limit), text: `at most ${figures(warm(series.limit))}` },
  }));
}

/** Where a temperature is highest, and how far that lies from its limit. */
function hottestWords(series: Series, curve: readonly CurvePoint[], units: FigureUnits): string {
  const known = along(series, curve);
  if (known.length === 0) return `There is no answer for ${series.spoken}.`;
  const hottest = known.reduce((most, point) => (point.temperature > most.temperature ? point : most));
  const left = series.limit - hottest.temperature;
  const room = `${units.text("temperatureDifference", Math.abs(left))} ${left >= 0 ? "below" : "above"} its limit`;
  const where = `${units.text("temperature", hottest.temperature)} at ${units.text("rotationalSpeed", hottest.speed)}`;
  return `${series.spoken[0]!.toUpperCase()}${series.spoken.slice(1)} is hottest, ${where}, ${room}.`;
}

export const curveTemperatures = figure({
  key: "curveTemperatures",
  title: "How warm it gets along the propeller's curve",
  atRest: true,
  from,
  describe: (at, units) => {
    const curve = curveOf(at);
    if (typeof curve === "string") return `Not drawn: ${units.refusal(curve)}`;
    return seriesOf(at)
      .map((series) => hottestWords(series, curve, units))
      .join(" ");
  },
  draw: (at, { width, units }) => {
    const curve = curveOf(at);
    if (typeof curve === "string") return notDrawn(units.refusal(curve), width);
    return drawCurves({ fields: fieldsOf(at, curve, units), width, alike: false });
  },
  table: (at, units) => {
    const curve = curveOf(at);
    const series = seriesOf(at);
    const temperature = (value: number | undefined) => (value === undefined ? "–" : units.number("temperature", value));
    return {
      columns: [
        "Where",
        ["Engine speed", units.unit("rotationalSpeed")],
        ["Propeller takes", units.unit("power")],
        ["Raw water", units.unit("volumeFlow")],
        ...series.map(({ title }) => [title, units.unit("temperature")] as const),
      ],
      rows:
        typeof curve === "string"
          ? []
          : curve.map((point) => {
              const circuits = circuitsOf(point);
              return [
                "The propeller's curve",
                units.number("rotationalSpeed", point.speed),
                units.number("power", point.brakePower),
                circuits ? units.number("volumeFlow", circuits.rawWaterFlow) : "–",
                ...series.map(({ of }) => temperature(circuits && of(circuits))),
              ];
            }),
    };
  },
});
