import { holdNow, redoOnce, undoOnce } from "./actions";
import type { Desk } from "./desk";
import type { Notice } from "./notice";

/** Keys that work anywhere on the page. Single letters rest while a text or a list has the focus. */
export function listenToKeys(desk: Desk, notice: Notice): void {
  document.addEventListener("keydown", (event) => {
    if (event.defaultPrevented) return;
    const target = event.target instanceof HTMLElement ? event.target : document.body;
    const typing = target.matches("input:not([type=range], [type=radio]), select, textarea");
    if ((event.ctrlKey || event.metaKey) && !event.altKey) {
      const key = event.key.toLowerCase();
      // A text being typed has its own way back, which the browser keeps.
      if (target.matches("[data-typing]")) return;
      if (key === "z" && !event.shiftKey) act(event, () => undoOnce(desk, notice));
      else if (key === "y" || (key === "z" && event.shiftKey)) act(event, () => redoOnce(desk, notice));
      return;
    }
    if (event.altKey && /^[1-9]$/.test(event.key)) return act(event, () => goToSheet(desk, Number(event.key) - 1));
    if (typing || event.altKey) return;
    if (event.key === "t") act(event, () => target.closest(".line")?.querySelector<HTMLElement>(".how-toggle")?.click());
    if (event.key === "h") act(event, () => holdNow(desk));
    if (event.key === "u") {
      const { system } = desk.session.state.units;
      act(event, () => desk.session.choose({ system: system === "SI" ? "US" : "SI", own: {} }));
    }
    const step = target.matches(".how-toggle") ? { ArrowDown: 1, ArrowUp: -1 }[event.key] : undefined;
    if (step !== undefined) act(event, () => goToLine(target, step));
  });
}

function act(event: Event, deed: () => void): void {
  event.preventDefault();
  deed();
}

function goToSheet(desk: Desk, index: number): void {
  const sheet = desk.sheets[index];
  const section = sheet && document.getElementById(sheet.key);
  section?.scrollIntoView();
  section?.querySelector<HTMLElement>("h2")?.focus({ preventScroll: true });
}

function goToLine(from: HTMLElement, step: number): void {
  const toggles = [...document.querySelectorAll<HTMLElement>(".how-toggle")];
  toggles[toggles.indexOf(from) + step]?.focus();
}
