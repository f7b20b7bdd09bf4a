import { type Cell, type Check, checksOf, type Evaluation, isRefusal, type Node, outsideRange, type Ref, type TableInput } from "../../lib/graph";
import { unitNamed } from "../../lib/quantity";
import { installationOf } from "../../worksheets/build/build";
import { figures } from "../../worksheets/drawing";
import { blocksOf, type Figure, type FigureTable, openingOf, type Sheet, type Tabulation } from "../../worksheets/sheet";
import { h, symbol } from "../dom";
import { completeDrawing, valuesAcross } from "../figure";
import { standingShape } from "../mark";
import { marginWords } from "../mark/standing";
import { applies, type Desk, nodeOf } from "../page/desk";
import { checkName } from "../page/check-name";
import { differenceWords } from "../page/measured";
import { steadyWords } from "../page/value-words";
import { figureUnits, type Measured, openedInputs, refusalWords, type UnitChoice, unitSymbol, written, writtenInput } from "../state";
import { paperTable } from "./paper-table";

/** Width for which figures are drawn on paper, in CSS pixels: a page of A4 within its margins, and some air. */
const figureWidth = 580;

/** One sheet on paper: cautions, inputs, results with their margins, tables, figures. */
export function sheetPages(desk: Desk, evaluation: Evaluation, sheet: Sheet, letter: string): HTMLElement {
  const nodes = [...new Set(sheet.blocks.flatMap((block) => (block.type === "line" ? [block.node] : [])))];
  const inputs = nodes.filter((node) => node.type !== "cell");
  const cells = nodes.filter((node): node is Cell => node.type === "cell");
  const counts = applies(sheet, evaluation);
  return h(
    "section",
    { class: "paper-sheet" },
    h("header", {}, h("h2", {}, h("span", { class: "letter" }, letter), " ", sheet.title), h("p", { class: "answers" }, counts ? sheet.answers : sheet.applies!.otherwise)),
    opening(desk, evaluation, sheet),
    ...sheet.blocks.flatMap((block) => (block.type === "caution" ? [h("p", { class: "paper-caution" }, h("strong", {}, "Caution. "), block.text)] : [])),
    inputs.length > 0 && h("h3", {}, "Inputs"),
    inputs.length > 0 && h("div", { class: "paper-inputs" }, ...inputs.flatMap((node) => (node.type === "table" ? [] : [inputEntry(desk, node)]))),
    ...inputs.flatMap((node) => (node.type === "table" ? [tableRows(desk, node)] : [])),
    cells.length > 0 && h("h3", {}, "Results"),
    cells.length > 0 && resultTable(desk, evaluation, cells),
    ...sheet.blocks.flatMap((block) => (block.type === "tabulation" ? tabulated(desk, evaluation, block.tabulation) : [])),
    ...blocksOf(sheet, evaluation).flatMap((block) => (block.type === "figure" && block.drawing.figure ? drawn(desk, evaluation, block.drawing.figure) : [])),
  );
}

/** The first paragraph of a sheet: what it comes to, in words. */
export function opening(desk: Desk, evaluation: Evaluation, sheet: Sheet): HTMLElement {
  const words = (part: string | Ref): string | HTMLElement => {
    if (typeof part === "string") return part;
    const node = nodeOf(desk.graph, part.key);
    return h("strong", {}, isRefusal(evaluation.get(node)) ? "(no answer)" : steadyWords({ ...desk, values: evaluation }, node));
  };
  return h("p", { class: "paper-prose" }, ...openingOf(sheet, evaluation).map(words));
}

/** An input's name, symbol and value, and whether it is not as it was opened. */
export function inputEntry(desk: Desk, node: Exclude<Node, TableInput | Cell>): HTMLElement {
  const { session } = desk;
  const value = session.inputs[node.key];
  const changed = !Object.is(value, openedInputs(session.state)[node.key]);
  const own = node.key in installationOf(session.state.build, session.state.installation).own;
  const text = node.type === "quantity" ? writtenInput(session.state.units, node, value as number).text : (node.options[value as string] ?? "");
  return h(
    "p",
    { class: "paper-input" },
    h("span", { class: "name" }, node.label, own ? h("span", { class: "mark" }, " own") : "", changed ? h("span", { class: "mark" }, " • changed") : ""),
    node.type === "quantity" && node.symbol ? symbol(node.symbol) : h("span"),
    h("span", { class: "paper-value" }, text),
  );
}

function tableRows(desk: Desk, input: TableInput): HTMLElement {
  const { units } = desk.session.state;
  const columns = Object.entries(input.columns);
  const entry = (row: Readonly<Record<string, unknown>>, [name, column]: (typeof columns)[number]): string => {
    if (column.type === "quantity") return writtenInput(units, column, row[name] as number).number;
    return column.type === "choice" ? (column.options[row[name] as string] ?? "") : String(row[name]);
  };
  const unit = (column: (typeof columns)[number][1]): string =>
    column.type === "quantity" ? unitNamed(column.kind, unitSymbol(units, column)).written : "";
  return paperTable(
    input.label,
    columns.map(([, column]) => ({ label: column.label, unit: unit(column), type: column.type === "quantity" ? "quantity" : "text" })),
    (desk.session.inputs[input.key] as readonly Readonly<Record<string, unknown>>[]).map((row) => columns.map((column) => entry(row, column))),
  );
}

