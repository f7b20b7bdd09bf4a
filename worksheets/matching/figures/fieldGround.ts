import type { MassFlow, RotationalSpeed } from "../../../lib/quantity";
import { axisBelow, axisLeft, type Group, px } from "../../drawing";
import { edgeOf, isEdge, isles, lineOf } from "./fieldMesh";
import { unknownSpeeds } from "./fieldSpan";
import type { FieldView } from "./fieldView";
import { type Corner, hatchedShape, polyline } from "./shapes";

/** Efficiencies of which lines are drawn, the best few of them. */
const steps = [0.3, 0.4, 0.5, 0.6, 0.65, 0.7, 0.73, 0.76, 0.78, 0.8, 0.82, 0.84, 0.86];

/** The shore of an isle of efficiency, for its number. */
export interface Shore {
  readonly efficiency: number;
  readonly places: readonly Corner[];
}

/** What was drawn of a field, for the labels that stand beside it. */
export interface FieldGround {
  /** From the poorest efficiency to the best. */
  readonly shores: readonly Shore[];
  readonly surge: readonly Corner[];
}

/** The field itself: quiet isles of efficiency, lines of wheel speed, and its edges. */
export function fieldGround(group: Group, view: FieldView): FieldGround {
  const { bank, box, span, at, cornerOf, units, width, lines, ticks } = view;
  const field = bank.compressor;
  const path = (look: string, d: string) => group.append("path").attr("class", look).attr("d", d);
  const [right, bottom] = [box.x + box.width, box.y + box.height];
  axisLeft(group, { at: view.y, ticks: ticks.ratio, ends: [box.y, bottom], across: box.x, grid: right });
  axisBelow(group, {
    at: view.x,
    ticks: ticks.flow,
    ends: [box.x, right],
    across: bottom,
    title: `Corrected flow of each, ${units.unit("massFlow")}`,
  });

  const shores = isles(field, span, (best) =>
    steps.filter((step) => step < best - 0.002).slice(width < 480 ? -4 : -6),
  ).map(({ efficiency, rings }): Shore => {
    path("isle", rings.map((ring) => `${polyline(ring.map(at))}Z`).join(""));
    let stroke = "";
    const places: Corner[] = [];
    for (const ring of rings) {
      ring.slice(1).forEach((place, i) => {
        if (isEdge(ring[i]!, place, span)) return;
        stroke += polyline([at(ring[i]!), at(place)]);
        places.push(at(place));
      });
    }
    path("shore", stroke);
    return { efficiency, places };
  });
  for (const unknown of unknownSpeeds(field.speedSpan, span)) {
    const shape = [...edgeOf(0, unknown, 9), ...edgeOf(1, unknown, 9).toReversed()].map(at);
    path("hatch", hatchedShape(shape, 6, -Math.PI / 4));
  }
  for (const { speed } of lines) path("thread", polyline(lineOf(speed).map(at)));
  if (view.allowed !== undefined) path("limit", polyline(lineOf(view.allowed).map(at)));
  const margin = bank.leastSurgeMargin ?? 0;
  if (margin > 0) {
    const away = edgeOf(0, span).map(({ speed }) => {
      const turning = speed as RotationalSpeed;
      const flow = (field.surgeFlow(turning) / (1 - margin)) as MassFlow;
      return cornerOf({ flow, pressureRatio: field.at(flow, turning).pressureRatio });
    });
    path("dotted", polyline(away));
  }
  const surge = edgeOf(0, span).map(at);
  path("outline thick", polyline(surge));
  path("outline", polyline(edgeOf(1, span).map(at)));
  const crosses = view.measured.map(cornerOf);
  path("outline", crosses.map(([a, b]) => `M${px(a - 3)},${px(b - 3)}l6,6M${px(a + 3)},${px(b - 3)}l-6,6`).join(""));
  return { shores, surge };
}
