import { type Group, leading, px, textWidth, write } from "../../drawing";
import { groupsOf, mixes } from "./profile";

/** Height in which a stream passes an element, and room from there to the next, in CSS pixels. */
const passage = 32;
const between = 26;
/** Room behind elements that lie beside each other, for what they come to together. */
const mixRoom = 26;

interface Worded {
  readonly name: string;
  readonly remarks: readonly string[];
  readonly group: number;
  readonly share: number;
}

/** A piece of a row's words, from the left edge. */
interface Word {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly strong: boolean;
}

/** Where a row of a line stands down the page. */
export interface RowPlace {
  /** Heights between which the stream passes it. */
  readonly top: number;
  readonly bottom: number;
  /** The whole row with its words. */
  readonly from: number;
  readonly height: number;
  readonly words: readonly Word[];
  /** Whether the words stand above the stream's way and so across it. */
  readonly across: boolean;
}

/**
 * Rows of a line down the page: words beside the stream, or above it where the drawing is narrow.
 *
 * @param rows names and remarks, by group
 * @param above whether the words stand above
 * @param width room for words that stand above
 * @param from height at which the first begins
 */
export function placeRows(
  rows: readonly Worded[],
  { above, width, from }: { readonly above: boolean; readonly width: number; readonly from: number },
): { readonly places: readonly RowPlace[]; readonly end: number } {
  let y = from;
  const places: RowPlace[] = [];
  for (const group of groupsOf(rows)) {
    for (const row of group) {
      const words = above ? wordsAbove(row, y + 6, width) : wordsBeside(row, y + 8);
      const lines = new Set(words.map((word) => word.y)).size;
      const head = above ? lines * leading + 8 : 0;
      const height = head + Math.max(passage + between, above ? 0 : lines * leading + 8);
      places.push({ from: y, height, top: y + head, bottom: y + head + passage, words, across: above });
      y += height;
    }
    if (mixes(group)) y += mixRoom;
  }
  return { places, end: y - between + 16 };
}

const wordsBeside = ({ name, remarks }: Worded, y: number): readonly Word[] =>
  [name, ...remarks].map((text, i) => ({ text, x: 2, y: y + i * leading, strong: i === 0 }));

/** Name and remarks on one line if they fit, else on two. */
function wordsAbove({ name, remarks }: Worded, y: number, width: number): readonly Word[] {
  const own = { text: name, x: 2, y, strong: true };
  if (remarks.length === 0) return [own];
  const text = remarks.join(", ");
  const x = 2 + textWidth(name, { bold: true }) + 6;
  const fits = x + textWidth(text) <= width;
  return [own, fits ? { text, x, y, strong: false } : { text, x: 2, y: y + leading, strong: false }];
}

/** Writes a row's words; those that stand across the stream have clear ground behind them. */
export function writeWords(group: Group, { words, across }: RowPlace): void {
  if (across) {
    for (const { text, x, y, strong } of words) {
      group
        .append("rect")
        .attr("class", "paper")
        .attr("x", px(x - 3))
        .attr("y", px(y - 13))
        .attr("width", px(textWidth(text, { bold: strong }) + 6))
        .attr("height", leading + 1);
    }
  }
  for (const { text, x, y, strong } of words) write(group, text, { x, y, look: strong ? "strong" : "mute" });
}
