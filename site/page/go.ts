import { arriveAt } from "./arrive";
import type { Desk } from "./desk";
import { ledgerKey } from "./ledger";

/** Brings a sheet, or behind the last one the ledger, to the top of the screen and gives it the focus. */
export function goToSheet(desk: Desk, index: number): void {
  const key = index === desk.sheets.length ? ledgerKey : desk.sheets[index]?.key;
  const section = key === undefined ? null : document.getElementById(key);
  if (section) arriveAt(section);
  section?.querySelector<HTMLElement>("h2")?.focus({ preventScroll: true });
}

/** Brings a node's line to the middle of the screen, marks it, and gives its field, or else its toggle, the focus. */
export function goToLine(desk: Desk, key: string): void {
  const line = document.getElementById(desk.places.get(key)?.id ?? "");
  if (!line) return;
  for (const marked of document.querySelectorAll(".line.gone-to")) marked.classList.remove("gone-to");
  line.classList.add("gone-to");
  arriveAt(line, { block: "center" });
  firstOf(line, ".field, .control select, .how-toggle")?.focus({ preventScroll: true });
}

/** The toggle of the line so many lines further on; from a heading, of the first line under it. */
export function goAlong(from: HTMLElement, by: number): boolean {
  const toggles = [...document.querySelectorAll<HTMLElement>(".how-toggle")];
  const here = toggles.indexOf(from);
  const next = here >= 0 ? toggles[here + by] : from.closest(".sheet")?.querySelector<HTMLElement>(".how-toggle");
  next?.focus();
  next?.scrollIntoView({ block: "nearest" });
  return next !== undefined && next !== null;
}

function firstOf(line: HTMLElement, selectors: string): HTMLElement | null {
  for (const selector of selectors.split(", ")) {
    const found = line.querySelector<HTMLElement>(selector);
    if (found?.checkVisibility() && !found.hasAttribute("disabled")) return found;
  }
  return null;
}
