import type { ValueOf } from "../../../lib/graph";
import { isRefusal } from "../../../lib/graph";
import { ratedSpeed } from "../../brief/cells";
import { share } from "../../drawing";
import { type FigureUnits, figure } from "../../sheet";
import { flowsAlong, flowsLoad, flowsSpeed } from "../inputs/flows";
import { balanceRun } from "../balanceRuns";
import { curveWords, limitWords } from "./curveWords";
import { flowsOf, powerTo } from "./flows";
import { drawHeatBands, type HeatPoint } from "./heatBands";
import { notDrawn } from "./notDrawn";

type Run = ValueOf<typeof balanceRun>;

interface RunPoint extends HeatPoint {
  /** names of the match's limits that are passed there */
  readonly passed: readonly string[];
}

/** The run's points that have an answer, from the slowest; or why there are too few of them. */
function pointsOf(run: Run): readonly RunPoint[] | string {
  const answer = run.get();
  if (isRefusal(answer)) return answer.words;
  const points = answer.flatMap((point) =>
    "balance" in point
      ? [{ speed: point.speed, parts: stackedUp(flowsOf(point.balance.lines)), passed: point.passed }]
      : [],
  );
  if (points.length > 1) return points;
  return (
    answer.map((point) => ("refused" in point ? point.refused : "")).find((words) => words !== "") ??
    "one point makes no curve."
  );
}

/** From the foot of the stack: the shaft, then what goes to the sea, then the rest. */
const stackedUp = (flows: HeatPoint["parts"]): HeatPoint["parts"] => [...flows].reverse();

const fuelOf = ({ parts }: HeatPoint) => parts.reduce((sum, { power }) => sum + power, 0);

/** The slowest speed at which a limit of the match is passed, and its name. */
function pastWords(points: readonly RunPoint[], units: FigureUnits): readonly string[] {
  const past = points.find(({ passed }) => passed.length > 0);
  if (!past) return [];
  const speed = units.text("rotationalSpeed", past.speed);
  return [`At ${speed} the parts are past a limit of the match: ${limitWords(past.passed)}.`];
}

export const curveFlows = figure({
  key: "curveFlows",
  title: "Where every kilowatt goes, over the engine's speed",
  atRest: true,
  from: { balanceRun, flowsAlong, flowsLoad, flowsSpeed, ratedSpeed },
  describe: ({ balanceRun, ...chosen }, units) => {
    const points = pointsOf(balanceRun);
    if (typeof points === "string") return `Not drawn: ${units.refusal(points)}`;
    const [slow, fast] = [points[0]!, points.at(-1)!];
    const told = (point: HeatPoint) => {
      const [sea, fuel] = [powerTo(point.parts, "sea"), fuelOf(point)];
      return `${units.text("power", sea, "heat")} of ${units.text("power", fuel, "heat")}, ${share(units, sea / fuel)} of the fuel,`;
    };
    return [
      `On ${curveWords(chosen, units)} at ${units.text("rotationalSpeed", slow.speed)} the sea water carries ${told(slow)} and at ${units.text("rotationalSpeed", fast.speed)} ${told(fast).replace(/,$/, "")}.`,
      ...pastWords(points, units),
    ].join(" ");
  },
  draw: ({ balanceRun, flowsSpeed, ratedSpeed, ...chosen }, { width, units }) => {
    const points = pointsOf(balanceRun);
    if (typeof points === "string") return notDrawn(units.refusal(points), width);
    const mark = { sets: "flowsSpeed", at: flowsSpeed * ratedSpeed, valueAt: (speed: number) => speed / ratedSpeed };
    return drawHeatBands({ points, along: curveWords(chosen, units), mark, width, units });
  },
  table: ({ balanceRun, ...chosen }, units) => {
    const points = pointsOf(balanceRun);
    const power = (value: number) => units.number("power", value, "heat");
    const unit = units.unit("power", "heat");
    const parts = typeof points === "string" ? [] : points[0]!.parts;
    const where = curveWords(chosen, units).replace(/^(the )?./, (first) => first.slice(-1).toUpperCase());
    return {
      columns: [
        "Where",
        ["Engine speed", units.unit("rotationalSpeed")],
        ["Fuel", unit],
        ...parts.map(({ name }) => [name, unit] as const),
        "Past its limit",
      ],
      rows:
        typeof points === "string"
          ? []
          : points.map((point) => [
              where,
              units.number("rotationalSpeed", point.speed),
              power(fuelOf(point)),
              ...point.parts.map((part) => power(part.power)),
              point.passed.join(", ") || "–",
            ]),
    };
  },
});
