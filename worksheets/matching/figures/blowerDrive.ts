import { type FigureUnits, figure } from "../../sheet";
import { blowerPlate } from "./blowerPlate";
import { blowerPower, blowersAt, blowersOf, blowerTorque, closedRun } from "./blowerRun";
import { placeOf, promisedOf, type Run, runFrom, runOf } from "./run";
import { gapWords, reasonOf, sentences } from "./runWords";

export const blowerDrive = figure({
  key: "blowerDrive",
  title: "What the blower takes from the crank, over engine speed",
  from: runFrom,
  atRest: true,
  describe: (values, units) => {
    const run = runOf(values);
    if (blowersOf(run).length === 0) return "There is no blower in the charge path, and nothing to drive.";
    return sentences(atPromise(run, units), mostWords(run, units), bypassWords(run, units), gapWords(run, units));
  },
  draw: (values, frame) => blowerPlate(runOf(values), frame),
  table: (values, units) => {
    const run = runOf(values);
    const closed = closedRun(run);
    return {
      columns: [
        "Speed",
        ["Engine speed", units.unit("rotationalSpeed")],
        ["Power at the drive", units.unit("power")],
        ["Torque at the shaft", units.unit("torque")],
        ["Blower speed", units.unit("rotationalSpeed")],
        "Pressure ratio",
        "Bypass",
        ["Power with it closed", units.unit("power")],
      ],
      rows: run.points.map((point, i) => {
        const head = [placeOf(run, point.engineSpeed), units.number("rotationalSpeed", point.engineSpeed)];
        const blowers = blowersAt(point);
        if (!blowers) return [...head, "–", "–", "–", "–", `nothing: ${reasonOf(point, units)}`, "–"];
        const [first] = blowers;
        if (!first) return [...head, "–", "–", "–", "–", "no blower", "–"];
        const shut = closed ? blowersAt(closed[i]!) : blowers;
        return [
          ...head,
          units.number("power", blowerPower(blowers)),
          units.number("torque", blowerTorque(blowers)),
          units.number("rotationalSpeed", first.speed),
          first.pressureRatio,
          blowers.some(({ bypassOpen }) => bypassOpen) ? "open" : "closed",
          shut ? units.number("power", blowerPower(shut)) : "–",
        ];
      }),
    };
  },
});

/** What it takes at the promised speed, and what part of the flywheel's power that is. */
function atPromise(run: Run, units: FigureUnits): string {
  const here = promisedOf(run);
  if (!here) return "";
  const { blowers, brakePower } = here.point;
  const power = blowerPower(blowers);
  const speed = units.text("rotationalSpeed", run.ratedSpeed);
  const part = units.text("fraction", power / brakePower);
  return `At ${speed} the blower takes ${units.text("power", power)}, which is ${part} of the ${units.text("power", brakePower)} at the flywheel, and ${units.text("torque", blowerTorque(blowers))} at its shaft.`;
}

function mostWords({ points }: Run, units: FigureUnits): string {
  const known = points.flatMap((point) => {
    const blowers = blowersAt(point);
    return blowers && blowers.length > 0 ? [{ speed: point.engineSpeed, power: blowerPower(blowers) }] : [];
  });
  const [first] = known;
  if (!first) return "";
  const most = known.reduce((high, each) => (each.power > high.power ? each : high), first);
  return `The most is ${units.text("power", most.power)} at ${units.text("rotationalSpeed", most.speed)}.`;
}

/** Whether the bypass matters. */
function bypassWords(run: Run, units: FigureUnits): string {
  const closed = closedRun(run);
  if (!closed) return "Its bypass is closed at every speed, so it takes the same with and without one.";
  const open = run.points.flatMap((point, i) => {
    const blowers = blowersAt(point);
    const shut = blowersAt(closed[i]!);
    if (!blowers?.some(({ bypassOpen }) => bypassOpen)) return [];
    return [{ speed: point.engineSpeed, saved: shut && blowerPower(shut) - blowerPower(blowers) }];
  });
  const [first, last] = [open[0]!, open.at(-1)!];
  const from = units.text("rotationalSpeed", first.speed);
  const where = open.length === 1 ? `at ${from}` : `from ${from} to ${units.text("rotationalSpeed", last.speed)}`;
  const told = last.saved === undefined ? "" : `; closed it would take ${units.text("power", Math.abs(last.saved))} ${last.saved >= 0 ? "more" : "less"} at ${units.text("rotationalSpeed", last.speed)}`;
  return `Its bypass is open ${where}${told}.`;
}
