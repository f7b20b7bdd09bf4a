import { type Group, px } from "./plate";

/** Distance between the lines of a label, in CSS pixels. */
export const leading = 17;

interface Spot {
  readonly x: number;
  /** Height of the base line. */
  readonly y: number;
  readonly anchor?: "start" | "middle" | "end";
  /** Classes of figures.css: "mute", "strong", "past", … */
  readonly look?: string;
}

/** A label; a halo of the page's colour keeps it readable across lines. */
export function write(group: Group, text: string, { x, y, anchor = "start", look }: Spot): void {
  // The commonest mark by far, and so without a selection around it.
  const ground = group.node()!;
  const label = ground.ownerDocument.createElementNS(ground.namespaceURI, "text");
  label.setAttribute("class", look === undefined ? "label" : `label ${look}`);
  label.setAttribute("x", String(px(x)));
  label.setAttribute("y", String(px(y)));
  label.setAttribute("text-anchor", anchor);
  label.textContent = text;
  ground.append(label);
}

/** A label of several lines, the first at y; its looks by line where an array is given. */
export function writeLines(
  group: Group,
  lines: readonly string[],
  { look, ...spot }: Omit<Spot, "look"> & { readonly look?: readonly string[] },
): void {
  lines.forEach((line, i) => {
    const own = look?.[Math.min(i, look.length - 1)];
    write(group, line, { ...spot, y: spot.y + i * leading, ...(own !== undefined && { look: own }) });
  });
}
