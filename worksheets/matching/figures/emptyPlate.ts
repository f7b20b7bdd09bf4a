import { leading, plate, px, spot, wrapped, writeLines } from "../../drawing";

/** Room around the words. */
const margin = 18;

/**
 * What stands in the place of a drawing where there is nothing to draw: words in a frame, and a place to point at for each row of
 * the numbers.
 *
 * @param words what is missing, and why
 * @param rows of the figure's numbers
 * @param width of the figure, in CSS pixels
 */
export function emptyPlate(words: string, rows: number, width: number): SVGSVGElement {
  const lines = wrapped(words, width - 2 * margin - 2);
  const height = 2 * margin + lines.length * leading + 4;
  const { svg, ground } = plate(width, height);
  const column = width / Math.max(1, rows);
  for (let row = 0; row < rows; row += 1) spot(ground, row, { x: row * column, y: 0, width: column, height });
  ground
    .append("path")
    .attr("class", "axis")
    .attr("d", `M1,1H${px(width - 1)}V${px(height - 1)}H1Z`);
  writeLines(ground, lines, { x: margin, y: margin + 14, look: ["mute"] });
  return svg;
}
