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
export function plate(width: number, height: number): { readonly svg: SVGSVGElement; readonly ground: Group } {
  const size = [width, Math.ceil(height)] as const;
  const svg = create("svg")
    .attr("class", "plate")
    .attr("viewBox", `0 0 ${size[0]} ${size[1]}`)
    .attr("width", size[0])
    .attr("height", size[1])
    .attr("role", "img");
  return { svg: svg.node()!, ground: svg.append("g") };
}

/** A coordinate as it stands in a path: a tenth of a pixel is finer than any screen or press. */
export function px(value: number): number {
  return Math.round(value * 100) / 100;
}
