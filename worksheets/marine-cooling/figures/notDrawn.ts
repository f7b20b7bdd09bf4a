import { leading, plate, wrapped, writeLines } from "../../drawing";

/** In place of a drawing: why there is none. */
export function notDrawn(message: string, width: number): SVGSVGElement {
  const lines = wrapped(message, width - 4);
  const { svg, ground } = plate(width, 16 + lines.length * leading + 8);
  writeLines(ground, ["Not drawn:", ...lines], { x: 2, y: 16, look: ["band", "mute"] });
  return svg;
}
