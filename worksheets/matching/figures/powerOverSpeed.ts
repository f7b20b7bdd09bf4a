import { type FigureUnits, figure } from "../../sheet";
import { powerPlate } from "./powerPlate";
import { attained, isEmpty, placeOf, promisedOf, type Run, runFrom, runOf } from "./run";
import { bindingWords, gapWords, inSentence, leapWords, reasonOf, sentences } from "./runWords";

export const powerOverSpeed = figure({
  key: "powerOverSpeed",
  title: "The most power over engine speed, and what stops it",
  from: runFrom,
  atRest: true,
  describe: (values, units) => {
    const run = runOf(values);
    if (isEmpty(run)) return gapWords(run, units);
    return sentences(
      promiseWords(run, units),
      bindingWords(run, units),
      leapWords(run, units),
      gapWords(run, units),
    );
  },
  draw: (values, frame) => powerPlate(runOf(values), frame),
  table: (values, units) => {
    const run = runOf(values);
    return {
      columns: [
        "Speed",
        ["Engine speed", units.unit("rotationalSpeed")],
        ["Power", units.unit("power")],
        ["Torque", units.unit("torque")],
        "Met first",
        "Met next",
        ["Met next at", units.unit("power")],
      ],
      rows: run.points.map((point) => {
        const speed = units.number("rotationalSpeed", point.engineSpeed);
        const place = placeOf(run, point.engineSpeed);
        const here = attained(point);
        if (!here) return [place, speed, "–", "–", `nothing: ${reasonOf(point, units)}`, "–", "–"];
        const { binding, next } = here;
        return [
          place,
          speed,
          units.number("power", here.point.brakePower),
          units.number("torque", here.point.torque),
          binding.name,
          next?.name ?? "none in sight",
          next ? units.number("power", next.brakePower) : "–",
        ];
      }),
    };
  },
});

/** What the promised speed gives against the promise, and what lies behind the limit. */
function promiseWords(run: Run, units: FigureUnits): string {
  const here = promisedOf(run);
  const speed = units.text("rotationalSpeed", run.ratedSpeed);
  if (!here) {
    const asked = run.points.find(({ engineSpeed }) => engineSpeed === run.ratedSpeed);
    return `At the promised ${speed} the parts give nothing: ${asked ? reasonOf(asked, units) : "it was not looked at"}.`;
  }
  const { binding, next, point } = here;
  const room = point.brakePower - run.ratedPower;
  const against = room >= 0 ? `${units.text("power", room)} more than` : `${units.text("power", -room)} short of`;
  const then = next
    ? `Lifting that limit alone would bring it to ${units.text("power", next.brakePower)}, where the next one is met: ${inSentence(next.name)}.`
    : "No further limit is in sight behind it.";
  return `At ${speed} the parts give ${units.text("power", point.brakePower)}, ${against} the promise, and ${inSentence(binding.name)} stops them. ${then}`;
}
