import { type Cell, type Limit, marginShare, type Node, Refusal } from "../../lib/graph";
import { type KindName, unitsOf } from "../../lib/quantity";
import { h, setAttribute, setText, symbol, withSubscripts } from "../dom";
import { marginWords } from "../mark";
import { unitSymbol, written, writtenInput } from "../state";
import { explanationOf } from "../trace";
import { type Desk, nodeOf, operandKeys } from "./desk";
import { lineLink } from "./link";
import { valueWords } from "./value-words";

/** What stands behind a line, under its formula: what goes into it, where it comes from, what it feeds. */
export interface How {
  readonly element: HTMLElement;
  refresh(): void;
}

/** Built when it is first opened. */
export function howOf(desk: Desk, node: Node): How {
  const element = h("div", { class: "behind" });
  const refreshers: (() => void)[] = [];
  if (node.type === "cell") {
    const where = whereOf(desk, node);
    if (where) {
      element.append(where.element);
      refreshers.push(where.refresh);
    }
  }
  element.append(factsOf(desk, node, refreshers));
  const refresh = (): void => {
    for (const each of refreshers) each();
  };
  refresh();
  return { element, refresh };
}

function whereOf(desk: Desk, cell: Cell): How | undefined {
  const nodes = [...new Set(Object.values(cell.from).map(({ key }) => key))]
    .map((key) => nodeOf(desk.graph, key))
    .filter((node) => node.type !== "cell" || node.kind !== undefined);
  if (nodes.length === 0) return undefined;
  const rows = nodes.map((node) => {
    const value = h("td", { class: "where-value" });
    const sign = node.type !== "choice" && node.type !== "table" && node.symbol ? symbol(node.symbol) : h("span");
    return { node, value, row: h("tr", {}, h("td", {}, sign), value, h("th", { scope: "row" }, lineLink(desk, node))) };
  });
  return {
    element: h("table", { class: "where" }, h("caption", {}, "where"), h("tbody", {}, ...rows.map(({ row }) => row))),
    refresh: () => {
      for (const { node, value } of rows) setText(value, valueWords(desk, node));
    },
  };
}

function factsOf(desk: Desk, node: Node, refreshers: (() => void)[]): HTMLElement {
  const facts = h("dl", { class: "facts" });
  const fact = (term: string, ...content: readonly (Node_ | string)[]): void => {
    facts.append(h("dt", {}, term), h("dd", {}, ...content));
  };
  if (node.type === "cell") {
    for (const limit of limitsOf(desk, node)) {
      const [bound, room] = [h("span"), h("span")];
      refreshers.push(() => {
        setText(bound, limit.bound());
        setText(room, limit.room());
      });
      fact(limit.term, bound, ...limit.from, room);
    }
    const { source, assumptions = [] } = explanationOf(node);
    fact("source", source);
    if (assumptions.length > 0) fact("assumes", h("ul", {}, ...assumptions.map((text) => h("li", {}, ...withSubscripts(text)))));
    for (const { note } of node.validity ?? []) fact("trusted", ...withSubscripts(note));
    const fedBy = [...new Set(operandKeys(node))].map((key) => nodeOf(desk.graph, key));
    if (fedBy.length > 0) fact("fed by", ...links(desk, fedBy));
  } else {
    if (node.note) fact("note", ...withSubscripts(node.note));
    if (node.type === "quantity") {
      const span = h("span");
      refreshers.push(() => {
        const { units } = desk.session.state;
        setText(span, node.span.map((end) => writtenInput(units, node, end).text).join(" to "));
      });
      fact("takes", span);
    }
  }
  const users = desk.users.get(node.key) ?? [];
  if (users.length > 0) fact("feeds", ...links(desk, users));
  if (node.type !== "choice" && node.type !== "table" && node.kind !== undefined && unitsOf(node.kind).length > 1) {
    const list = unitList(desk, { ...node, kind: node.kind });
    refreshers.push(list.refresh);
    fact("read in", list.element);
  }
  return facts;
}

type Node_ = globalThis.Node;

function links(desk: Desk, nodes: readonly Node[]): readonly (Node_ | string)[] {
  return nodes.flatMap((node, i) => (i === 0 ? [lineLink(desk, node)] : [", ", lineLink(desk, node)]));
}

function limitsOf(desk: Desk, cell: Cell) {
  const boundOf = ({ bound }: Limit) => (typeof bound === "number" ? bound : desk.values.get(bound));
  return cell.limits.map((limit) => ({
    term: limit.side === "most" ? "at most" : "at least",
    from: [
      ` for ${limit.component}`,
      ...(typeof limit.bound === "number" ? [] : [", from ", lineLink(desk, nodeOf(desk.graph, limit.bound.key))]),
      ...(limit.source ? [` (${limit.source})`] : []),
    ],
    bound: (): string => {
      const bound = boundOf(limit);
      if (bound instanceof Refusal) return "no value";
      return written(desk.session.state.units, { ...cell, kind: cell.kind! }, bound).text;
    },
    room: (): string => {
      const [bound, value] = [boundOf(limit), desk.values.get(cell)];
      if (bound instanceof Refusal || value instanceof Refusal) return "";
      return `; ${marginWords(marginShare({ kind: cell.kind!, side: limit.side, value: value as number, bound }))}`;
    },
  }));
}

function unitList(desk: Desk, node: Extract<Node, { kind?: unknown }> & { kind: KindName }): How {
  const { session } = desk;
  const options = unitsOf(node.kind).map((unit) => h("option", { value: unit.symbol }, unit.written || "plain number"));
  const list = h("select", { "aria-label": `Unit of ${node.label}`, onchange: () => choose() }, ...options);
  const choose = (): void => {
    const { units } = session.state;
    session.choose({ ...units, own: { ...units.own, [node.key]: list.value } });
  };
  return {
    element: list,
    refresh: () => {
      const symbolNow = unitSymbol(session.state.units, node);
      if (list.value !== symbolNow) list.value = symbolNow;
      setAttribute(list, "data-key", node.key);
    },
  };
}
