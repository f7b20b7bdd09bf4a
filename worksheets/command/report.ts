import { type Cell, type Check, checksOf, type Evaluation, type Graph, outsideRange, Refusal } from "../../lib/graph";
import { kinds } from "../../lib/quantity";

export type CellState = "ok" | "outside range" | "refused" | "waits";

/** One cell at one setting of the inputs. */
export interface CellReport {
  readonly cell: Cell;
  /** In SI; null in refusal. */
  readonly value: unknown;
  readonly state: CellState;
  /** Why it has no value, for what it waits, or which span its model leaves. */
  readonly message?: string;
  readonly checks: readonly Check[];
}

/** What a cell came to. */
export function reportOf(cell: Cell, evaluation: Evaluation, graph: Graph): CellReport {
  const value = evaluation.get(cell);
  if (value instanceof Refusal) return { cell, value: null, ...refused(cell, value, graph), checks: [] };
  const notes = outsideRange(cell, evaluation);
  const checks = checksOf(cell, evaluation);
  if (notes.length > 0) return { cell, value, state: "outside range", message: notes.join("; "), checks };
  return { cell, value, state: "ok", checks };
}

/** A report as the fields that --json prints; values and bounds in SI, a margin as a share of its bound. */
export function reportFields({ cell, value, state, message, checks }: CellReport) {
  return {
    key: cell.key,
    label: cell.label,
    value,
    unit: cell.kind === undefined ? null : kinds[cell.kind].unit,
    state,
    ...(message !== undefined && { message }),
    margins: checks.map((check) => ({
      component: check.component,
      label: check.label,
      side: check.side,
      value: check.value,
      bound: check.bound,
      unit: kinds[check.kind].unit,
      // A bound of zero has no share; JSON has no word for that but null.
      margin: Number.isFinite(check.margin) ? check.margin : null,
      standing: check.standing,
      ...(check.source !== undefined && { source: check.source }),
    })),
    source: cell.source,
  };
}

function refused(
  cell: Cell,
  refusal: Refusal,
  graph: Graph,
): Pick<CellReport, "state" | "message"> & { message: string } {
  if (refusal.root === cell.key) {
    const message = refusal.fault ? `a defect of the sheet: ${refusal.words}` : refusal.words;
    return { state: "refused", message };
  }
  const root = graph.nodes[graph.position.get(refusal.root) ?? -1];
  return { state: "waits", message: `waits for ${root?.label ?? refusal.root}` };
}
