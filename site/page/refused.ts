import { type Cell, isRefusal } from "../../lib/graph";
import type { Sheet } from "../../worksheets/sheet";
import { applies, cellsOf, countingCells, type Desk } from "./desk";

/** How many lines of a sheet have no value at present; none where the sheet does not count. */
export function refusedOn(desk: Desk, sheet: Sheet): number {
  if (!applies(sheet, desk.values)) return 0;
  return cellsOf(sheet, desk.places).filter((cell) => isRefusal(desk.values.get(cell))).length;
}

/** The cells from which refusals start, on sheets that count. */
export function refusingRoots(desk: Desk): readonly Cell[] {
  return countingCells(desk).filter((cell) => {
    const value = desk.values.get(cell);
    return isRefusal(value) && value.root === cell.key;
  });
}
