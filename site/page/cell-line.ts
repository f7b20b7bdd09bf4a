import { type Cell, type Check, isRefusal, outsideRange, type Refusal } from "../../lib/graph";
import { raised } from "../../lib/quantity";
import { boxed, h, setAttribute, setText, symbol } from "../dom";
import { movement } from "../mark";
import { type Measured, refusalWords, written, writtenInput } from "../state";
import { checkLines } from "./check-lines";
import { type Desk, inSentence, nodeOf, operandKeys, type Part } from "./desk";
import { limitPlace } from "./limit-place";
import { lineLink } from "./link";
import { measuredPlace } from "./measured";
import type { Gathering } from "./parts";
import type { Standings } from "./standings";
import { traceToggle } from "./toggle";
import type { Traces } from "./traces";
import type { Workable } from "./workable";

/** A value on its ruled line: name, symbol, number, movement, limit. */
export function cellLine(
  desk: Desk,
  { standings, traces, workable }: { readonly standings: Standings; readonly traces: Traces; readonly workable: Workable },
  cell: Cell,
  id: string,
  gathering: Gathering,
): Part {
  const watches = [cell.key, ...operandKeys(cell)];
  const toggle = traceToggle(traces, cell, id);
  const number = boxed("number");
  const unit = h("span", { class: "unit" });
  const value = h("span", { class: "value" }, number.element, " ", unit);
  const moved = boxed("movement");
  const limit = limitPlace();
  const remark = h("p", { class: "remark", hidden: true });
  const measured = cell.kind === undefined ? undefined : measuredPlace(desk, cell, id);
  const checks = cell.checks ? checkLines(desk, standings, cell, watches, gathering) : undefined;
  const element = h(
    "div",
    { class: `line ${cell.kind === undefined ? "of-parts" : "of-cell"}`, id, "data-key": cell.key },
    toggle.button,
    h("span", { class: "name" }, cell.label),
    cell.symbol ? symbol(cell.symbol) : h("span", { class: "symbol" }),
    value,
    moved.element,
    limit.element,
    remark,
    measured?.element,
    checks?.element,
    toggle.body,
  );

  const showScalar = (now: unknown): void => {
    const { units, held } = desk.session.state;
    const measured = cell as Measured;
    const shown = written(units, measured, now as number, { steady: true });
    number.show(raised(shown.number));
    setText(unit, shown.unit);
    const before = held.evaluation.get(cell);
    moved.show(typeof before === "number" ? movement(units, measured, now as number, before) : "");
  };

  const refresh = (): void => {
    const now = desk.values.get(cell);
    const refused = isRefusal(now);
    setAttribute(element, "data-state", refused ? (now.root === cell.key ? "refused" : "waiting") : undefined);
    if (refused) {
      number.show("–");
      setText(unit, "");
      moved.show("");
      say(refusedWords(desk, workable, cell, now));
    } else {
      if (cell.kind !== undefined) showScalar(now);
      const outside = outsideRange(cell, desk.values as never);
      say(outside.length > 0 ? [h("span", { class: "outside", "aria-hidden": "true" }, "⟂ "), `Outside range. ${outside.join(" ")}`] : []);
    }
    const tightest: readonly Check[] = cell.checks ? [] : standings.of(cell);
    limit.show(tightest, cell.checks ? [] : standings.held(cell));
    checks?.refresh();
    measured?.refresh();
  };

  let said = "";
  const say = (content: readonly (string | Node)[]): void => {
    const text = content.map((part) => (typeof part === "string" ? part : part.textContent)).join("");
    if (text === said) return;
    said = text;
    remark.replaceChildren(...content);
    setAttribute(remark, "hidden", content.length === 0);
  };

  return { element, watches, refresh };
}

/** The root of a refusal speaks, and offers the way back to where it last had an answer; those that wait name it. */
function refusedWords(desk: Desk, workable: Workable, cell: Cell, refusal: Refusal): readonly (string | Node)[] {
  if (refusal.root !== cell.key) return ["waits for ", lineLink(desk, nodeOf(desk.graph, refusal.root))];
  const { units } = desk.session.state;
  const words = refusalWords(refusal.words, units);
  const why = [
    h("strong", {}, refusal.fault ? "This line is at fault. " : "No answer. "),
    `${words.charAt(0).toUpperCase()}${words.slice(1)}.`.replace(/\.\.$/, "."),
  ];
  const last = workable.of(cell.key);
  const input = last && nodeOf(desk.graph, last.key);
  if (!last || !input || input.type === "cell") return why;
  const value = input.type === "quantity" ? writtenInput(units, input, last.value as number).text : input.type === "choice" ? (input.options[last.value as string] ?? "") : "the rows before";
  const back = h("button", { type: "button", class: "quiet", onclick: () => desk.session.set(last.key, last.value) }, `Back to ${inSentence(input.label)} ${value}`);
  return [...why, " ", back];
}
