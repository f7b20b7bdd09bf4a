import { altitude } from "../../brief/cells";
import { type FigureUnits, figure } from "../../sheet";
import { altitudeRun } from "../runs";
import { altitudePlate, type OverAltitude } from "./altitudePlate";
import { attained, promisedOf, runFrom, type RunValues, runOf } from "./run";
import { inSentence, reasonOf, sentences } from "./runWords";

export const powerOverAltitude = figure({
  key: "powerOverAltitude",
  title: "The most power against the altitude",
  from: { ...runFrom, altitudeRun, altitude },
  atRest: true,
  describe: (values, units) => {
    const over = overAltitude(values);
    return sentences(hereWords(over, units), endWords(over, units), carriedWords(over, units));
  },
  draw: (values, frame) => altitudePlate(overAltitude(values), frame),
  table: (values, units) => {
    const { points, here } = overAltitude(values);
    const row = (name: string, metres: number, power: number | undefined, why: string) => [
      name,
      units.number("length", metres, "altitude"),
      power === undefined ? "–" : units.number("power", power),
      why,
    ];
    const own = promisedOf(runOf(values));
    return {
      columns: [
        "Air",
        ["Altitude", units.unit("length", "altitude")],
        ["Most power", units.unit("power")],
        "Limit that is met first",
      ],
      rows: [
        row("this installation", values.altitude, here, own?.binding.name ?? "nothing is given"),
        ...points.map(({ altitude: metres, point }) => {
          const at = attained(point);
          const why = at ? at.binding.name : `nothing: ${reasonOf(point, units)}`;
          return row("standard barometer", metres, at?.point.brakePower, why);
        }),
      ],
    };
  },
});

type Values = RunValues & {
  readonly altitudeRun: { answer(): OverAltitude["points"] };
  readonly altitude: number;
};

function overAltitude(values: Values): OverAltitude {
  return {
    points: values.altitudeRun.answer(),
    altitude: values.altitude,
    here: promisedOf(runOf(values))?.point.brakePower,
    ratedPower: values.ratedPower,
  };
}

function hereWords({ altitude: metres, here }: OverAltitude, units: FigureUnits): string {
  const place = `the ${units.text("length", metres, "altitude")} of this installation`;
  return here === undefined ? `At ${place} the parts give nothing.` : `At ${place} the parts give ${units.text("power", here)}.`;
}

/** What the lowest and the highest place give. */
function endWords({ points }: OverAltitude, units: FigureUnits): string {
  const known = points.flatMap(({ altitude: metres, point }) => {
    const at = attained(point);
    return at ? [{ metres, at }] : [];
  });
  const [low, high] = [known[0], known.at(-1)];
  if (!low || !high || low === high) return "";
  const told = ({ metres, at }: typeof low) =>
    `${units.text("power", at.point.brakePower)} at ${units.text("length", metres, "altitude")}, where ${inSentence(at.binding.name)} is met first`;
  return `With the same parts and as warm a day it is ${told(low)}, and ${told(high)}.`;
}

/** Up to where the promise is carried, along a straight line between two places. */
function carriedWords({ points, ratedPower }: OverAltitude, units: FigureUnits): string {
  const powers = points.map(({ point }) => attained(point)?.point.brakePower ?? 0);
  const short = powers.findIndex((power) => power < ratedPower);
  const promise = `the promise of ${units.text("power", ratedPower)}`;
  const last = units.text("length", points.at(-1)!.altitude, "altitude");
  if (short < 0) return `They carry ${promise} up to ${last} and beyond.`;
  if (short === 0) {
    const above = powers.findIndex((power) => power >= ratedPower);
    if (above < 0) return `They carry ${promise} at none of these heights.`;
    return `They carry ${promise} at ${units.text("length", points[above]!.altitude, "altitude")}, but not at the sea.`;
  }
  const [from, to] = [points[short - 1]!.altitude, points[short]!.altitude];
  const share = (powers[short - 1]! - ratedPower) / (powers[short - 1]! - powers[short]!);
  return `They carry ${promise} up to about ${units.text("length", Math.round((from + share * (to - from)) / 10) * 10, "altitude")}.`;
}
