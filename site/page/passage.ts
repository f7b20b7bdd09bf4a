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

/** The element of a passage, as high as its blocks are likely to be until the browser has laid it out. */
export function passageElement(blocks: readonly Block[]): HTMLElement {
  const element = h("div", { class: "passage" });
  const likely = blocks.reduce((sum, block) => sum + height[block.type], 0);
  element.style.containIntrinsicBlockSize = `auto ${likely}px`;
  return element;
}
