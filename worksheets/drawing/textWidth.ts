/** Widths of letters as shares of the type size, for the common sans-serif faces of systems; the wider one where they differ. */
const wide = /[mwMW@%—Ø]/;
const capital = /[A-Z&■◪●○]/;
const slim = /[ijlI.,:;'’|!·\u202f]/;
const half = /[ \u00a0ftr()[\]/–-]/;

/**
 * Width of a text in CSS pixels, estimated from its letters: a drawing is laid out before any browser sees it.
 * Meant to err to the wide side.
 *
 * @param text the text
 * @param options type size, 13 px if left out, and whether it is bold
 */
export function textWidth(text: string, { size = 13, bold = false }: { size?: number; bold?: boolean } = {}): number {
  let ems = 0;
  for (const letter of text) ems += widthOf(letter);
  return ems * size * (bold ? 1.1 : 1);
}

/** Widths of the letters met so far. */
const known = new Map<string, number>();

function widthOf(letter: string): number {
  let width = known.get(letter);
  if (width === undefined) {
    width = slim.test(letter) ? 0.33 : half.test(letter) ? 0.4 : wide.test(letter) ? 0.95 : capital.test(letter) ? 0.72 : 0.63;
    known.set(letter, width);
  }
  return width;
}

/** The widest of some texts in CSS pixels. */
export function widest(texts: readonly string[], options: { size?: number; bold?: boolean } = {}): number {
  return texts.reduce((most, text) => Math.max(most, textWidth(text, options)), 0);
}

/** A text in lines of at most some width; a single word may be wider. */
export function wrapped(
  text: string,
  width: number,
  options: { size?: number; bold?: boolean } = {},
): readonly string[] {
  const lines: string[] = [];
  for (const word of text.split(" ")) {
    const last = lines.at(-1);
    if (last !== undefined && textWidth(`${last} ${word}`, options) <= width)
      lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(word);
  }
  return lines;
}
