import { share } from "../../drawing";
import type { FigureUnits } from "../../sheet";

/** What the heat flows are drawn along, and under what part of its load. */
export interface CurveChosen {
  readonly flowsAlong: "propeller" | "fullLoad";
  readonly flowsLoad: number;
}

/** The curve in words, as they stand in a sentence: "full load", "60 % of the propeller's load". */
export function curveWords({ flowsAlong, flowsLoad }: CurveChosen, units: FigureUnits): string {
  if (flowsLoad === 1) return flowsAlong === "propeller" ? "the propeller's curve" : "full load";
  return `${share(units, flowsLoad)} of ${flowsAlong === "propeller" ? "the propeller's load" : "full load"}`;
}

/** Names of limits, as they stand in a sentence. */
export function limitWords(names: readonly string[]): string {
  return names.map((name) => `${name[0]!.toLowerCase()}${name.slice(1)}`).join(", ");
}
