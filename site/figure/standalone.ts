import { h, s, setAttribute } from "../dom";

/** What an element shows that follows from styles; each of them passes on to the elements inside. */
const looks = [
  "fill",
  "fill-opacity",
  "stroke",
  "stroke-width",
  "stroke-dasharray",
  "stroke-linejoin",
  "stroke-linecap",
  "paint-order",
  "shape-rendering",
  "font-family",
  "font-size",
  "font-style",
  "font-weight",
  "font-variant",
] as const;

/** Blank paper around the drawing, in CSS pixels. */
const margin = 12;

/**
 * A drawing as a file that needs nothing beside it: its looks, by day on paper, stand in its own attributes.
 *
 * @param picture a drawing of its own, which is changed
 * @param words title and description for those who come upon it alone
 */
export function standalone(picture: SVGSVGElement, { title, description }: { readonly title: string; readonly description: string }): string {
  // Styles are known in the page alone: the drawing stands there, unseen, while they are read.
  const paper = h("div", { class: "on-paper", hidden: true }, picture);
  document.body.append(paper);
  try {
    for (const unseen of picture.querySelectorAll(".spot, .cursor, title, desc")) unseen.remove();
    inlineLooks(picture);
  } finally {
    paper.remove();
  }
  const { width, height } = picture.viewBox.baseVal;
  const [wide, tall] = [width + 2 * margin, height + 2 * margin];
  for (const name of [...picture.getAttributeNames()]) if (name.startsWith("aria-")) picture.removeAttribute(name);
  setAttribute(picture, "width", wide);
  setAttribute(picture, "height", tall);
  setAttribute(picture, "viewBox", `${-margin} ${-margin} ${wide} ${tall}`);
  setAttribute(picture, "role", "img");
  setAttribute(picture, "aria-labelledby", "title");
  setAttribute(picture, "aria-describedby", "description");
  picture.prepend(
    s("title", { id: "title" }, title),
    s("desc", { id: "description" }, description),
    s("rect", { x: -margin, y: -margin, width: wide, height: tall, fill: "#ffffff", stroke: "none" }),
  );
  return `<?xml version="1.0" encoding="UTF-8"?>\n${lawful(new XMLSerializer().serializeToString(picture))}\n`;
}

/** A text without what XML 1.0 cannot hold: names come from files, and one such letter would make the drawing unreadable. */
export function lawful(text: string): string {
  return text.replace(/[^\t\n\r\x20-\uD7FF\uE000-\uFFFD\u{10000}-\u{10FFFF}]/gu, "");
}

/** Writes each look into the attribute of its name, where it is not what the element around has. */
function inlineLooks(picture: SVGSVGElement): void {
  const shown = new Map<Element, readonly string[]>();
  for (const element of [picture, ...picture.querySelectorAll("*")]) {
    const style = getComputedStyle(element);
    const own = looks.map((look) => lookOf(style, look));
    const around = shown.get(element.parentElement!);
    shown.set(element, own);
    for (const [i, look] of looks.entries()) {
      element.removeAttribute(look);
      if (own[i] !== around?.[i]) element.setAttribute(look, own[i]!);
    }
  }
  // Only now: classes give the styles that are read above.
  for (const element of [picture, ...picture.querySelectorAll("*")]) {
    element.removeAttribute("class");
    element.removeAttribute("data-row");
  }
}

function lookOf(style: CSSStyleDeclaration, look: (typeof looks)[number]): string {
  // The last family of a list is the one that every program has.
  if (look === "font-family") return style.fontFamily.split(",").at(-1)!.trim();
  // As a whole it also has what forced colours ask of pictures among letters.
  if (look === "font-variant") return style.fontVariantNumeric;
  return style.getPropertyValue(look);
}
