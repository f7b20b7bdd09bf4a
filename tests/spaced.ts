/** A text of the page with every space that holds a number and its unit together as a plain one. */
export function spaced(text: string): string {
  return text.replaceAll("\u00a0", " ");
}
