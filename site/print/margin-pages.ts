import { type Check, checksOf, type Evaluation } from "../../lib/graph";
import { h } from "../dom";
import { marginWords, standingShape } from "../mark";
import { applies, type Desk } from "../page/desk";
import { written } from "../state";

/** Limits that are always told, though all of them have room. */
const fewest = 12;

/** Every limit of the sheets that count; the least room stands first. */
export function checksOnPaper(desk: Desk, evaluation: Evaluation): readonly Check[] {
  return desk.sheets
    .filter((sheet) => applies(sheet, evaluation))
    .flatMap((sheet) => desk.graph.cells.filter(({ key }) => desk.places.get(key)?.sheet === sheet))
    .flatMap((cell) => checksOf(cell, evaluation))
    .sort((a, b) => a.margin - b.margin);
}

/** "117 limits: 0 past, 3 with less than 5 % left, 114 with room." */
export function countWords(checks: readonly Check[]): string {
  const count = (standing: Check["standing"]): number => checks.filter((check) => check.standing === standing).length;
  return `${checks.length} limits: ${count("past")} past, ${count("near")} with less than 5 % left, ${count("inside")} with room.`;
}

/** The limits with the least room: all that are past or near, and of the others so many that there are some to read. */
export function tightest(checks: readonly Check[]): readonly Check[] {
  const tight = checks.filter(({ standing }) => standing !== "inside").length;
  return checks.slice(0, Math.max(tight, fewest));
}

/** Limits as a table: part, quantity, demand, capacity, room. */
export function marginTable(desk: Desk, checks: readonly Check[]): HTMLElement {
  const { units } = desk.session.state;
  const row = (check: Check): HTMLElement =>
    h(
      "tr",
      { "data-standing": check.standing },
      h("th", { scope: "row" }, check.component),
      h("td", {}, check.label),
      h("td", { "data-type": "quantity" }, written(units, check, check.value, { steady: true }).text),
      h("td", { "data-type": "quantity" }, `${check.side === "most" ? "≤" : "≥"} ${written(units, check, check.bound).text}`),
      h("td", {}, `${standingShape(check.standing)} ${marginWords(check.margin)}`.trim()),
    );
  const heading = (words: string, i: number): HTMLElement => h("th", { scope: "col", "data-type": i === 2 || i === 3 ? "quantity" : "text" }, words);
  return h(
    "table",
    { class: "paper-table" },
    h("thead", {}, h("tr", {}, ...["Part", "Quantity", "Demand", "Capacity", "Room"].map(heading))),
    h("tbody", {}, ...checks.map(row)),
  );
}

/** Every limit, on pages of its own. */
export function marginPages(desk: Desk, evaluation: Evaluation): HTMLElement {
  return h(
    "section",
    { class: "paper-sheet" },
    h("header", {}, h("h2", {}, h("span", { class: "letter" }, "L"), " Every margin"), h("p", { class: "answers" }, "What is asked of every part and what it bears; the least room stands first.")),
    marginTable(desk, checksOnPaper(desk, evaluation)),
  );
}
