import type { Program } from "../../lib/graph";
import { installationOf } from "../../worksheets/build/build";
import { h } from "../dom";
import { type Desk, sheetLetter } from "../page/desk";
import type { Printed } from "./choice";
import { estimatePages } from "./estimate-pages";
import { inputsMark } from "./hash";
import { checksOnPaper, countWords, marginPages } from "./margin-pages";
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
 * @param printed what is chosen to be printed behind the estimate
 * @returns the document's parts, each time it is asked
 */
export function paperFor(desk: Desk, program: Program, version: string, printed: Printed): () => readonly HTMLElement[] {
  const rule = new CSSStyleSheet();
  document.adoptedStyleSheets = [...document.adoptedStyleSheets, rule];
  return () => {
    const { session, graph, sheets } = desk;
    const { build, installation } = session.state;
    const evaluation = program.run(session.inputs);
    const date = new Date().toLocaleDateString("en-GB", { day: "numeric", month: "long", year: "numeric" });
    const mark = inputsMark(graph, session.inputs);
    const here = installationOf(build, installation);
    const inFull = sheets.filter(printed.sheet);
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
        h("p", { class: "paper-facts" }, countWords(checksOnPaper(desk, evaluation))),
      ),
      ...estimatePages(desk, evaluation, (sheet) => printed.figures && !inFull.includes(sheet)),
      ...inFull.map((sheet) => sheetPages(desk, evaluation, sheet, sheetLetter(sheets.indexOf(sheet)))),
      ...(printed.margins ? [marginPages(desk, evaluation)] : []),
      ...(printed.workings && inFull.length > 0 ? [tracePages(desk, evaluation, inFull)] : []),
    ];
  };
}
