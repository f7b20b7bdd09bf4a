import type { Cell } from "../../lib/graph";
import { marginWords, movement } from "../mark";
import { type Measured, written, writtenInput } from "../state";
import { checkName } from "./check-name";
import { type Desk, nodeOf } from "./desk";
import type { Felt } from "./felt";
import type { Moves } from "./moves";
import { sameCheck, type Standings } from "./standings";

/** What a line's movement is told against: the reference held, or the installation shown before after another is shown. */
export function referenceOf(desk: Desk, moves: Moves, cell: Cell): unknown {
  return moves.shown ? moves.before(cell) : desk.session.state.held.evaluation.get(cell);
}

/** A line that moved, in few words: name, value, movement. */
export function briefWords(desk: Desk, moves: Moves, cell: Cell, felt: Felt | undefined): string {
  const { units } = desk.session.state;
  const check = felt?.check;
  if (cell.kind === undefined && check) {
    const step = felt.before ? movement(units, check, check.value, felt.before.value) : "";
    return `${checkName(check)} ${written(units, check, check.value, { steady: true }).text} ${step}`.trim();
  }
  const [now, before] = [desk.values.get(cell), referenceOf(desk, moves, cell)];
  if (typeof now !== "number" || cell.kind === undefined) return cell.label;
  const measured = cell as Measured;
  const step = typeof before === "number" ? movement(units, measured, now, before) : "";
  return `${cell.label} ${written(units, measured, now, { steady: true }).text} ${step}`.trim();
}

/** What is said aloud after a release. */
export function spokenWords(desk: Desk, standings: Standings, moves: Moves): string {
  const [key] = moves.keys;
  const node = key === undefined ? undefined : nodeOf(desk.graph, key);
  if (node?.type !== "quantity") return "";
  const value = writtenInput(desk.session.state.units, node, desk.session.inputs[node.key] as number).text;
  const changed = desk.graph.cells.flatMap((cell) =>
    standings
      .of(cell)
      .filter((check) => {
        const old = sameCheck(check, moves.checksBefore(cell));
        return old !== undefined && old.standing !== check.standing;
      })
      .map((check) => `${checkName(check)}, ${marginWords(check.margin)}`),
  );
  if (changed.length === 0) return `${node.label} ${value}. No limit changed.`;
  const count = changed.length === 1 ? "One limit" : `${changed.length} limits`;
  return `${node.label} ${value}. ${count} changed: ${changed.slice(0, 4).join("; ")}.`;
}
