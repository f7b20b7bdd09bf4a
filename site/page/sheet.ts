import { type Block, holds, type Sheet, type WhileChosen } from "../../worksheets/sheet";
import { h, setAttribute } from "../dom";
import { cellLine } from "./cell-line";
import { guarded } from "./crash";
import { applies, type Desk, type Part, sheetLetter } from "./desk";
import { figurePlace } from "./figure-place";
import { inputLine } from "./input-line";
import type { Nearness } from "./nearness";
import type { Gathering, Parts } from "./parts";
import { likelyHeight, passageElement, passagesOf } from "./passage";
import { prosePart } from "./prose";
import type { Standings } from "./standings";
import { tabulationPart } from "./tabulation";
import type { Traces } from "./traces";
import type { Workable } from "./workable";

/** About how high a sheet's title is with what stands around it, in CSS pixels. */
const headHeight = 190;

/** What a sheet's lines work with. */
export interface Works {
  readonly standings: Standings;
  readonly parts: Parts;
  readonly nearness: Nearness;
  readonly traces: Traces;
  readonly workable: Workable;
}

/** One worksheet as a section of the page, in reading order. */
export function sheetSection(desk: Desk, { standings, parts, nearness, traces, workable }: Works, sheet: Sheet): HTMLElement {
  const letter = sheetLetter(desk.sheets.indexOf(sheet));
  const seen = new Set<string>();
  const titleId = `title-of-${sheet.key}`;

  const section = h(
    "section",
    { class: "sheet", id: sheet.key, "aria-labelledby": titleId, "data-letter": letter },
    h(
      "header",
      { class: "sheet-head" },
      h("span", { class: "letter", "aria-hidden": "true" }, letter),
      h("h2", { id: titleId, tabindex: -1 }, sheet.title),
      h("p", { class: "answers" }, sheet.answers),
    ),
  );
  section.style.containIntrinsicBlockSize = `auto ${headHeight + likelyHeight(sheet.blocks)}px`;
  if (sheet.applies) section.append(parts.add(setAside(desk, sheet, section)).element);
  const watch = nearness.within(section);
  const gathered = (element: Element): Gathering => parts.gathered(element, watch);

  const placeOf = (gathering: Gathering, block: Block): HTMLElement => {
    const element = elementOf(gathering, block);
    if (block.only) gathering.add(shownWhile(desk, block.only, element));
    return element;
  };

  const elementOf = (gathering: Gathering, block: Block): HTMLElement => {
    switch (block.type) {
      case "heading":
        return h("h3", {}, block.text);
      case "caution":
        return h("div", { class: "caution", role: "note" }, h("strong", {}, "Caution"), h("p", {}, block.text));
      case "prose":
        return gathering.add(guarded(`A sentence of "${sheet.title}"`, [], () => prosePart(desk, block.parts))).element;
      case "figure":
        return figurePlace(desk, gathering, watch, block.drawing);
      case "tabulation": {
        const { title, of } = block.tabulation;
        return gathering.add(guarded(`The table "${title}"`, [of.key], () => tabulationPart(desk, gathered, block.tabulation))).element;
      }
      case "line": {
        const { node } = block;
        const place = desk.places.get(node.key)!;
        const first = place.sheet === sheet && !seen.has(node.key);
        seen.add(node.key);
        const id = first ? place.id : `${sheet.key}-${sheet.blocks.indexOf(block)}-${node.key}`;
        const line = (): Part =>
          node.type === "cell" ? cellLine(desk, { standings, traces, workable }, node, id, gathering) : inputLine(desk, traces, node, id);
        return gathering.add(guarded(`The line "${node.label}"`, [node.key], line)).element;
      }
    }
  };

  const passageOf = (blocks: readonly Block[]): HTMLElement => {
    const element = passageElement(blocks);
    const gathering = gathered(element);
    element.append(...blocks.map((block) => placeOf(gathering, block)));
    return element;
  };

  section.append(...passagesOf(sheet.blocks).map(passageOf));
  return section;
}

/** Shows an element while a choice has a value. */
function shownWhile(desk: Desk, only: WhileChosen, element: HTMLElement): Part {
  return { element, watches: [only.choice.key], refresh: () => setAttribute(element, "hidden", !holds(only, desk.values)) };
}

/** The notice of a sheet that does not count with the present choice. */
function setAside(desk: Desk, sheet: Sheet, section: HTMLElement): Part {
  const { choice, otherwise } = sheet.applies!;
  const element = h("p", { class: "set-aside" }, otherwise);
  return {
    element,
    watches: [choice.key],
    refresh: () => {
      const counts = applies(sheet, desk.values);
      setAttribute(element, "hidden", counts);
      section.classList.toggle("is-aside", !counts);
    },
  };
}