function resultTable(desk: Desk, evaluation: Evaluation, cells: readonly Cell[]): HTMLElement {
  return h("table", { class: "paper-table paper-results" }, h("tbody", {}, ...cells.flatMap((cell) => resultRows(desk, evaluation, cell))));
}

function resultRows(desk: Desk, evaluation: Evaluation, cell: Cell): readonly HTMLElement[] {
  const { units } = desk.session.state;
  const value = evaluation.get(cell);
  const checks = checksOf(cell, evaluation);
  if (isRefusal(value)) {
    const words = value.root === cell.key ? `no answer: ${refusalWords(value.words, units)}` : "waits for another line";
    return [h("tr", {}, h("th", { scope: "row" }, cell.label), h("td", {}), h("td", {}, "–"), h("td", {}, words))];
  }
  if (cell.kind === undefined) return checks.map((check) => checkRow(units, check));
  const outside = outsideRange(cell, evaluation);
  const shown = written(units, cell as Measured, value as number, { steady: true });
  const limit = [...checks].sort((a, b) => a.margin - b.margin).map((check) => limitWords(units, check));
  return [
    h(
      "tr",
      {},
      h("th", { scope: "row" }, cell.label),
      h("td", {}, cell.symbol ? symbol(cell.symbol) : ""),
      h("td", { class: "paper-number" }, shown.text),
      h("td", { class: "paper-limit" }, ...[...limit, ...measuredWords(desk, cell, value as number), ...outside.map((note) => `⟂ Outside range. ${note}`)].map((words) => h("span", {}, words))),
    ),
  ];
}

function measuredWords(desk: Desk, cell: Cell, predicted: number): readonly string[] {
  const { build, installation, units } = desk.session.state;
  const value = build.measured?.[installation]?.[cell.key];
  if (value === undefined) return [];
  const measured = cell as Measured;
  return [`measured ${written(units, measured, value).text}, ${differenceWords(units, measured, value, predicted)}`];
}

function checkRow(units: UnitChoice, check: Check): HTMLElement {
  return h(
    "tr",
    {},
    h("th", { scope: "row" }, checkName(check)),
    h("td", {}),
    h("td", { class: "paper-number" }, written(units, check, check.value, { steady: true }).text),
    h("td", { class: "paper-limit" }, h("span", {}, limitWords(units, check, false))),
  );
}

/** "≤ 7200 rpm, 11 % left, blower" */
export function limitWords(units: UnitChoice, check: Check, named = true): string {
  const sign = check.side === "most" ? "≤" : "≥";
  const shape = standingShape(check.standing);
  const words = `${sign} ${written(units, check, check.bound).text}, ${marginWords(check.margin)}${named ? `, ${check.component}` : ""}`;
  return shape === "" ? words : `${shape} ${words}`;
}

function tabulated(desk: Desk, evaluation: Evaluation, { title, of, columns, rows }: Tabulation): readonly HTMLElement[] {
  const value = evaluation.get(of);
  if (isRefusal(value)) return [];
  const { units } = desk.session.state;
  const unit = (column: (typeof columns)[number]): string =>
    column.kind === undefined ? "" : unitNamed(column.kind, unitSymbol(units, { ...column, kind: column.kind })).written;
  const entry = (column: (typeof columns)[number], each: string | number): string =>
    typeof each === "string" || column.kind === undefined ? String(each) : written(units, { ...column, kind: column.kind }, each, { steady: true }).number;
  return [
    paperTable(
      title,
      columns.map((column) => ({ label: column.label, unit: unit(column), type: column.kind ? "quantity" : "text" })),
      rows(value as never).map((row) => row.map((each, i) => entry(columns[i]!, each))),
    ),
  ];
}

/** A figure with its caption; nothing where a value of it has no answer. */
export function drawn(desk: Desk, evaluation: Evaluation, figure: Figure): readonly HTMLElement[] {
  const values = valuesAcross(figure, evaluation, desk.session);
  if (Object.values(values).some(isRefusal)) return [];
  const units = figureUnits(desk.session.state.units);
  try {
    const picture = completeDrawing(figure, values, evaluation, { width: figureWidth, units, listApart: figure.listed ?? false });
    picture.style.setProperty("--drawn", `${picture.getAttribute("height")}px`);
    return [
      h(
        "figure",
        { class: "figure paper-figure" },
        h("div", { class: "drawing" }, picture),
        h("figcaption", {}, h("strong", {}, figure.title), " ", h("span", { class: "described" }, figure.describe(values as never, units))),
      ),
      ...(figure.listed ? listApart(figure.title, figure.table(values as never, units)) : []),
    ];
  } catch {
    return [h("p", {}, `The figure “${figure.title}” could not be drawn.`)];
  }
}

/** The list with which a figure ends, as a table that may go on over the page. */
function listApart(title: string, { columns, rows }: FigureTable): readonly HTMLElement[] {
  if (rows.length === 0) return [];
  const headings = columns.map((column) => (typeof column === "string" ? { label: column, unit: "" } : { label: column[0], unit: column[1] }));
  return [
    paperTable(
      `${title}, row by row`,
      headings.map((heading) => ({ ...heading, type: "text" })),
      rows.map((row) => row.map((entry) => (typeof entry === "number" ? figures(entry, 4) : entry))),
    ),
  ];
}
