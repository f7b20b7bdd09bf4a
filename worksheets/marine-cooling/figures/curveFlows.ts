import type { ValueOf } from "../../../lib/graph";
import { isRefusal } from "../../../lib/graph";
import { ratedSpeed } from "../../brief/cells";
import { share } from "../../drawing";
import { figure } from "../../sheet";
import { propellerCurve } from "../curve";
import { flowsSpeed } from "../inputs";
import { flowsOf, powerTo } from "./flows";
import { drawHeatBands, type HeatPoint } from "./heatBands";
import { notDrawn } from "./notDrawn";

type Curve = ValueOf<typeof propellerCurve>;

/** The curve's points that have an answer, from the slowest; or why there are too few of them. */
function pointsOf(curve: Curve): readonly HeatPoint[] | string {
  const answer = curve.get();
  if (isRefusal(answer)) return answer.words;
  const points = answer.flatMap((point) =>
    "balance" in point ? [{ speed: point.speed, parts: stackedUp(flowsOf(point.balance.lines)) }] : [],
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

export const curveFlows = figure({
  key: "curveFlows",
  title: "Where the energy goes along the propeller curve",
  atRest: true,
  from: { propellerCurve, flowsSpeed, ratedSpeed },
  describe: ({ propellerCurve }, units) => {
    const points = pointsOf(propellerCurve);
    if (typeof points === "string") return `Not drawn: ${points}`;
    const [slow, fast] = [points[0]!, points.at(-1)!];
    const told = (point: HeatPoint) => {
      const sea = powerTo(point.parts, "sea");
      return `${units.text("power", sea, "heat")}, ${share(units, sea / fuelOf(point))} of the fuel,`;
    };
    return `At ${units.text("rotationalSpeed", slow.speed)} the sea water carries ${told(slow)} and at ${units.text("rotationalSpeed", fast.speed)} ${told(fast).replace(/,$/, "")}.`;
  },
  draw: ({ propellerCurve, flowsSpeed, ratedSpeed }, { width, units }) => {
    const points = pointsOf(propellerCurve);
    if (typeof points === "string") return notDrawn(points, width);
    return drawHeatBands({ points, shown: flowsSpeed * ratedSpeed, width, units });
  },
  table: ({ propellerCurve }, units) => {
    const points = pointsOf(propellerCurve);
    const power = (value: number) => units.number("power", value, "heat");
    const unit = units.unit("power", "heat");
    const parts = typeof points === "string" ? [] : points[0]!.parts;
    return {
      columns: [
        "Where",
        ["Engine speed", units.unit("rotationalSpeed")],
        ["Fuel", unit],
        ...parts.map(({ name }) => [name, unit] as const),
      ],
      rows:
        typeof points === "string"
          ? []
          : points.map((point) => [
              "Propeller curve",
              units.number("rotationalSpeed", point.speed),
              power(fuelOf(point)),
              ...point.parts.map((part) => power(part.power)),
            ]),
    };
  },
});
