import { isRefusal } from "../../lib/graph";
import type { Figure } from "../../worksheets/sheet";
import { h, s, setAttribute, setText } from "../dom";
import { figureUnits } from "../state";
import { type Desk, nodeOf, type Part } from "./desk";
import { lineLink } from "./link";

/** Figures start to be drawn this far below the screen. */
const ahead = "200px 0px";

/**
 * A figure in its place. It is drawn anew in the frame in which one of its values changed, while it is on the screen;
 * off the screen it waits until it comes near.
 */
export function figurePart(desk: Desk, figure: Figure): Part {
  const place = h("div", { class: "drawing" });
  const described = h("p", { class: "described" });
  const numbers = h("details", { class: "numbers" }, h("summary", {}, "Numbers"));
  const numbersPlace = h("div", { class: "wide", tabindex: 0, role: "region", "aria-label": `${figure.title}: numbers` });
  numbers.append(numbersPlace);
  const element = h(
    "figure",
    { class: "figure", id: `figure-${figure.key}` },
    place,
    h("figcaption", {}, h("strong", {}, figure.title), described),
    numbers,
  );
  let near = false;
  let stale = true;
  let width = 0;

  const values = (): Record<string, unknown> =>
    Object.fromEntries(Object.entries(figure.from).map(([name, reference]) => [name, desk.values.get(reference)]));

  const draw = (): void => {
    stale = false;
    const now = values();
    const refusal = Object.values(now).find(isRefusal);
    if (refusal) {
      const root = desk.graph.position.has(refusal.root) ? lineLink(desk, nodeOf(desk.graph, refusal.root)) : "a value";
      place.replaceChildren(h("p", { class: "remark" }, "Not drawn: waits for ", root, "."));
      setText(described, "");
      return;
    }
    const units = figureUnits(desk.session.state.units);
    const words = figure.describe(now as never, units);
    const picture = figure.draw(now as never, { width, units });
    setAttribute(picture, "role", "img");
    label(picture, figure, words);
    place.replaceChildren(picture);
    setText(described, words);
    if (numbers.open) list();
  };

  const list = (): void => {
    const now = values();
    numbersPlace.replaceChildren();
    if (Object.values(now).some(isRefusal)) return;
    const { columns, rows } = figure.table(now as never, figureUnits(desk.session.state.units));
    numbersPlace.replaceChildren(
      h(
        "table",
        { class: "figures" },
        h("caption", { class: "aside" }, `${figure.title}: numbers`),
        h("thead", {}, h("tr", {}, ...columns.map((column) => h("th", { scope: "col" }, column)))),
        h(
          "tbody",
          {},
          ...rows.map((row) => h("tr", {}, ...row.map((entry) => h("td", { "data-type": typeof entry }, cellText(entry))))),
        ),
      ),
    );
  };
  numbers.addEventListener("toggle", () => numbers.open && list());

  const drawWhenNear = (): void => {
    if (near && stale && width > 0) draw();
  };
  new IntersectionObserver(
    ([entry]) => {
      near = entry!.isIntersecting;
      drawWhenNear();
    },
    { rootMargin: ahead },
  ).observe(element);
  new ResizeObserver(([entry]) => {
    const next = Math.floor(entry!.contentRect.width);
    if (next === width || next === 0) return;
    width = next;
    stale = true;
    drawWhenNear();
  }).observe(place);

  window.addEventListener("beforeprint", () => {
    if (stale && width > 0) draw();
  });

  return {
    element,
    watches: Object.values(figure.from).map(({ key }) => key),
    refresh: () => {
      stale = true;
      drawWhenNear();
    },
  };
}

/** Title and description within the drawing, for those who come upon it alone. */
function label(picture: SVGSVGElement, figure: Figure, words: string): void {
  for (const old of picture.querySelectorAll(":scope > title, :scope > desc")) old.remove();
  const [titleId, wordsId] = [`title-${figure.key}`, `desc-${figure.key}`];
  picture.prepend(s("title", { id: titleId }, figure.title), s("desc", { id: wordsId }, words));
  setAttribute(picture, "aria-labelledby", titleId);
  setAttribute(picture, "aria-describedby", wordsId);
}

function cellText(entry: string | number): string {
  return typeof entry === "string" ? entry : String(Number(entry.toPrecision(6))).replace("-", "−");
}
