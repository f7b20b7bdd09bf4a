import { create, type Selection } from "d3";

/** Where marks are drawn. */
export type Group = Selection<SVGGElement, undefined, null, undefined>;

/** Widths below this have labels stacked instead of side by side, in CSS pixels. */
export const narrow = 480;

/**
 * A fresh sheet to draw on, in CSS pixels, so that a 13 px text is 13 px; its looks come from figures.css.
 *
 * @param width width in CSS pixels
 * @param height height in CSS pixels
 */
export function plate(width: number, height: number): Plate {
  const svg = create("svg").attr("class", "plate").attr("role", "img");
  return {
    svg: resized(svg.node()!, width, height),
    ground: svg.append("g"),
    over: (name) => svg.append("g").attr("class", name),
  };
}

export interface Plate {
  readonly svg: SVGSVGElement;
  /** Where most is drawn. */
  readonly ground: Group;
  /** Another group over what there is, by its class; "follows" for what moves with the hand on a drawing that is made at rest. */
  over(name: string): Group;
}

/** The same sheet in another size, where the height follows from what was drawn. */
export function resized(svg: SVGSVGElement, width: number, height: number): SVGSVGElement {
  const whole = Math.ceil(height);
  svg.setAttribute("viewBox", `0 0 ${width} ${whole}`);
  svg.setAttribute("width", String(width));
  svg.setAttribute("height", String(whole));
  return svg;
}

/** A coordinate as it stands in a path: a tenth of a pixel is finer than any screen or press. */
export function px(value: number): number {
  return Math.round(value * 100) / 100;
}
