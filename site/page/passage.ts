import type { Block } from "../../worksheets/sheet";
import { h } from "../dom";

/** Most blocks in a passage. */
const longest = 8;

/** About how high a block is before it was first laid out, in CSS pixels. */
const height: Readonly<Record<Block["type"], number>> = {
  heading: 56,
  caution: 130,
  prose: 76,
  line: 45,
  figure: 520,
  tabulation: 280,
};

/**
 * Neighbouring blocks of a sheet, from heading to heading, that the page lays out and paints together: passages off the
 * screen are skipped by the browser.
 */
export function passagesOf(blocks: readonly Block[]): readonly (readonly Block[])[] {
  const passages: Block[][] = [];
  for (const block of blocks) {
    const last = passages.at(-1);
    if (!last || block.type === "heading" || last.length === longest) passages.push([block]);
    else last.push(block);
  }
  return passages;
}

/** How high blocks are likely to be until the browser has laid them out, in CSS pixels. */
export function likelyHeight(blocks: readonly Block[]): number {
  return blocks.reduce((sum, block) => sum + height[block.type], 0);
}

/** The element of a passage, as high as its blocks are likely to be until the browser has laid it out. */
export function passageElement(blocks: readonly Block[]): HTMLElement {
  const element = h("div", { class: "passage" });
  element.style.containIntrinsicBlockSize = `auto ${likelyHeight(blocks)}px`;
  return element;
}

/** Why passages are laid out wherever the screen is; a class of theirs. */
type Why = "is-near" | "is-laid-out";

/** Has the browser lay out passages, and the sheets that they stand in, until they are released. */
export function layOut(passages: readonly Element[], why: Why): void {
  for (const element of withSheets(passages)) element.classList.add(why);
}

/** Leaves it to the browser again whether it lays out passages and their sheets. */
export function release(passages: readonly Element[], why: Why): void {
  for (const element of withSheets(passages)) element.classList.remove(why);
}

function withSheets(passages: readonly Element[]): readonly Element[] {
  return passages.flatMap((passage) => [passage, sheetOf(passage)]);
}

/** The sheet that a passage stands in. */
export function sheetOf(passage: Element): Element {
  return passage.closest(".sheet")!;
}
