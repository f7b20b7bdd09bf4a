import { share } from "../../drawing";
import { type FigureUnits, figure } from "../../sheet";
import { attained, placeOf, promisedOf, type Run, runFrom, runOf } from "./run";
import { gapWords, reasonOf, sentences } from "./runWords";
import { noRise, type Shares, sharesOf } from "./shares";
import { sharesPlate } from "./sharesPlate";

export const pressureShares = figure({
  key: "pressureShares",
  title: "Who makes the pressure, over engine speed",
  from: runFrom,
  atRest: true,
  describe: (values, units) => {
    const run = runOf(values);
    return sentences(shareWords(run, units), gapWords(run, units));
  },
  draw: (values, frame) => sharesPlate(runOf(values), frame),
  table: (values, units) => {
    const run = runOf(values);
    const unit = units.unit("fraction");
    return {
      columns: [
        "Speed",
        ["Engine speed", units.unit("rotationalSpeed")],
        ["Turbochargers", unit],
        ["Blower", unit],
        ["Lost on the way", unit],
        ["Manifold pressure", units.unit("pressure", "boost")],
      ],
      rows: run.points.map((point) => {
        const head = [placeOf(run, point.engineSpeed), units.number("rotationalSpeed", point.engineSpeed)];
        const at = attained(point);
        if (!at) return [...head, "–", "–", "–", `nothing: ${reasonOf(point, units)}`];
        const shares = sharesOf(at);
        const parts = shares ? [shares.turbochargers, shares.blower, shares.lost] : [];
        const pressure = units.number("pressure", at.point.manifoldPressure, "boost");
        if (parts.length === 0) return [...head, "–", "–", "–", pressure];
        return [...head, ...parts.map((each) => units.number("fraction", each)), pressure];
      }),
    };
  },
});

/** How the shares move from the slowest speed at which there are any to the fastest. */
function shareWords(run: Run, units: FigureUnits): string {
  const known = run.points.flatMap((point) => {
    const at = attained(point);
    const shares = at && sharesOf(at);
    return shares ? [{ speed: point.engineSpeed, shares }] : [];
  });
  const [slow, fast] = [known[0], known.at(-1)];
  if (!slow || !fast) return run.points.some(attained) ? noRise : "";
  const speed = (value: number) => units.text("rotationalSpeed", value);
  const ends = (part: (shares: Shares) => number) =>
    `${share(units, part(slow.shares))} at ${speed(slow.speed)} and ${share(units, part(fast.shares))} at ${speed(fast.speed)}`;
  const makers = (["turbochargers", "blower"] as const).filter((key) => known.some(({ shares }) => shares[key] > 0));
  const here = promisedOf(run);
  const promised = here && sharesOf(here);
  return sentences(
    `Of the rise in pressure ${makers.map((key) => `the ${key} ${key === "blower" ? "makes" : "make"} ${ends((at) => at[key])}`).join(", ")}.`,
    promised
      ? `At the promised ${speed(run.ratedSpeed)} it is ${makers.map((key) => share(units, promised[key])).join(" and ")}; the rest of the path takes ${share(units, promised.lost)} back.`
      : "",
  );
}
