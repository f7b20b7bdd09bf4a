import { type Cell, type Check, isRefusal } from "../../lib/graph";
import { boxed, h, setAttribute, setText } from "../dom";
import { classWords, limitRule, movement, spark, standingMark } from "../mark";
import { type Measured, written } from "../state";
import { checkName } from "./check-name";
import type { Desk } from "./desk";
import type { Felt } from "./felt";
import type { Moves } from "./moves";
import { sameCheck, type Standings } from "./standings";

export interface EchoItem {
  readonly element: HTMLElement;
  show(felt: Felt | undefined): void;
}

/** A line that moved in another sheet: its value, how it stands to the reference, or to the installation shown before, and its limit. */
export function echoItem(desk: Desk, standings: Standings, moves: Moves, cell: Cell): EchoItem {
  const place = desk.places.get(cell.key);
  const name = h("span", {}, cell.label);
  const value = boxed("value");
  const moved = boxed("movement");
  const since = boxed("since");
  const line = spark();
  const rule = limitRule();
  const mark = standingMark();
  const limit = h("span", { class: "limit" }, rule.element, mark.element);
  const element = h(
    "li",
    { class: "echo-item" },
    h("a", { class: "echo-name", href: `#${place?.id ?? ""}`, "data-key": cell.key }, h("span", { class: "letter" }, place?.letter ?? ""), " ", name),
    line.element,
    h("span", { class: "echo-figures" }, value.element, moved.element, since.element),
    limit,
  );
  const showLimit = (check: Check | undefined, before: Check | undefined): void => {
    setAttribute(limit, "hidden", !check);
    if (!check) return;
    const held = moves.shown ? before : sameCheck(check, standings.held(cell));
    rule.show(check.margin, check.standing, held?.margin);
    mark.show(check.standing, `${classWords(check, before?.standing === check.standing ? held : before)}, ${check.component}`);
  };
  const showNumber = (measured: Measured, now: number, before: number | undefined, held: number | undefined): void => {
    const { units } = desk.session.state;
    value.show(written(units, measured, now, { steady: true }).text);
    const against = held === undefined ? "" : movement(units, measured, now, held);
    const lately = before === undefined ? "" : movement(units, measured, now, before);
    // Another installation is told beside the one that was shown, not beside itself as it was held.
    moved.show((moves.shown ? lately : against) || "=");
    since.show(!moves.shown && lately && lately !== against ? lately.slice(2) : "");
  };
  return {
    element,
    show: (felt) => {
      const now = desk.values.get(cell);
      const check = felt?.check;
      showLimit(check, felt?.before);
      line.show(moves.samples(cell.key));
      setText(name, cell.kind === undefined && check ? checkName(check) : cell.label);
      if (typeof now === "number") return showNumber(cell as Measured, now, numberOf(moves.before(cell)), numberOf(desk.session.state.held.evaluation.get(cell)));
      if (check && !isRefusal(now)) return showNumber(check, check.value, felt.before?.value, sameCheck(check, standings.held(cell))?.value);
      value.show(isRefusal(now) ? "no answer" : "as before");
      for (const text of [moved, since]) text.show("");
    },
  };
}

function numberOf(value: unknown): number | undefined {
  return typeof value === "number" ? value : undefined;
}
