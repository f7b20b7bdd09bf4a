import { type Cell, type Check, checksOf, type Evaluation, type Standing } from "../../lib/graph";
import type { Sheet } from "../../worksheets/sheet";
import { applies, cellsOf, type Desk, operandKeys } from "./desk";

/** Margins of every cell at present, worked out when they are asked for after a change. */
export interface Standings {
  /** A cell's checks, tightest first. */
  of(cell: Cell): readonly Check[];
  /** A cell's checks in the order in which it gives them. */
  inOrder(cell: Cell): readonly Check[];
  /** A cell's checks at the reference held. */
  held(cell: Cell): readonly Check[];
  /** How many cells of a sheet are past, and near, a limit; nothing on a sheet that does not count. */
  counts(sheet: Sheet): Readonly<Record<Exclude<Standing, "inside">, number>>;
  /** Every check of the sheets that count. */
  all(): readonly Check[];
  /** @param keys of the nodes that changed */
  update(keys: ReadonlySet<string>): void;
}

interface Stood {
  readonly given: readonly Check[];
  readonly tightestFirst: readonly Check[];
}

export function createStandings(desk: Desk): Standings {
  const { graph, sheets, places, values, session } = desk;
  const limited = graph.cells.filter((cell) => cell.limits.length > 0 || cell.checks !== undefined);
  const watching = new Map<string, Cell[]>();
  for (const cell of limited) {
    for (const key of new Set([cell.key, ...operandKeys(cell)])) watching.set(key, [...(watching.get(key) ?? []), cell]);
  }
  const cells = new Map(sheets.map((sheet) => [sheet, cellsOf(sheet, places)]));
  const now = new Map<Cell, Stood>();
  let heldAt: Pick<Evaluation, "get"> | undefined;
  const before = new Map<Cell, readonly Check[]>();

  const stale = new Set<Cell>();
  /** Nothing before the first values. */
  const stood = (cell: Cell): Stood | undefined => {
    if (stale.delete(cell)) {
      const given = checksOf(cell, values);
      now.set(cell, { given, tightestFirst: [...given].sort((a, b) => a.margin - b.margin) });
    }
    return now.get(cell);
  };
  const of = (cell: Cell): readonly Check[] => stood(cell)?.tightestFirst ?? [];
  return {
    of,
    inOrder: (cell) => stood(cell)?.given ?? [],
    held: (cell) => {
      const { evaluation } = session.state.held;
      if (heldAt !== evaluation) {
        heldAt = evaluation;
        before.clear();
      }
      let checks = before.get(cell);
      if (!checks) {
        checks = checksOf(cell, evaluation);
        before.set(cell, checks);
      }
      return checks;
    },
    counts: (sheet) => {
      const counts = { past: 0, near: 0 };
      if (!applies(sheet, values)) return counts;
      for (const cell of cells.get(sheet)!) {
        const worst = of(cell)[0]?.standing;
        if (worst === "past" || worst === "near") counts[worst] += 1;
      }
      return counts;
    },
    all: () => sheets.filter((sheet) => applies(sheet, values)).flatMap((sheet) => cells.get(sheet)!.flatMap(of)),
    update: (keys) => {
      for (const key of keys) for (const cell of watching.get(key) ?? []) stale.add(cell);
    },
  };
}

/** The same check among others: of the same part and the same thing. */
export function sameCheck(check: Check, among: readonly Check[]): Check | undefined {
  return among.find(({ component, label, side }) => component === check.component && label === check.label && side === check.side);
}
