import type { Check } from "../../lib/graph";
import type { FigureTable, FigureUnits } from "../../worksheets/sheet";

const rules = { most: "at most", least: "at least" } as const;

/** Every limit as a row in the units shown, the least room first. */
export function ledgerTable(checks: readonly Check[], units: FigureUnits): FigureTable {
  return {
    columns: ["Part", "Quantity", "Demand", "Rule", "Capacity", "Unit", ["Room", units.unit("fraction")], "Standing"],
    rows: [...checks]
      .sort((a, b) => a.margin - b.margin)
      .map(({ component, label, kind, hint, side, value, bound, margin, standing }) => [
        component,
        label,
        units.number(kind, value, hint),
        rules[side],
        units.number(kind, bound, hint),
        units.unit(kind, hint),
        units.number("fraction", margin),
        standing,
      ]),
  };
}
