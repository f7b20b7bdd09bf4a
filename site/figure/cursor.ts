import type { FigureTable } from "../../worksheets/sheet";
import { h, s, setAttribute } from "../dom";
import { rowWords } from "./row-words";

/** Walks a drawing's marks by keys, and follows the pointer; the present mark is ringed and read out below. */
export interface Cursor {
  /** What can be focused; the drawing stands in it. */
  readonly place: HTMLElement;
  /** The line that reads the present mark. */
  readonly line: HTMLElement;
  /** To be called after each drawing: the present mark is ringed and read again. */
  drawn(): void;
  /** Reads a row, as if its mark were pointed at. */
  read(row: number): void;
}

const steps: Readonly<Record<string, (at: number, last: number) => number>> = {
  ArrowRight: (at, last) => Math.min(at + 1, last),
  ArrowDown: (at, last) => Math.min(at + 1, last),
  ArrowLeft: (at) => Math.max(at - 1, 0),
  ArrowUp: (at) => Math.max(at - 1, 0),
  Home: () => 0,
  End: (_, last) => last,
};

/**
 * @param key of the figure, for names in the page
 * @param title of the figure
 * @param table the figure's present numbers; asked for only while a mark is read
 */
export function createCursor({ key, title, table }: { readonly key: string; readonly title: string; readonly table: () => FigureTable }): Cursor {
  const line = h("p", { class: "mark-line", id: `mark-${key}`, "aria-live": "polite" });
  const place = h("div", {
    class: "drawing",
    tabindex: 0,
    role: "application",
    "aria-roledescription": "drawing",
    "aria-label": `${title}: marks`,
    "aria-describedby": line.id,
    "aria-keyshortcuts": "ArrowRight ArrowLeft Home End Escape",
  });
  let present: number | undefined;

  const marks = (row: number) => [...place.querySelectorAll<SVGGraphicsElement>(`svg > g:not(.cursor) [data-row="${row}"]`)];
  const rows = (): readonly number[] => {
    const found = new Set([...place.querySelectorAll("[data-row]")].map((mark) => Number(mark.getAttribute("data-row"))));
    return [...found].sort((a, b) => a - b);
  };

  const show = (): void => {
    place.querySelector(".cursor")?.remove();
    const words = present === undefined ? undefined : rowWords(table(), present);
    if (present === undefined || !words) {
      // What is below must not move when the mark is left: a press on it would miss.
      if (line.firstChild) line.style.minHeight = `${line.offsetHeight}px`;
      line.replaceChildren(window.matchMedia("(pointer: coarse)").matches ? "Touch a mark to read it." : "Point at a mark, or step through them with the arrow keys.");
      line.classList.add("is-hint");
      return;
    }
    line.classList.remove("is-hint");
    line.replaceChildren(h("strong", {}, words.name), ` ${words.value}`);
    ringMarks(place.querySelector("svg > g")!, marks(present));
  };
  const go = (row: number | undefined): void => {
    if (row === present) return;
    present = row;
    show();
  };

  place.addEventListener("keydown", (event) => {
    if (event.ctrlKey || event.metaKey || event.altKey) return;
    if (event.key === "Escape" && present !== undefined) {
      event.preventDefault();
      event.stopPropagation();
      return go(undefined);
    }
    const step = steps[event.key];
    const all = rows();
    if (!step || all.length === 0) return;
    event.preventDefault();
    const last = all.length - 1;
    // From no mark, a step forwards comes to the first, and a step back to the last.
    const at = present === undefined ? (event.key === "ArrowLeft" || event.key === "ArrowUp" ? last + 1 : -1) : all.indexOf(present);
    go(all[step(at, last)]);
  });
  const pointed = ({ target }: Event): void => {
    const row = target instanceof Element ? target.closest("[data-row]")?.getAttribute("data-row") : undefined;
    if (row !== undefined && row !== null) go(Number(row));
  };
  place.addEventListener("pointermove", pointed);
  place.addEventListener("pointerdown", pointed);
  place.addEventListener("pointerleave", (event) => {
    // A finger that is lifted leaves; what it touched stays to be read.
    if (event.pointerType !== "touch" && document.activeElement !== place) go(undefined);
  });
  place.addEventListener("blur", () => go(undefined));

  return {
    place,
    line,
    read: go,
    drawn: () => {
      if (present === undefined && line.firstChild) return;
      if (present !== undefined && marks(present).length === 0) present = undefined;
      show();
    },
  };
}

/**
 * Rings marks by copies of their outlines, over a halo of the page's colour. Unseen places count where nothing else is;
 * their ring lies below the drawing, so that it crosses no words.
 */
function ringMarks(ground: Element, marks: readonly SVGGraphicsElement[]): void {
  const drawn = marks.filter((mark) => !mark.classList.contains("spot"));
  if (drawn.length > 0) ground.after(outlines(drawn, ["cursor-halo", "cursor-ring"]));
  else ground.before(outlines(marks, ["cursor-ring"]));
}

function outlines(marks: readonly SVGGraphicsElement[], looks: readonly string[]): SVGGElement {
  return s(
    "g",
    { class: "cursor", "aria-hidden": "true" },
    ...looks.flatMap((look) =>
      marks.map((mark) => {
        const copy = mark.cloneNode() as SVGElement;
        copy.removeAttribute("data-row");
        setAttribute(copy, "class", look);
        return copy;
      }),
    ),
  );
}
