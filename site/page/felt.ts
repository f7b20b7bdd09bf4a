import { type Cell, type Check, isRefusal } from "../../lib/graph";
import { applies, cellsOf, type Desk } from "./desk";
import type { Moves } from "./moves";
import { sameCheck, type Standings } from "./standings";
import { type Measured, written } from "../state";

/** Four digits are shown: above the first share they differ in any unit without an offset, below the second they hardly can. */
const surely = 2e-3;
const never = 5e-6;

/** A line that moved elsewhere, and how much it matters. */
export interface Felt {
  readonly cell: Cell;
  /** Whether a limit's class changed since the hand began. */
  readonly classChanged: boolean;
  readonly tightest: Check | undefined;
  readonly marginShift: number;
  readonly share: number;
}

/**
 * The lines outside the moved input's own sheet whose shown digits differ since the hand began: changes of class first,
 * then by how far the margin moved, then by the value's own change.
 */
export function feltElsewhere(desk: Desk, standings: Standings, moves: Moves): readonly Felt[] {
  const homes = new Set(moves.keys.length === 1 ? moves.keys.map((key) => desk.places.get(key)?.sheet) : []);
  return desk.sheets
    .filter((sheet) => !homes.has(sheet) && applies(sheet, desk.values))
    .flatMap((sheet) => cellsOf(sheet, desk.places))
    .flatMap((cell) => feltBy(desk, standings, moves, cell) ?? [])
    .sort(
      (a, b) =>
        Number(b.classChanged) - Number(a.classChanged) || b.marginShift - a.marginShift || b.share - a.share,
    );
}

function feltBy(desk: Desk, standings: Standings, moves: Moves, cell: Cell): Felt | undefined {
  const [now, before] = [desk.values.get(cell), moves.before(cell)];
  if (now === before || before === undefined) return undefined;
  if (isRefusal(now) !== isRefusal(before)) return { cell, classChanged: true, tightest: undefined, marginShift: 0, share: 1 };
  if (isRefusal(now)) return undefined;
  const checks = standings.of(cell);
  const old = moves.checksBefore(cell);
  const [tightest] = checks;
  const classChanged = checks.some((check) => sameCheck(check, old)?.standing !== check.standing) && old.length > 0;
  if (cell.kind === undefined) {
    return classChanged ? { cell, classChanged, tightest, marginShift: shiftOf(checks, old), share: 0 } : undefined;
  }
  if (typeof now !== "number" || typeof before !== "number") return undefined;
  const share = Math.abs(now - before) / Math.max(Math.abs(now), Math.abs(before));
  const moved = share > surely || (share > never && movedInDigits(desk, cell as Measured, now, before));
  if (!classChanged && !moved) return undefined;
  return { cell, classChanged, tightest, marginShift: shiftOf(checks, old), share };
}

function movedInDigits(desk: Desk, measured: Measured, now: number, before: number): boolean {
  const { units } = desk.session.state;
  return written(units, measured, now).number !== written(units, measured, before).number;
}

function shiftOf(checks: readonly Check[], old: readonly Check[]): number {
  const shifts = checks.map((check) => Math.abs(check.margin - (sameCheck(check, old)?.margin ?? check.margin)));
  return Math.max(0, ...shifts.filter(Number.isFinite));
}
