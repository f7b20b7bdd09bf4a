import { type Evaluation, isRefusal, type References } from "../../lib/graph";
import type { Figure, FigureFrame } from "../../worksheets/sheet";

/** Present values of what a figure reads, by name. */
export function valuesOf(values: Pick<Evaluation, "get">, from: References): Readonly<Record<string, unknown>> {
  return Object.fromEntries(Object.entries(from).map(([name, reference]) => [name, values.get(reference)]));
}

/** Brings what follows the hand up to date on a drawing. */
export function followed(figure: Figure, values: Pick<Evaluation, "get">, picture: SVGSVGElement): void {
  if (!figure.follow) return;
  const now = valuesOf(values, figure.follow.from);
  figure.follow.move(picture, Object.values(now).some(isRefusal) ? undefined : (now as never));
}

/**
 * A drawing of present values, none of which is refused, with what follows the hand where it belongs.
 *
 * @param own the figure's own values, as valuesOf or valuesAcross gives them
 * @param values all values, for what follows
 */
export function completeDrawing(
  figure: Figure,
  own: Readonly<Record<string, unknown>>,
  values: Pick<Evaluation, "get">,
  frame: FigureFrame,
): SVGSVGElement {
  const picture = figure.draw(own as never, frame);
  followed(figure, values, picture);
  return picture;
}
