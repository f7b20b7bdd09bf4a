import { isRefusal, type Cell } from "../../lib/graph";
import { h, setAttribute, setChildren, setText } from "../dom";
import { limitRule, marginWords, movement, spark, standingMark } from "../mark";
import { type Measured, written, writtenInput } from "../state";
import { type Desk, nodeOf } from "./desk";
import { type Felt, feltElsewhere } from "./felt";
import type { Moves } from "./moves";
import { sameCheck, type Standings } from "./standings";

const longest = 5;
/** Rest after a release before the list is sorted again, in milliseconds. */
const settling = 400;

interface Item {
  readonly element: HTMLElement;
  show(felt: Felt | undefined): void;
}

/** "Felt elsewhere": what moved in other sheets because of what the hand does. Its order stands still during a gesture. */
export function echo(desk: Desk, standings: Standings, moves: Moves): { readonly element: HTMLElement; refresh(): void } {
  const { session } = desk;
  const title = h("h2", { id: "echo-title" }, "Felt elsewhere");
  const cause = h("p", { class: "echo-cause" });
  const list = h("ol", { class: "echo-list" });
  const rest = h("p", { class: "echo-rest" });
  const track = spark();
  const gestureName = h("p", { class: "gesture-name" });
  const gesture = h("div", { class: "gesture", hidden: true }, h("h3", {}, "This gesture"), gestureName, track.element);
  const spoken = h("p", { class: "aside", role: "status" });
  const brief = h("span", { class: "echo-brief" });
  const pull = h(
    "button",
    { type: "button", class: "echo-pull", "aria-expanded": "false", "aria-controls": "echo-body", onclick: () => toggle() },
    h("span", { class: "echo-pull-title" }, "Felt elsewhere"),
    brief,
  );
  const element = h(
    "aside",
    { class: "echo", "aria-labelledby": "echo-title" },
    pull,
    h("div", { class: "echo-body", id: "echo-body" }, title, cause, list, rest, gesture),
    spoken,
  );
  const toggle = (): void => {
    const open = !element.classList.contains("open");
    element.classList.toggle("open", open);
    setAttribute(pull, "aria-expanded", String(open));
  };

  const items = new Map<Cell, Item>();
  let order: readonly Cell[] = [];
  let frozen = false;
  let timer: number | undefined;

  const itemOf = (cell: Cell): Item => {
    let item = items.get(cell);
    if (!item) {
      item = echoItem(desk, standings, moves, cell);
      items.set(cell, item);
    }
    return item;
  };

  const refresh = (): void => {
    const felt = feltElsewhere(desk, standings, moves);
    const byCell = new Map(felt.map((each) => [each.cell, each]));
    const ranked = felt.map(({ cell }) => cell);
    order = frozen ? [...order, ...ranked.filter((cell) => !order.includes(cell))].slice(0, longest) : ranked.slice(0, longest);
    for (const cell of order) itemOf(cell).show(byCell.get(cell));
    setChildren(list, order.map((cell) => itemOf(cell).element));
    const others = ranked.filter((cell) => !order.includes(cell)).length;
    setText(rest, restWords(felt.length, others, moves.keys.length));
    setText(cause, causeWords(desk, moves));
    setText(brief, order.slice(0, 3).map((cell) => briefWords(desk, cell)).join(" · ") || "nothing has moved");
    const [key] = moves.keys;
    gesture.hidden = key === undefined || moves.keys.length > 1;
    if (key === undefined || gesture.hidden) return;
    track.show(moves.samples(key));
    setText(gestureName, session.state.gesture ? "" : (session.state.done.at(-1)?.name ?? ""));
  };

  session.subscribe((state, previous) => {
    if (state.gesture && !previous.gesture) {
      window.clearTimeout(timer);
      frozen = true;
      order = [];
    }
    if (!state.gesture && previous.gesture) {
      timer = window.setTimeout(() => {
        frozen = false;
        refresh();
        setText(spoken, spokenWords(desk, standings, moves));
      }, settling);
    }
  });
  return { element, refresh };
}

function echoItem(desk: Desk, standings: Standings, moves: Moves, cell: Cell): Item {
  const place = desk.places.get(cell.key);
  const value = h("span", { class: "value" });
  const moved = h("span", { class: "movement" });
  const since = h("span", { class: "since" });
  const line = spark();
  const rule = limitRule();
  const mark = standingMark();
  const limit = h("span", { class: "limit" }, rule.element, mark.element);
  const element = h(
    "li",
    { class: "echo-item" },
    h("a", { class: "echo-name", href: `#${place?.id ?? ""}` }, h("span", { class: "letter" }, place?.letter ?? ""), " ", cell.label),
    h("span", { class: "echo-figures" }, value, moved, since, line.element),
    limit,
  );
  return {
    element,
    show: (felt) => {
      const now = desk.values.get(cell);
      const { units, held } = desk.session.state;
      limit.hidden = !felt?.tightest;
      if (felt?.tightest) {
        const { tightest } = felt;
        rule.show(tightest.margin, tightest.standing, sameCheck(tightest, standings.held(cell))?.margin);
        mark.show(tightest.standing, `${marginWords(tightest.margin)}, ${tightest.component}`);
      }
      line.show(moves.samples(cell.key));
      if (isRefusal(now) || typeof now !== "number") {
        setText(value, isRefusal(now) ? "no answer" : felt?.tightest ? written(units, felt.tightest, felt.tightest.value).text : "");
        for (const text of [moved, since]) setText(text, "");
        return;
      }
      const measured = cell as Measured;
      const [before, reference] = [moves.before(cell), held.evaluation.get(cell)];
      setText(value, written(units, measured, now, { steady: true }).text);
      const against = typeof reference === "number" ? movement(units, measured, now, reference) : "";
      const lately = typeof before === "number" ? movement(units, measured, now, before) : "";
      setText(moved, against || "=");
      setText(since, lately && lately !== against ? lately.slice(2) : "");
    },
  };
}

function causeWords(desk: Desk, moves: Moves): string {
  if (moves.shown !== undefined) return `after showing ${moves.shown}`;
  const [first, ...others] = moves.keys;
  if (first === undefined) return "Move a number: what it does in the other sheets is told here.";
  const { label } = nodeOf(desk.graph, first);
  const verb = desk.session.state.gesture ? "while moving" : "after moving";
  return others.length > 0 ? `${verb} ${label} and ${others.length} more` : `${verb} ${label}`;
}

function restWords(all: number, others: number, moved: number): string {
  if (moved === 0) return "";
  if (all === 0) return "Nothing outside this sheet has moved.";
  return others > 0 ? `${others} more moved less` : "";
}

function briefWords(desk: Desk, cell: Cell): string {
  const { units, held } = desk.session.state;
  const [now, before] = [desk.values.get(cell), held.evaluation.get(cell)];
  if (typeof now !== "number" || cell.kind === undefined) return cell.label;
  const measured = cell as Measured;
  const step = typeof before === "number" ? movement(units, measured, now, before) : "";
  return `${cell.label} ${written(units, measured, now, { steady: true }).text} ${step}`.trim();
}

/** What is said aloud after a release. */
function spokenWords(desk: Desk, standings: Standings, moves: Moves): string {
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
      .map((check) => `${check.component}, ${marginWords(check.margin)}`),
  );
  if (changed.length === 0) return `${node.label} ${value}. No limit changed.`;
  const count = changed.length === 1 ? "One limit" : `${changed.length} limits`;
  return `${node.label} ${value}. ${count} changed: ${changed.slice(0, 4).join("; ")}.`;
}
