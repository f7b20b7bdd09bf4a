import { type Evaluation, isRefusal } from "../../lib/graph";
import type { Across, Figure } from "../../worksheets/sheet";
import type { Session } from "../state";
import { valuesOf } from "./complete";

/** A figure's values, with those of every installation beside them for a figure that asks for it; one that has no answer is left out. */
export function valuesAcross(figure: Figure, values: Pick<Evaluation, "get">, session: Session): Record<string, unknown> & Across<unknown> {
  const here = valuesOf(values, figure.from);
  if (!figure.across) return here;
  const { build, installation: shown } = session.state;
  const installations = build.installations.flatMap(({ key, label }) => {
    const own = key === shown ? here : valuesOf(session.evaluate(key), figure.from);
    return Object.values(own).some(isRefusal) ? [] : [{ key, label, values: own }];
  });
  return { ...here, installations };
}
