import type { Node } from "../../lib/graph";
import { textWidth, wrapped } from "../../worksheets/drawing/textWidth";
import { h, s, setAttribute, setText } from "../dom";
import { type Desk, nodeOf } from "./desk";
import { valueWords } from "./value-words";

/** More neighbours than this on a side are counted, not drawn. */
const most = 8;
const size = 13;
const lineHeight = 16;
const between = 14;

interface Neighbourhood {
  readonly node: Node;
  readonly fedBy: readonly Node[];
  readonly feeds: readonly Node[];
}

interface Box {
  readonly node: Node;
  readonly lines: readonly string[];
  readonly height: number;
  /** Width that it has, in CSS pixels. */
  readonly column: number;
}

/** A drawing of a node between what feeds it and what it feeds; names lead there. */
export function traceMap(desk: Desk, walk: (key: string) => void) {
  const place = h("div", { class: "trace-map" });
  let values: (() => void)[] = [];
  let shown: Neighbourhood | undefined;
  let width = 0;

  const draw = ({ node, fedBy, feeds }: Neighbourhood): void => {
    const column = Math.min(216, Math.floor((width - 2 * (width < 480 ? 16 : 36)) / 3));
    if (fedBy.length + feeds.length === 0 || column < 60) {
      place.replaceChildren();
      return;
    }
    const [left, right] = [fedBy, feeds].map((nodes) => nodes.slice(0, most).map((each) => boxOf(each, column)));
    const own = boxOf(node, column, true);
    const height = Math.max(stackHeight(left!, fedBy.length), stackHeight(right!, feeds.length), own.height) + 24;
    const total = Math.min(width, 3 * column + 2 * 96);
    const centre = total / 2;
    values = [];
    place.replaceChildren(
      s(
        "svg",
        { width: total, height, viewBox: `0 0 ${total} ${height}`, role: "group", "aria-label": `${node.label}: what feeds it, and what it feeds` },
        s("text", { class: "map-head", x: column, y: 12, "text-anchor": "end" }, fedBy.length > 0 ? "fed by" : ""),
        s("text", { class: "map-head", x: total - column, y: 12 }, feeds.length > 0 ? "feeds" : ""),
        ...stack(left!, fedBy.length, "end"),
        ...ownMark(),
        ...stack(right!, feeds.length, "start"),
      ),
    );

    function ownMark(): SVGElement[] {
      const top = 24 + (height - 24 - own.height) / 2;
      return [entry(own, centre, top, "middle", undefined)];
    }

    /** Neighbours on the left end at their column's edge, those on the right begin there: so the lines between are even. */
    function stack(boxes: readonly Box[], count: number, anchor: "end" | "start"): SVGElement[] {
      let top = 24 + (height - 24 - stackHeight(boxes, count)) / 2;
      const middle = 24 + (height - 24) / 2 - between / 2 + 2;
      const x = anchor === "end" ? column : total - column;
      const reach = Math.max(...own.lines.map((text) => textWidth(text, { size, bold: true })), 48) / 2 + 8;
      const marks = boxes.flatMap((box) => {
        const y = top + box.height / 2 - between / 2 + 2;
        const [from, to] = anchor === "end" ? [x + 8, centre - reach] : [centre + reach, x - 8];
        const [fromY, toY] = anchor === "end" ? [y, middle] : [middle, y];
        const bend = (from + to) / 2;
        const link = entry(box, x, top, anchor, () => walk(box.node.key));
        top += box.height;
        return to > from ? [s("path", { class: "map-edge", d: `M${from} ${fromY}C${bend} ${fromY} ${bend} ${toY} ${to} ${toY}` }), link] : [link];
      });
      if (count <= boxes.length) return marks;
      return [...marks, s("text", { class: "map-more", x, y: top + 12, "text-anchor": anchor }, `and ${count - boxes.length} more, below`)];
    }
  };

  const entry = (box: Box, x: number, top: number, anchor: "start" | "middle" | "end", go: (() => void) | undefined): SVGElement => {
    const value = s("text", { class: "map-value", x, y: top + 12 + box.lines.length * lineHeight, "text-anchor": anchor });
    values.push(() => setText(value, valueFor(box)));
    const names = box.lines.map((text, i) => s("text", { x, y: top + 12 + i * lineHeight, "text-anchor": anchor }, `${text} `));
    if (!go) return s("g", { class: "map-own" }, ...names, value);
    const reach = Math.max(...box.lines.map((text) => textWidth(text, { size })), 44);
    const left = anchor === "start" ? x - 4 : x - reach - 4;
    const link = s(
      "a",
      { class: "map-link", href: `#line-${box.node.key}` },
      s("rect", { x: left, y: top - 3, width: reach + 8, height: box.height - 4, rx: 2 }),
      ...names,
      value,
    );
    link.addEventListener("click", (event) => {
      const { ctrlKey, metaKey, shiftKey } = event as MouseEvent;
      if (ctrlKey || metaKey || shiftKey) return;
      event.preventDefault();
      go();
    });
    return link;
  };

  /** A choice's words may be longer than the column is wide. */
  const valueFor = ({ node, column }: Box): string => {
    const words = valueWords(desk, node);
    return node.type === "choice" && textWidth(words, { size, bold: true }) > column ? shortened(words, column, true) : words;
  };

  const refresh = (): void => {
    for (const each of values) each();
  };
  const redraw = (): void => {
    if (!shown || width === 0) return;
    draw(shown);
    refresh();
  };
  new ResizeObserver(([seen]) => {
    const next = Math.floor(seen!.contentRect.width);
    if (next === width || next === 0) return;
    width = next;
    redraw();
  }).observe(place);

  return {
    element: place,
    refresh,
    /** @param fedBy and @param feeds are keys, in the order in which they are drawn */
    show: (node: Node, fedBy: readonly string[], feeds: readonly string[]): void => {
      const [before, after] = [fedBy, feeds].map((keys) => keys.map((key) => nodeOf(desk.graph, key)));
      shown = { node, fedBy: before!, feeds: after! };
      setAttribute(place, "data-key", node.key);
      redraw();
    },
  };
}

function boxOf(node: Node, column: number, bold = false): Box {
  const all = wrapped(node.label, column, { size, bold });
  const lines = all.length > 3 ? [...all.slice(0, 2), shortened(all[2]!, column, bold)] : all;
  return { node, lines, height: (lines.length + 1) * lineHeight + between, column };
}

/** As many words of a text as fit into a column with a sign that more follow. */
function shortened(text: string, column: number, bold: boolean): string {
  const words = text.split(" ");
  while (words.length > 1 && textWidth(`${words.join(" ")} …`, { size, bold }) > column) words.pop();
  return `${words.join(" ")} …`;
}

function stackHeight(boxes: readonly Box[], count: number): number {
  return boxes.reduce((sum, { height }) => sum + height, 0) + (count > boxes.length ? lineHeight : 0);
}
