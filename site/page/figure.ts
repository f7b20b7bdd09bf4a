import { isRefusal, type QuantityInput } from "../../lib/graph";
import type { Figure, FigureTable } from "../../worksheets/sheet";
import type { createBoard } from "../board";
import { grownText, h, patch, s, setAttribute, setText } from "../dom";
import {
  completeDrawing,
  createCursor,
  csvFile,
  csvOf,
  followed,
  numbersTable,
  raster,
  saveLine,
  standalone,
  valuesAcross,
} from "../figure";
import { type Patience, whenIdle } from "../runtime";
import { figureUnits } from "../state";
import { contained } from "./crash";
import { type Desk, nodeOf, type Part } from "./desk";
import { lineLink } from "./link";
import type { Watch } from "./nearness";
import { whenAtRest } from "./rest";
import { settingMarks } from "./setting-marks";

/** Figures start to be drawn this far below the screen. */
const ahead = "200px 0px";
/** Longest wait of a figure for the time that a frame leaves, while the hand moves. */
const patience: Patience = { timeout: 50, blind: 0 };
/** Width of a drawing in a file, whatever the screen's is, in CSS pixels. */
const fileWidth = 760;

/**
 * A figure in its place. It is drawn anew whenever one of its values changed, while it is on the screen: under a moving hand
 * once for every frame. Off the screen it waits until it comes near. One that needs more than a frame is drawn anew when the
 * hand rests, and only what follows the hand moves until then.
 */
export function figurePart(desk: Desk, watch: Watch, figure: Figure, boardOf?: typeof createBoard): Part {
  const cursor = createCursor({ key: figure.key, title: figure.title, table: () => table() });
  const { place } = cursor;
  const redraw = (): void => {
    stale = true;
    drawWhenNear();
  };
  const board = boardOf?.(desk, { board: figure.board!, key: figure.key, place, redraw, read: cursor.read });
  const marks = settingMarks(desk, (key) => nodeOf(desk.graph, key) as QuantityInput, cursor.read);
  const drawing = h("div", { class: "drawing-place" }, place, marks.element);
  const waiting = h("p", { class: "remark", hidden: true });
  const working = h("p", { class: "working", role: "status" });
  const described = grownText("described");
  const numbers = h("details", { class: "numbers" }, h("summary", {}, "Numbers"));
  const numbersPlace = h("div", { class: "wide", tabindex: 0, role: "region", "aria-label": `${figure.title}: numbers` });
  numbers.append(numbersPlace);
  const saves = saveLine(desk.session, figure.title, {
    SVG: () => new Blob([file()], { type: "image/svg+xml" }),
    PNG: () => raster(file()),
    CSV: () => csvFile(csvOf(table())),
  });
  const element = h(
    "figure",
    { class: "figure" },
    board?.tools,
    drawing,
    working,
    waiting,
    board?.remark,
    cursor.line,
    h("figcaption", {}, h("strong", {}, figure.title), described.element),
    saves,
    numbers,
  );
  let near = false;
  let stale = true;
  let width = 0;

  const values = () => valuesAcross(figure, desk.values, desk.session);
  const inUnits = () => figureUnits(desk.session.state.units);
  const table = (): FigureTable => figure.table(values() as never, inUnits());
  const file = (): string => {
    const [now, units] = [values() as never, inUnits()];
    return standalone(completeDrawing(figure, now, desk.values, { width: fileWidth, units }), {
      title: figure.title,
      description: figure.describe(now, units),
    });
  };

  const draw = contained(`The figure "${figure.title}"`, element, () => {
    stale = false;
    const now = values();
    const refusal = Object.values(now).find(isRefusal);
    const kept = [drawing, cursor.line, saves, numbers, ...(board ? [board.tools, board.remark] : [])];
    for (const part of kept) setAttribute(part, "hidden", refusal !== undefined);
    setAttribute(waiting, "hidden", refusal === undefined);
    if (refusal) {
      const root = desk.graph.position.has(refusal.root) ? lineLink(desk, nodeOf(desk.graph, refusal.root)) : "a value";
      waiting.replaceChildren("Not drawn: waits for ", root, ".");
      described.show("");
      return;
    }
    const units = inUnits();
    const words = figure.describe(now as never, units);
    const picture = completeDrawing(figure, now, desk.values, { width, units, ...(board && { board: board.view(now, width) }) });
    label(picture, figure, words);
    const shown = into(board?.stage ?? place, picture, figure);
    board?.drawn(now);
    marks.drawn(shown);
    described.show(words);
    cursor.drawn();
    if (numbers.open) list();
  });

  const list = (): void => {
    if (!Object.values(values()).some(isRefusal)) numbersPlace.replaceChildren(numbersTable(figure.title, table()));
  };
  numbers.addEventListener("toggle", () => numbers.open && list());

  const isSlow = (): boolean => {
    if (typeof figure.atRest !== "function") return figure.atRest ?? false;
    const now = values();
    return !Object.values(now).some(isRefusal) && figure.atRest(now as never);
  };
  const isDue = () => near && stale && width > 0;
  const rest = whenAtRest(
    () => {
      if (isDue()) draw();
    },
    (long) => {
      element.classList.toggle("is-working", long);
      setText(working, long ? "working" : "");
    },
  );
  const drawWhenNear = (): void => {
    if (!isDue()) return;
    // What has no picture yet is not kept waiting for the hand.
    if (!place.firstChild) draw();
    else if (isSlow()) rest.ask();
    else if (desk.session.state.gesture) drawSoon();
    else draw();
  };
  let soon = false;
  /** In the time left after this frame, to be seen in the next: the frame itself is for the hand's own numbers. */
  const drawSoon = (): void => {
    if (soon) return;
    soon = true;
    whenIdle(() => {
      soon = false;
      if (isDue()) draw();
    }, patience);
  };
  const follow = (): void => {
    const picture = place.querySelector("svg");
    if (!near || !picture) return;
    followed(figure, desk.values, picture);
    marks.refresh();
  };
  watch(element, ahead, (isNear) => {
    near = isNear;
    drawWhenNear();
  });
  new ResizeObserver(([entry]) => {
    const next = Math.floor(entry!.contentRect.width);
    if (next === width || next === 0) return;
    width = next;
    stale = true;
    drawWhenNear();
  }).observe(element);

  return {
    element,
    watches: watchesOf(figure),
    everyFrame: true,
    refresh: () => {
      follow();
      redraw();
    },
  };
}

/** Keys of what a figure is drawn from, and of what moves on it. */
export function watchesOf({ from, follow }: Figure): readonly string[] {
  return Object.values({ ...from, ...follow?.from }).map(({ key }) => key);
}

/** Title and description within the drawing, for those who come upon it alone. */
function label(picture: SVGSVGElement, figure: Figure, words: string): void {
  const [titleId, wordsId] = [`title-${figure.key}`, `desc-${figure.key}`];
  picture.prepend(s("title", { id: titleId }, figure.title), s("desc", { id: wordsId }, words));
  setAttribute(picture, "role", "img");
  setAttribute(picture, "aria-labelledby", titleId);
  setAttribute(picture, "aria-describedby", wordsId);
}

/**
 * Puts a drawing on the page, by changing the one that is there where it differs. What moves on a picture knows its own, so
 * that such a picture takes the place of the one before.
 *
 * @returns the one on the page
 */
function into(place: Element, picture: SVGSVGElement, { follow }: Figure): SVGSVGElement {
  const present = place.firstElementChild;
  if (!(present instanceof SVGSVGElement) || follow) {
    place.replaceChildren(picture);
    return picture;
  }
  patch(present, picture);
  return present;
}
