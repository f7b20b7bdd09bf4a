import { h } from "../dom";
import { marginWords, movement } from "../mark";
import { type Measured, written } from "../state";
import { checkName } from "./check-name";
import { countingCells, type Desk, inSentence, nodeOf } from "./desk";
import { type Felt, feltBy, feltElsewhere } from "./felt";
import type { Moves } from "./moves";
import type { Standings } from "./standings";

/** Lines that are named. */
const named = 2;

/** What the last move did in other sheets, in plain words; empty where it did nothing. */
export function firstMoveWords(desk: Desk, moves: Moves, standings: Standings): string {
  const [key] = moves.keys;
  const move = desk.session.state.done.at(-1)?.name;
  const felt = feltElsewhere(desk, standings, moves);
  if (key === undefined || move === undefined || felt.length === 0) return "";
  const sheets = new Set(felt.map(({ cell }) => desk.places.get(cell.key)?.sheet)).size;
  const most = felt.slice(0, named).map((each) => movedWords(desk, moves, each));
  const lines = `${felt.length} ${felt.length === 1 ? "line" : "lines"} in ${sheets} other ${sheets === 1 ? "sheet" : "sheets"}`;
  const { label } = nodeOf(desk.graph, key);
  // A limit of its own sheet is one as well.
  const everywhere = countingCells(desk).flatMap((cell) => feltBy(desk, standings, moves, cell) ?? []);
  return `You moved ${inSentence(label)}: ${changeIn(move, label)}. ${lines} moved with it, most of all ${most.join(", and ")}.${limitWords(everywhere)}`;
}

/** A line that moved: its name, what it is now, and how it moved since the hand began. */
function movedWords(desk: Desk, moves: Moves, { cell, check, before }: Felt): string {
  const { units } = desk.session.state;
  const [now, then] = [desk.values.get(cell), moves.before(cell)];
  const told = (measured: Measured, value: number, old: unknown): string => {
    const step = typeof old === "number" ? movement(units, measured, value, old) : "";
    return `${written(units, measured, value, { steady: true }).text}${step && ` (${step.replaceAll(" ", "\u00a0")})`}`;
  };
  if (typeof now === "number" && cell.kind !== undefined) return `${cell.label} ${told({ ...cell, kind: cell.kind }, now, then)}`;
  return check ? `${checkName(check)} ${told(check, check.value, before?.value)}` : cell.label;
}

/** A change without the label in its name: "Promised power 708 → 750 kW" is "708 → 750 kW". */
function changeIn(name: string, label: string): string {
  return name.startsWith(label) ? name.slice(label.length).replace(/^:? /, "") : name;
}

function limitWords(felt: readonly Felt[]): string {
  const changed = felt.flatMap(({ classChanged, check }) => (classChanged && check ? [`${checkName(check)}, ${marginWords(check.margin)}`] : []));
  const [first] = changed;
  if (first === undefined) return " No limit was crossed by it.";
  return changed.length === 1 ? ` One limit changed with it: ${first}.` : ` ${changed.length} limits changed with it, first ${first}.`;
}

/** The sentence as it stands under the hand, until it is put away. */
export function firstMoveNote(words: string, hand: Element | null): HTMLElement {
  const element: HTMLElement = h(
    "div",
    { class: "first-move", role: "note" },
    h("p", {}, words, " ", h("span", { class: "first-move-ways" }, "Undo, or ", h("kbd", {}, "Ctrl Z"), ", takes it back; ", h("b", {}, "Felt elsewhere"), " tells the same of every move.")),
    h(
      "button",
      {
        type: "button",
        class: "quiet",
        onclick: () => {
          element.remove();
          if (hand instanceof HTMLElement) hand.focus({ preventScroll: true });
        },
      },
      "Put away",
    ),
  );
  return element;
}
