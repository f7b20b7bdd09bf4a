import type { Cell } from "./cell";
import type { Evaluation } from "./compile";
import { marginShare, type Standing, type StatedCheck, standing } from "./limit";
import { Refusal } from "./refusal";

/** One limit, held against its value: demand, capacity and the room between. */
export interface Check extends StatedCheck {
  /** The cell that carries the limit. */
  readonly cell: Cell;
  /** Room left as a share of the bound; negative when past. */
  readonly margin: number;
  readonly standing: Standing;
}

/**
 * Holds every limit of the given cells against their values.
 * A cell in refusal, or one whose bound is, has no checks.
 *
 * @param cells the cells whose limits count
 * @param evaluation their values
 */
export function assess(cells: readonly Cell[], evaluation: Evaluation): readonly Check[] {
  return cells.flatMap((cell) => checksOf(cell, evaluation));
}

/** The checks of one cell; none while it, or what its limits stand on, is refused. */
export function checksOf(cell: Cell, evaluation: Pick<Evaluation, "get">): readonly Check[] {
  const value = evaluation.get(cell);
  if (value instanceof Refusal) return [];
  return [...scalarChecks(cell, value, evaluation), ...statedChecks(cell, value, evaluation)]
    .map((check) => {
      const margin = marginShare(check);
      return { ...check, cell, margin, standing: standing(margin) };
    })
    .filter(({ margin }) => margin !== Number.POSITIVE_INFINITY); // a bound of zero that is met asks nothing
}

function scalarChecks(cell: Cell, value: unknown, evaluation: Pick<Evaluation, "get">): StatedCheck[] {
  return cell.limits.flatMap((limit) => {
    const bound = typeof limit.bound === "number" ? limit.bound : evaluation.get(limit.bound);
    if (bound instanceof Refusal) return [];
    return {
      component: limit.component,
      label: cell.label,
      kind: cell.kind!,
      side: limit.side,
      value: value as number,
      bound,
      ...(cell.hint !== undefined && { hint: cell.hint }),
      ...(limit.source !== undefined && { source: limit.source }),
    };
  });
}

function statedChecks(cell: Cell, value: unknown, evaluation: Pick<Evaluation, "get">): readonly StatedCheck[] {
  if (!cell.checks) return [];
  const values: Record<string, unknown> = {};
  for (const [name, reference] of Object.entries(cell.from)) values[name] = evaluation.get(reference);
  return cell.checks(value as never, values as never);
}

/** The spans of a cell's model that its present values leave. */
export function outsideRange(cell: Cell, evaluation: Pick<Evaluation, "get">): readonly string[] {
  const value = evaluation.get(cell);
  if (!cell.validity || value instanceof Refusal) return [];
  return cell.validity
    .filter(({ of, span }) => {
      const held = of === "result" ? value : evaluation.get(cell.from[of]!);
      return typeof held === "number" && !(held >= span[0] && held <= span[1]);
    })
    .map(({ note }) => note);
}
