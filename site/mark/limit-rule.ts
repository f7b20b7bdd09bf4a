import type { Standing } from "../../lib/graph";
import { h, s, setAttribute } from "../dom";
import { pointAt } from "./point";

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
  const dot = s("polyline", { class: "now now-dot" });
  const square = s("polygon", { class: "now now-square" });
  const half = s("polygon", { class: "now-half" });
  const outline = s("polygon", { class: "now-outline" });
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
  // Shapes are moved by their points: a transform would have the browser sort its layers in every frame, and every other
  // attribute of place is a style to it, which it would work out anew.
  const moveTo: Readonly<Record<Standing, (x: number) => void>> = {
    inside: (x) => setAttribute(dot, "points", pointAt(x, middle)),
    near: (x) => {
      setAttribute(outline, "points", squareAt(x));
      setAttribute(half, "points", `${x - 4},${middle - 4} ${x + 4},${middle - 4} ${x + 4},${middle + 4}`);
    },
    past: (x) => setAttribute(square, "points", squareAt(x)),
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

function squareAt(x: number): string {
  const [left, right, top, bottom] = [x - 4, x + 4, middle - 4, middle + 4];
  return `${left},${top} ${right},${top} ${right},${bottom} ${left},${bottom}`;
}

function place(share: number): number {
  return left + share * (limitAt - left);
}

function tick(x: number, half: number): SVGPathElement {
  return s("path", { class: "tick", d: `M${x} ${middle - half}V${middle + half}` });
}
