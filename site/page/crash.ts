import { h } from "../dom";
import type { Part } from "./desk";

/** What stands in the place of a piece of the page that broke: what happened, for a copy. */
export function crashReport(what: string, error: unknown): HTMLElement {
  const message = error instanceof Error ? `${error.name}: ${error.message}` : String(error);
  const trail = error instanceof Error ? (error.stack ?? "").split("\n").slice(1, 8).map((line) => line.trim()) : [];
  const text = [what, message, ...trail].join("\n");
  const report = h("textarea", { class: "crash-text", readonly: true, rows: Math.min(8, trail.length + 2), "aria-label": `Report on ${what}`, spellcheck: "false" });
  report.value = text;
  const copy = async (): Promise<void> => {
    report.select();
    try {
      await navigator.clipboard.writeText(text);
      button.textContent = "Copied";
    } catch {
      button.textContent = "Marked: copy it by keys";
    }
  };
  const button = h("button", { type: "button", class: "quiet", onclick: () => void copy() }, "Copy the report");
  return h(
    "div",
    { class: "crash", role: "alert" },
    h("p", {}, h("strong", {}, "This piece broke. "), `${what} cannot be shown; everything else goes on. It is a defect of the page, not of your numbers.`),
    report,
    button,
  );
}

/** A deed that may fail without harm to others: the first failure puts its report into the element, and ends it. */
export function contained(what: string, element: Element, deed: () => void): () => void {
  let broken = false;
  return () => {
    if (broken) return;
    try {
      deed();
    } catch (error) {
      broken = true;
      element.replaceChildren(crashReport(what, error));
    }
  };
}

/** A part whose making or refreshing may fail without harm to the others. */
export function guarded(what: string, watches: readonly string[], make: () => Part): Part {
  try {
    const part = make();
    return { ...part, refresh: contained(what, part.element, part.refresh) };
  } catch (error) {
    return { element: crashReport(what, error), watches, refresh: () => {} };
  }
}
