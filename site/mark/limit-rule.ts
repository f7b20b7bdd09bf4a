import type { Standing } from "../../lib/graph";
import { h, s, setAttribute } from "../dom";

/** Width of the ruler, and where on it the limit stands, in CSS pixels. */
const width = 120;
const limitAt = 100;
const left = 4;
const middle = 9;

export interface LimitRule {
  readonly element: HTMLElement;
  /** @param margin room left as a share of the bound @param held the reference's, if it has one */
  show(margin: number, standing: Standing, held: number | undefined): void;
}

/**
 * A small ruler on which the limit is always the double tick at the same place: the filled mark is the value now, the
 * hollow ring the value held. The left end is all of the room, so one tenth of the ruler is a tenth of the bound.
 */
export function limitRule(): LimitRule {
  const ticks = [0, 0.25, 0.5, 0.75].map((share) => tick(place(share), 3));
  const dot = s("circle", { class: "now", cy: middle, r: 4 });
  const square = s("rect", { class: "now", y: middle - 4, width: 8, height: 8 });
  const half = s("path", { class: "now-half" });
  const outline = s("rect", { class: "now-outline", y: middle - 4, width: 8, height: 8 });
  const ring = s("circle", { class: "ring", cy: middle, r: 4.5 });
  const ruler = s(
    "svg",
    { class: "rule", width, height: 18, viewBox: `0 0 ${width} 18`, "aria-hidden": "true" },
    s("path", { class: "beyond", d: `M${limitAt} ${middle}H${width - 2}` }),
    s("path", { class: "scale", d: `M${left} ${middle}H${limitAt}` }),
    ...ticks,
    s("path", { class: "limit-tick", d: `M${limitAt - 1.5} 2V16M${limitAt + 1.5} 2V16` }),
    ring,
    dot,
    square,
    outline,
    half,
  );
  // Places are written into the shapes: moved by transforms they would have the browser sort its layers in every frame.
  const moveTo: Readonly<Record<Standing, (x: number) => void>> = {
    inside: (x) => setAttribute(dot, "cx", x),
    near: (x) => {
      setAttribute(outline, "x", x - 4);
      setAttribute(half, "d", `M${x - 4} ${middle - 4}h8v8z`);
    },
    past: (x) => setAttribute(square, "x", x - 4),
  };
  return {
    element: h("span", { class: "rule-place" }, ruler),
    show: (margin, standing, held) => {
      setAttribute(ruler, "data-standing", standing);
      moveTo[standing](along(margin));
      setAttribute(ring, "visibility", held === undefined ? "hidden" : "visible");
      if (held !== undefined) setAttribute(ring, "cx", along(held));
    },
  };
}

function along(margin: number): number {
  const reached = Math.min(1.14, Math.max(0, 1 - margin));
  return Math.round(place(reached) * 2) / 2;
}

function place(share: number): number {
  return left + share * (limitAt - left);
}

function tick(x: number, half: number): SVGPathElement {
  return s("path", { class: "tick", d: `M${x} ${middle - half}V${middle + half}` });
}
