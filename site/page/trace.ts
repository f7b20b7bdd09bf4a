import { isRefusal, type Node } from "../../lib/graph";
import { h, setAttribute, setChildren, setText, symbol } from "../dom";
import { written } from "../state";
import { back, explanationOf, filledIn, nextStep, type Symbols, symbolsOf, stepped, texQuantity, type Trail } from "../trace";
import { type Desk, nodeOf, operandKeys } from "./desk";
import { type How, howOf } from "./how";
import { lineLink } from "./link";
import { mathPlace } from "./math";
import { traceMap } from "./trace-map";
import { withinTable } from "./trace-within";
import { valueWords } from "./value-words";

/** What stands behind a number, and the way from there through the graph. */
export interface Trace {
  readonly element: HTMLElement;
  /** The line it shows at present. */
  readonly key: string;
  refresh(): void;
  /** Steps to what feeds the line shown ("up") or to what it feeds ("down"). @returns whether there was a step */
  walk(way: "up" | "down"): boolean;
  back(): void;
}

/** Makes the trace of a node. */
export type Tracer = (start: Node, close: () => void) => Trace;

/**
 * @param desk what is on the page
 * @param movedLately whether a line moved with what the hand did last
 */
export function tracerOf(desk: Desk, movedLately: (node: Node) => boolean): Tracer {
  const symbols = symbolsOf(desk.graph);
  return (start, close) => traceOf(desk, { symbols, movedLately }, start, close);
}

interface Tracing {
  readonly symbols: Symbols;
  readonly movedLately: (node: Node) => boolean;
}

/**
 * A card that starts at a node: formula, filled-in line, result, what stands behind it, and its neighbours in the graph,
 * first those that moved lately: the way up leads to what moved the line.
 */
function traceOf(desk: Desk, { symbols, movedLately }: Tracing, start: Node, close: () => void): Trace {
  let trail: Trail = [start.key];
  let how: How | undefined;
  const crumbs = h("ol", { class: "trail" });
  const title = h("div", { class: "trace-title", tabindex: -1 });
  const formula = mathPlace("as-declared");
  const filled = mathPlace("filled-in");
  const kept = h("p", { class: "kept", hidden: true });
  const result = mathPlace("result");
  const body = h("div", { class: "trace-body" });
  const within = withinTable();
  const map = traceMap(desk, (key) => go(stepped(trail, key)));
  const backButton = step("Back", "Backspace", () => go(back(trail)));
  const up = step("To what feeds it", "[", () => walk("up"));
  const down = step("To what it feeds", "]", () => walk("down"));
  const spoken = h("p", { class: "aside", role: "status" });
  const element = h(
    "section",
    { class: "trace" },
    h("div", { class: "trace-head" }, crumbs, h("div", { class: "trace-steps" }, backButton, up, down, step("Close", "Esc", close))),
    title,
    formula.element,
    filled.element,
    result.element,
    kept,
    map.element,
    body,
    spoken,
  );

  const shown = (): Node => nodeOf(desk.graph, trail.at(-1)!);
  const movedFirst = (keys: readonly string[]): readonly string[] => {
    const moved = keys.filter((key) => movedLately(nodeOf(desk.graph, key)));
    return [...moved, ...keys.filter((key) => !moved.includes(key))];
  };
  const fedBy = (node: Node): readonly string[] => (node.type === "cell" ? movedFirst([...new Set(operandKeys(node))]) : []);
  const feeds = (node: Node): readonly string[] => movedFirst((desk.users.get(node.key) ?? []).map(({ key }) => key));

  const walk = (way: "up" | "down"): boolean => {
    const next = nextStep(trail, way === "up" ? fedBy(shown()) : feeds(shown()));
    if (next !== undefined) go(stepped(trail, next));
    return next !== undefined;
  };
  const go = (next: Trail): void => {
    const within = element.contains(document.activeElement);
    trail = next;
    show();
    setText(spoken, `${shown().label}, ${valueWords(desk, shown())}`);
    if (within) (title.offsetHeight > 0 ? title : up).focus({ preventScroll: true });
  };

  const show = (): void => {
    const node = shown();
    setAttribute(element, "aria-label", `Trace of ${node.label}`);
    setAttribute(element, "data-key", node.key);
    setAttribute(element, "data-walked", trail.length > 1);
    crumbs.hidden = trail.length < 2;
    setChildren(crumbs, trail.map((key, i) => crumb(key, i)));
    backButton.hidden = trail.length < 2;
    up.disabled = fedBy(node).length === 0;
    down.disabled = feeds(node).length === 0;
    const place = desk.places.get(node.key);
    setChildren(title, [
      h("span", { class: "letter" }, place?.letter ?? ""),
      lineLink(desk, node),
      node.type === "cell" || node.type === "quantity" ? (node.symbol ? symbol(node.symbol) : h("span")) : h("span"),
    ]);
    formula.show(node.type === "cell" ? explanationOf(node).formula : "", "Formula");
    map.show(node, fedBy(node), feeds(node));
    how = howOf(desk, node);
    body.replaceChildren(within.element, how.element);
    refresh();
  };

  const crumb = (key: string, index: number): HTMLElement => {
    const { label } = nodeOf(desk.graph, key);
    const last = index === trail.length - 1;
    if (last) return h("li", { "aria-current": "step" }, label);
    return h("li", {}, h("button", { type: "button", class: "quiet", onclick: () => go(trail.slice(0, index + 1) as unknown as Trail) }, label));
  };

  const refresh = (): void => {
    const node = shown();
    how?.refresh();
    map.refresh();
    if (node.type !== "cell") {
      for (const line of [filled, result]) line.show("");
      tellKept([]);
      within.show([]);
      return;
    }
    const { units } = desk.session.state;
    const line = filledIn(node, symbols, desk.values, units);
    const left = node.symbol ?? "";
    filled.show(line ? `\\phantom{${line.left || left}} = ${line.right}` : "", "With the present values");
    tellKept(line?.kept ?? []);
    within.show(line?.named ?? []);
    const value = desk.values.get(node);
    const known = node.kind !== undefined && !isRefusal(value) && typeof value === "number";
    result.show(known ? `${line ? `\\phantom{${line.left || left}}` : left} = ${texQuantity(written(units, { ...node, kind: node.kind! }, value as number))}` : "", "Result");
  };

  let told = "";
  /** Says which symbols had to stay, and why. */
  const tellKept = (symbols: readonly string[]): void => {
    if (symbols.join() === told) return;
    told = symbols.join();
    kept.hidden = symbols.length === 0;
    kept.replaceChildren(...symbols.flatMap((tex, i) => [i === 0 ? "" : ", ", symbol(tex)]), symbols.length === 1 ? " stays a symbol" : " stay symbols", ": there is no single value to put there.");
  };

  show();
  return {
    element,
    get key() {
      return trail.at(-1)!;
    },
    refresh,
    walk,
    back: () => {
      if (trail.length > 1) go(back(trail));
    },
  };
}

function step(words: string, key: string, onclick: () => void): HTMLButtonElement {
  return h("button", { type: "button", class: "quiet", onclick }, words, " ", h("kbd", { "aria-hidden": "true" }, key));
}
