import type { Cell, Standing } from "../../lib/graph";
import { h, runningNumber, setAttribute, setText } from "../dom";
import { applies, type Desk, sheetLetter } from "./desk";
import { ledgerKey } from "./ledger";
import { lineLink } from "./link";
import { refusedOn, refusingRoots } from "./refused";
import type { Standings } from "./standings";

/** The list of sheets with letters, and how many lines of each are past or near a limit. */
export function contents(desk: Desk, standings: Standings): { readonly element: HTMLElement; refresh(): void } {
  const entries = desk.sheets.map((sheet, index) => {
    const [past, near, none] = [tally("past", "■", "past a limit"), tally("near", "◪", "near a limit"), tally("none", "–", "without a value")];
    const link = entry(sheet.key, sheetLetter(index), sheet.title, past.element, near.element, none.element);
    return { sheet, link, past, near, none };
  });
  const ledgerLink = entry(ledgerKey, "L", "Ledger");
  const summary = h("p", { class: "summary" });
  const unanswered = h("p", { class: "unanswered", role: "status" });
  const element = h(
    "nav",
    { class: "contents", "aria-label": "Sheets" },
    h(
      "div",
      { class: "pane" },
      h("ol", {}, ...entries.map(({ link }) => h("li", {}, link)), h("li", {}, ledgerLink)),
      h("div", { class: "margins" }, h("h2", {}, "Margins"), summary, unanswered),
    ),
  );
  const links = new Map([...entries.map(({ sheet, link }) => [sheet.key, link] as const), [ledgerKey, ledgerLink] as const]);
  followReading(links);
  let shownRoots = "";
  const showRoots = (roots: readonly Cell[]): void => {
    const keys = roots.map(({ key }) => key).join(" ");
    if (keys === shownRoots) return;
    shownRoots = keys;
    unanswered.replaceChildren(...roots.flatMap((root, i) => [i === 0 ? "No answer: " : ", ", lineLink(desk, root)]));
  };
  return {
    element,
    refresh: () => {
      let [pasts, nears] = [0, 0];
      for (const { sheet, link, past, near, none } of entries) {
        const counts = standings.counts(sheet);
        pasts += counts.past;
        nears += counts.near;
        past.show(counts.past);
        near.show(counts.near);
        none.show(refusedOn(desk, sheet));
        link.classList.toggle("is-aside", !applies(sheet, desk.values));
      }
      const roots = refusingRoots(desk);
      setText(summary, summaryWords(pasts, nears, roots.length > 0));
      showRoots(roots);
    },
  };
}

function entry(key: string, letter: string, title: string, ...counts: readonly HTMLElement[]): HTMLAnchorElement {
  return h(
    "a",
    { href: `#${key}` },
    h("span", { class: "letter" }, letter),
    h("span", { class: "title" }, title),
    h("span", { class: "counts" }, ...counts),
  );
}

/** How many lines stand in some way; not there when none does. */
function tally(standing: Standing | "none", shape: string, words: string): { readonly element: HTMLElement; show(count: number): void } {
  const number = h("span");
  const running = runningNumber(number);
  const element = h("span", { class: "count", "data-standing": standing, role: "img" }, `${shape} `, number);
  return {
    element,
    show: (count) => {
      element.classList.toggle("is-none", count === 0);
      setAttribute(element, "aria-label", `${count} ${words}`);
      running.show(String(count));
    },
  };
}

function summaryWords(pasts: number, nears: number, unanswered: boolean): string {
  if (pasts === 0 && nears === 0) return unanswered ? "Every line with a value has room." : "Every line has room.";
  const past = pasts === 0 ? "None past its limit" : `${pasts} past ${pasts === 1 ? "its limit" : "their limits"}`;
  return nears === 0 ? `${past}.` : `${past}, ${nears} within 5 %.`;
}

/** Marks the sheet that is being read. */
function followReading(links: ReadonlyMap<string, HTMLAnchorElement>): void {
  const watcher = new IntersectionObserver(
    (seen) => {
      for (const { target, isIntersecting } of seen) {
        if (!isIntersecting) continue;
        for (const [key, link] of links) setAttribute(link, "aria-current", key === target.id ? "true" : undefined);
        const link = links.get(target.id);
        const bar = link?.closest("ol");
        if (link && bar && bar.scrollWidth > bar.clientWidth) bar.scrollLeft = link.offsetLeft - bar.clientWidth / 2 + link.offsetWidth / 2;
      }
    },
    { rootMargin: "-25% 0px -70% 0px" },
  );
  requestAnimationFrame(() => {
    for (const key of links.keys()) {
      const section = document.getElementById(key);
      if (section) watcher.observe(section);
    }
  });
}
