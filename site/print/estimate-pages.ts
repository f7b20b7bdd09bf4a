import { type Cell, type Evaluation, isRefusal } from "../../lib/graph";
import { blocksOf, openingOf, type Sheet } from "../../worksheets/sheet";
import { h, symbol } from "../dom";
import { applies, type Desk, nodeOf, sheetLetter } from "../page/desk";
import { steadyWords } from "../page/value-words";
import { checksOnPaper, countWords, marginTable, tightest } from "./margin-pages";
import { drawn, inputEntry, opening } from "./sheet-pages";

/** What the estimate shows of a sheet beside its words. */
export type Pictured = (sheet: Sheet) => boolean;

/** The estimate: the brief, what it comes to, the tightest margins, cautions, and every sheet that counts in a few words. */
export function estimatePages(desk: Desk, evaluation: Evaluation, pictured: Pictured): readonly HTMLElement[] {
  const counting = desk.sheets.filter((sheet) => applies(sheet, evaluation));
  return [briefPart(desk), resultPart(desk, evaluation, counting), marginPart(desk, evaluation), cautionPart(desk, counting), ...inShort(desk, evaluation, counting, pictured)];
}

/** Inputs of the notebook's first sheet: what was asked. */
function briefPart(desk: Desk): HTMLElement {
  const nodes = new Set(desk.sheets[0]!.blocks.flatMap((block) => (block.type === "line" ? [block.node] : [])));
  const entries = [...nodes].flatMap((node) => (node.type === "quantity" || node.type === "choice" ? [inputEntry(desk, node)] : []));
  return part("The brief", h("div", { class: "paper-inputs" }, ...entries));
}

/** The results that the sheets name in their first paragraphs. */
function resultPart(desk: Desk, evaluation: Evaluation, sheets: readonly Sheet[]): HTMLElement {
  const named = new Set(sheets.flatMap((sheet) => openingOf(sheet, evaluation)).flatMap((each) => (typeof each === "string" ? [] : [nodeOf(desk.graph, each.key)])));
  const cells = [...named].filter((node): node is Cell => node.type === "cell");
  return part("What it comes to", h("div", { class: "paper-inputs" }, ...cells.map((cell) => resultEntry(desk, evaluation, cell))));
}

function resultEntry(desk: Desk, evaluation: Evaluation, cell: Cell): HTMLElement {
  const text = isRefusal(evaluation.get(cell)) ? "no answer" : steadyWords({ ...desk, values: evaluation }, cell);
  return h(
    "p",
    { class: "paper-input" },
    h("span", { class: "name" }, cell.label),
    cell.symbol ? symbol(cell.symbol) : h("span"),
    h("span", { class: "paper-value" }, text),
  );
}

function marginPart(desk: Desk, evaluation: Evaluation): HTMLElement {
  const checks = checksOnPaper(desk, evaluation);
  const told = tightest(checks);
  const rest = checks.length - told.length;
  const words = rest > 0 ? `${countWords(checks)} Those with the least room are listed; ${rest} more have more.` : countWords(checks);
  return part("Margins", h("p", { class: "paper-prose" }, words), marginTable(desk, told));
}

function cautionPart(desk: Desk, sheets: readonly Sheet[]): HTMLElement {
  const cautions = sheets.flatMap((sheet) => {
    const texts = sheet.blocks.flatMap((block) => (block.type === "caution" ? [block.text] : []));
    return texts.length === 0 ? [] : [h("p", {}, h("strong", {}, `${sheetLetter(desk.sheets.indexOf(sheet))} ${sheet.title}. `), texts.join(" "))];
  });
  return part(
    "Cautions",
    h("p", { class: "paper-prose" }, "Every number here is calculated from the inputs of this build, and is no better than they are; what was measured says so. Prove an engine by measurement, under guard, and raise its load in steps."),
    h("div", { class: "paper-cautions" }, ...cautions),
  );
}

/** Every sheet by its first paragraph, and by its first figure where it is to be pictured. */
function inShort(desk: Desk, evaluation: Evaluation, sheets: readonly Sheet[], pictured: Pictured): readonly HTMLElement[] {
  const entry = (sheet: Sheet): HTMLElement => {
    const block = blocksOf(sheet, evaluation).find(({ type }) => type === "figure");
    const figure = block?.type === "figure" && pictured(sheet) ? block.drawing.figure : undefined;
    return h(
      "div",
      { class: "paper-short" },
      h("h3", {}, h("span", { class: "letter" }, sheetLetter(desk.sheets.indexOf(sheet))), " ", sheet.title),
      opening(desk, evaluation, sheet),
      ...(figure ? drawn(desk, evaluation, figure) : []),
    );
  };
  const [first, ...others] = sheets.map(entry);
  return first ? [h("section", { class: "paper-part" }, h("h2", {}, "Sheet by sheet"), first), ...others] : [];
}

function part(title: string, ...content: readonly HTMLElement[]): HTMLElement {
  return h("section", { class: "paper-part" }, h("h2", {}, title), ...content);
}
