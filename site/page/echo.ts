import type { Cell } from "../../lib/graph";
import { h, setAttribute, setChildren, setText } from "../dom";
import { inputsOf } from "../../worksheets/build/build";
import { spark } from "../mark";
import { changeName } from "../state";
import { type Desk, nodeOf } from "./desk";
import { briefWords, spokenWords } from "./echo-words";
import { type EchoItem, echoItem } from "./echo-item";
import { echoNothing } from "./echo-nothing";
import { echoRest } from "./echo-rest";
import { feltBy, feltElsewhere } from "./felt";
import type { Moves } from "./moves";
import type { Standings } from "./standings";

const longest = 5;
/** Rest after a release before the list is sorted again, in milliseconds. */
const settling = 400;

export interface Echo {
  readonly element: HTMLElement;
  /** What brings it up to date, in pieces: first the list, then the items on it one by one, then some of the rest. */
  readonly pieces: readonly (() => void)[];
}

/** "Felt elsewhere": what moved in other sheets because of what the hand does. Its order stands still during a gesture. */
export function echo(desk: Desk, standings: Standings, moves: Moves): Echo {
  const { session } = desk;
  const title = h("h2", { id: "echo-title" }, "Felt elsewhere");
  const cause = h("p", { class: "echo-cause" });
  const list = h("ol", { class: "echo-list" });
  const nothing = echoNothing(desk, standings, moves);
  const rest = echoRest(desk, moves);
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
    h(
      "div",
      { class: "pane" },
      pull,
      h("div", { class: "echo-body", id: "echo-body" }, title, cause, list, nothing.element, rest.element, gesture),
      spoken,
    ),
  );
  const toggle = (): void => {
    const open = !element.classList.contains("open");
    element.classList.toggle("open", open);
    setAttribute(pull, "aria-expanded", String(open));
  };

  const items = new Map<Cell, EchoItem>();
  let order: readonly Cell[] = [];
  let frozen = false;
  let timer: number | undefined;

  const itemOf = (cell: Cell): EchoItem => {
    let item = items.get(cell);
    if (!item) {
      item = echoItem(desk, standings, moves, cell);
      items.set(cell, item);
    }
    return item;
  };

  const refreshItem = (index: number): void => {
    const cell = order[index];
    if (cell) itemOf(cell).show(feltBy(desk, standings, moves, cell));
  };
  const refreshList = (): void => {
    const felt = feltElsewhere(desk, standings, moves);
    const byCell = new Map(felt.map((each) => [each.cell, each]));
    const ranked = felt.map(({ cell }) => cell);
    const before = order;
    order = frozen ? [...order, ...ranked.filter((cell) => !order.includes(cell))].slice(0, longest) : ranked.slice(0, longest);
    for (const cell of order) if (!before.includes(cell)) itemOf(cell).show(byCell.get(cell));
    setChildren(list, order.map((cell) => itemOf(cell).element));
    rest.show(felt.filter(({ cell }) => !order.includes(cell)), frozen);
    nothing.show(felt.length === 0 && moves.keys.length > 0);
    setText(cause, causeWords(desk, moves));
    setText(brief, order.slice(0, 3).map((cell) => briefWords(desk, moves, cell, byCell.get(cell))).join(" · ") || "nothing has moved");
    const [key] = moves.keys;
    const single = key !== undefined && moves.keys.length === 1;
    setAttribute(gesture, "hidden", !single);
    if (!single) return;
    track.show(moves.samples(key));
    setText(gestureName, gestureWords(desk));
  };

  const pieces = [refreshList, ...Array.from({ length: longest }, (_, index) => () => refreshItem(index)), rest.refresh];

  session.subscribe((state, previous) => {
    if (state.gesture && !previous.gesture) {
      window.clearTimeout(timer);
      frozen = true;
      order = [];
    }
    const typed = !state.gesture && !previous.gesture && (state.build.shared !== previous.build.shared || state.build.installations !== previous.build.installations);
    if (typed || (!state.gesture && previous.gesture)) {
      window.clearTimeout(timer);
      timer = window.setTimeout(() => {
        frozen = false;
        for (const piece of pieces) piece();
        setText(spoken, spokenWords(desk, standings, moves));
      }, settling);
    }
  });
  return { element, pieces };
}

function causeWords(desk: Desk, moves: Moves): string {
  if (moves.shown !== undefined) return `${moves.shown.now} beside ${moves.shown.before}`;
  const [first, ...others] = moves.keys;
  if (first === undefined) return "Move a number: what it does in the other sheets is told here. The small arrow before a line, or the key t, tells where its number comes from.";
  const { label } = nodeOf(desk.graph, first);
  const verb = desk.session.state.gesture ? "while moving" : "after moving";
  return others.length > 0 ? `${verb} ${label} and ${others.length} more` : `${verb} ${label}`;
}

/** What the hand has done so far, or did last. */
function gestureWords(desk: Desk): string {
  const { graph, session } = desk;
  const { gesture, units, installation, done } = session.state;
  if (!gesture) return done.at(-1)?.name ?? "";
  const name = changeName(graph, units, inputsOf(gesture.before, installation), session.inputs);
  return name === "no value" ? "" : name;
}
