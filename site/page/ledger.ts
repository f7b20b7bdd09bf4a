import type { Check } from "../../lib/graph";
import { h, setAttribute, setChildren, setText } from "../dom";
import { csvFile, csvOf, ledgerTable, saveLine } from "../figure";
import { limitRule, marginWords, standingMark } from "../mark";
import { figureUnits, written } from "../state";
import type { Desk } from "./desk";
import { lineLink } from "./link";
import { refusingRoots } from "./refused";
import { sameCheck, type Standings } from "./standings";

export const ledgerKey = "ledger";

interface Row {
  readonly element: HTMLTableRowElement;
  show(check: Check): void;
}

/**
 * The ledger: every limit of the sheets that count, what is asked of it and what it bears, the least room first.
 * Rows keep their places during a gesture; the table waits while it is off the screen.
 */
export function ledger(desk: Desk, standings: Standings): { readonly element: HTMLElement; refresh(): void } {
  const body = h("tbody");
  const count = h("p", { class: "ledger-count" });
  const element = h(
    "section",
    { class: "sheet ledger", id: ledgerKey, "aria-labelledby": "title-of-ledger", "data-letter": "L" },
    h(
      "header",
      { class: "sheet-head" },
      h("span", { class: "letter", "aria-hidden": "true" }, "L"),
      h("h2", { id: "title-of-ledger", tabindex: -1 }, "Ledger"),
      h("p", { class: "answers" }, "What is asked of every part, what it bears, and how much room is between; the least room stands first."),
    ),
    count,
    h(
      "table",
      { class: "ledger-table" },
      h("caption", { class: "aside" }, "All limits, least room first"),
      h(
        "thead",
        {},
        h(
          "tr",
          {},
          h("th", { scope: "col" }, "Part"),
          h("th", { scope: "col" }, "Quantity"),
          h("th", { scope: "col", "data-type": "number" }, "Demand"),
          h("th", { scope: "col", "data-type": "number" }, "Capacity"),
          h("th", { scope: "col" }, "Room"),
        ),
      ),
      body,
    ),
    saveLine(desk.session, "Ledger", {
      CSV: () => csvFile(csvOf(ledgerTable(standings.all(), figureUnits(desk.session.state.units)))),
    }),
  );
  const rows = new Map<string, Row>();
  let order: readonly string[] = [];
  let near = false;
  let stale = true;

  const draw = (): void => {
    stale = false;
    const checks = new Map(standings.all().map((check) => [keyOf(check), check]));
    const ranked = [...checks].sort(([, a], [, b]) => a.margin - b.margin).map(([key]) => key);
    order = desk.session.state.gesture ? [...order.filter((key) => checks.has(key)), ...ranked.filter((key) => !order.includes(key))] : ranked;
    for (const key of order) {
      const check = checks.get(key)!;
      let row = rows.get(key);
      if (!row) {
        row = ledgerRow(desk, standings, check);
        rows.set(key, row);
      }
      row.show(check);
    }
    setChildren(body, order.map((key) => rows.get(key)!.element));
    const unanswered = refusingRoots(desk).length > 0 ? " Limits of lines without a value are missing here." : "";
    setText(count, countWords([...checks.values()]) + unanswered);
  };
  const drawWhenNear = (): void => {
    if (near && stale) draw();
  };
  new IntersectionObserver(
    ([entry]) => {
      near = entry!.isIntersecting;
      drawWhenNear();
    },
    { rootMargin: "400px 0px" },
  ).observe(element);
  desk.session.subscribe((state, previous) => {
    if (previous.gesture && !state.gesture) refresh();
  });
  const refresh = (): void => {
    stale = true;
    drawWhenNear();
  };
  return { element, refresh };
}

function ledgerRow(desk: Desk, standings: Standings, { cell, component, label, side }: Check): Row {
  const demand = h("td", { "data-type": "number" });
  const bound = h("span");
  const capacity = h("td", { "data-type": "number" }, ...sideWords(side), bound);
  const rule = limitRule();
  const mark = standingMark();
  const element = h(
    "tr",
    {},
    h("th", { scope: "row" }, component),
    h("td", { class: "quantity" }, lineLink(desk, cell, label)),
    demand,
    capacity,
    h("td", { class: "room" }, h("span", { class: "limit" }, rule.element, mark.element)),
  );
  return {
    element,
    show: (check) => {
      const { units } = desk.session.state;
      setText(demand, written(units, check, check.value, { steady: true }).text);
      setText(bound, written(units, check, check.bound).text);
      rule.show(check.margin, check.standing, sameCheck(check, standings.held(cell))?.margin);
      mark.show(check.standing, marginWords(check.margin));
      setAttribute(element, "data-standing", check.standing);
    },
  };
}

/** "at most" and "at least": a sign for the eye, words for the ear. */
function sideWords(side: Check["side"]): readonly HTMLElement[] {
  const most = side === "most";
  return [
    h("span", { class: "side-sign", "aria-hidden": "true" }, most ? "≤ " : "≥ "),
    h("span", { class: "aside" }, most ? "at most " : "at least "),
  ];
}

function keyOf({ cell, component, label, side }: Check): string {
  return [cell.key, component, label, side].join("\u0000");
}

function countWords(checks: readonly Check[]): string {
  const past = checks.filter(({ standing }) => standing === "past").length;
  const near = checks.filter(({ standing }) => standing === "near").length;
  return `${checks.length} limits: ${past} past, ${near} with less than 5 % left, ${checks.length - past - near} with room.`;
}
