import { type Check, checksOf, type Evaluation, type Program } from "../../lib/graph";
import { installationOf } from "../../worksheets/build/build";
import { h } from "../dom";
import { marginWords, standingShape } from "../mark";
import { applies, type Desk, sheetLetter } from "../page/desk";
import { written } from "../state";
import { inputsMark } from "./hash";
import { pageRule } from "./margins";
import { sheetPages } from "./sheet-pages";
import { tracePages } from "./trace-pages";

/**
 * Makes the notebook as a document for paper, at once and from the compiled program: the page's own values come a frame
 * later than a printer waits.
 *
 * @param desk what is on the page
 * @param program evaluates the inputs
 * @param version of airledger
 * @returns the document's parts, each time it is asked
 */
export function paperFor(desk: Desk, program: Program, version: string): () => readonly HTMLElement[] {
  const rule = new CSSStyleSheet();
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, rule];
  return () => {
    const { session, graph, sheets } = desk;
    const { build, installation } = session.state;
    const evaluation = program.run(session.inputs);
    const date = new Date().toLocaleDateString("en-GB", { day: "numeric", month: "long", year: "numeric" });
    const mark = inputsMark(graph, session.inputs);
    const here = installationOf(build, installation);
    rule.replaceSync(
      pageRule({ topLeft: `${build.name} · ${here.label}`, topRight: `inputs ${mark}`, bottomLeft: `airledger ${version} · ${date}` }),
    );
    return [
      h(
        "header",
        { class: "paper-title" },
        h("p", { class: "paper-product" }, "airledger"),
        h("h1", {}, build.name),
        h("p", { class: "paper-installation" }, here.label),
        h("p", {}, [build.note, here.note].filter((note) => note !== "").join(" ")),
        h("p", { class: "paper-facts" }, `Printed ${date} · inputs ${mark} · airledger ${version} · units ${session.state.units.system}`),
        h("p", { class: "paper-facts" }, countWords(allChecks(desk, evaluation))),
      ),
      ...sheets.map((sheet, i) => sheetPages(desk, evaluation, sheet, sheetLetter(i))),
      marginPages(desk, evaluation),
      tracePages(desk, evaluation),
    ];
  };
}

function allChecks(desk: Desk, evaluation: Evaluation): readonly Check[] {
  return desk.sheets
    .filter((sheet) => applies(sheet, evaluation))
    .flatMap((sheet) => desk.graph.cells.filter(({ key }) => desk.places.get(key)?.sheet === sheet))
    .flatMap((cell) => checksOf(cell, evaluation))
    .sort((a, b) => a.margin - b.margin);
}

function countWords(checks: readonly Check[]): string {
  const count = (standing: Check["standing"]): number => checks.filter((check) => check.standing === standing).length;
  return `${checks.length} limits: ${count("past")} past, ${count("near")} with less than 5 % left, ${count("inside")} with room.`;
}

function marginPages(desk: Desk, evaluation: Evaluation): HTMLElement {
  const { units } = desk.session.state;
  return h(
    "section",
    { class: "paper-sheet" },
    h("header", {}, h("h2", {}, h("span", { class: "letter" }, "L"), " Margins"), h("p", { class: "answers" }, "What is asked of every part and what it bears; the least room stands first.")),
    h(
      "table",
      { class: "paper-table" },
      h("thead", {}, h("tr", {}, ...["Part", "Quantity", "Demand", "Capacity", "Room"].map((words, i) => h("th", { scope: "col", "data-type": i === 2 || i === 3 ? "quantity" : "text" }, words)))),
      h(
        "tbody",
        {},
        ...allChecks(desk, evaluation).map((check) =>
          h(
            "tr",
            { "data-standing": check.standing },
            h("th", { scope: "row" }, check.component),
            h("td", {}, check.label),
            h("td", { "data-type": "quantity" }, written(units, check, check.value, { steady: true }).text),
            h("td", { "data-type": "quantity" }, `${check.side === "most" ? "≤" : "≥"} ${written(units, check, check.bound).text}`),
            h("td", {}, `${standingShape(check.standing)} ${marginWords(check.margin)}`.trim()),
          ),
        ),
      ),
    ),
  );
}
