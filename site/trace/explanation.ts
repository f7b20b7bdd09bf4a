import type { Cell } from "../../lib/graph";

/** What stands behind a cell in words. */
export type Explanation = Pick<Cell, "formula" | "source" | "assumptions">;

/**
 * A cell's formula, source and assumptions. In the served page cells do not carry them: the build takes them out and puts
 * them here (see .dev/explanationsApart.ts), so that they are fetched with the first trace and not before.
 */
export function explanationOf(cell: Cell): Explanation {
  return cell;
}
