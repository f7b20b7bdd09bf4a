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
  /** The limit that tells of it: of a value with parts the one that moved most, else the tightest. */
  readonly check: Check | undefined;
  /** How that limit stood when the hand began. */
  readonly before: Check | undefined;
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
    // After another installation is shown, sheets that count in both: on the others there is nothing to compare.
    .filter((sheet) => !homes.has(sheet) && applies(sheet, desk.values) && (!moves.shown || applies(sheet, { get: (node) => moves.before(node) as never })))
    .flatMap((sheet) => cellsOf(sheet, desk.places))
    .flatMap((cell) => feltBy(desk, standings, moves, cell) ?? [])
    .sort(
      (a, b) =>
        Number(b.classChanged) - Number(a.classChanged) || b.marginShift - a.marginShift || b.share - a.share,
    );
}

/** How a line moved since the hand began; nothing where its shown digits are the same. */
export function feltBy(desk: Desk, standings: Standings, moves: Moves, cell: Cell): Felt | undefined {
  const [now, before] = [desk.values.get(cell), moves.before(cell)];
  if (now === before || before === undefined) return undefined;
  if (isRefusal(now) || isRefusal(before)) {
    // Where answers are lost or found the cells at the root tell of it; those that wait for them follow.
    const root = [now, before].some((value) => isRefusal(value) && value.root === cell.key);
    const turned = isRefusal(now) !== isRefusal(before);
    return root && turned ? { cell, classChanged: true, check: undefined, before: undefined, marginShift: 0, share: 1 } : undefined;
  }
  const shifts = standings
    .of(cell)
    .map((check) => shiftOf(check, moves.checksBefore(cell)))
    .sort((a, b) => Number(b.classChanged) - Number(a.classChanged) || b.marginShift - a.marginShift);
  const [first] = shifts;
  const classChanged = first?.classChanged ?? false;
  const marginShift = Math.max(0, ...shifts.map((shift) => shift.marginShift));
  if (cell.kind === undefined) {
    if (!first || !(classChanged || marginShift > surely)) return undefined;
    return { cell, classChanged, check: first.check, before: first.before, marginShift, share: 0 };
  }
  if (typeof now !== "number" || typeof before !== "number") return undefined;
  const share = Math.abs(now - before) / Math.max(Math.abs(now), Math.abs(before));
  const moved = share > surely || (share > never && movedInDigits(desk, cell as Measured, now, before));
  if (!classChanged && !moved) return undefined;
  const told = classChanged ? first : shifts.find(({ check }) => check === standings.of(cell)[0]);
  return { cell, classChanged, check: told?.check, before: told?.before, marginShift, share };
}

interface Shift {
  readonly check: Check;
  readonly before: Check | undefined;
  readonly classChanged: boolean;
  readonly marginShift: number;
}

function shiftOf(check: Check, old: readonly Check[]): Shift {
  const before = sameCheck(check, old);
  const shift = Math.abs(check.margin - (before?.margin ?? check.margin));
  return {
    check,
    before,
    classChanged: before !== undefined && before.standing !== check.standing,
    marginShift: Number.isFinite(shift) ? shift : 0,
  };
}

function movedInDigits(desk: Desk, measured: Measured, now: number, before: number): boolean {
  const { units } = desk.session.state;
  return written(units, measured, now).number !== written(units, measured, before).number;
}
