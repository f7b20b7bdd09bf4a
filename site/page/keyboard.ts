import type { Preference } from "../state";
import { holdNow, redoOnce, undoOnce } from "./actions";
import { type Desk, nodeOf } from "./desk";
import { goAlong, goToLine, goToSheet } from "./go";
import type { Notice } from "./notice";
import type { Traces } from "./traces";

interface Keys {
  readonly notice: Notice;
  readonly traces: Traces;
  readonly single: Preference<"on" | "off">;
  readonly find: { open(): void };
  /** Opens the list of keys. */
  openKeys(): void;
}

/** Keys that work anywhere on the page. Single signs rest while a text or a list has the focus, and where they are switched off. */
export function listenToKeys(desk: Desk, { notice, traces, single, find, openKeys }: Keys): void {
  const whole = (event: KeyboardEvent, target: HTMLElement): (() => void) | undefined => {
    const key = event.key.toLowerCase();
    if ((event.ctrlKey || event.metaKey) && !event.altKey) {
      // A text being typed has its own way back, which the browser keeps.
      if (target.matches("[data-typing]")) return undefined;
      if (key === "z" && !event.shiftKey) return () => undoOnce(desk, notice);
      if (key === "y" || (key === "z" && event.shiftKey)) return () => redoOnce(desk, notice);
      return undefined;
    }
    const digit = /^Digit([0-9])$/.exec(event.code)?.[1];
    if (event.altKey && digit) return () => goToSheet(desk, (Number(digit) + 9) % 10);
    return undefined;
  };

  const onLine = (event: KeyboardEvent, target: HTMLElement): (() => void) | undefined => {
    const along = target.matches(".how-toggle, h2") ? { ArrowDown: 1, ArrowUp: -1 }[event.key] : undefined;
    if (along !== undefined) return () => void goAlong(target, along);
    if (event.key === "Enter" && target.matches(".of-input > .how-toggle, .slider")) {
      const field = target.closest(".line")?.querySelector<HTMLElement>(".field");
      return field ? () => field.focus() : undefined;
    }
    if (event.key === "Backspace" && target.closest(".trace") && !target.matches(".slider")) return () => void traces.back();
    return undefined;
  };

  const sign = (event: KeyboardEvent, target: HTMLElement): (() => void) | undefined => {
    switch (event.key) {
      case "t":
        return () => trace(desk, traces, target);
      case "[":
        return () => void traces.walk("up");
      case "]":
        return () => void traces.walk("down");
      case "h":
        return () => holdNow(desk);
      case "u": {
        const { system } = desk.session.state.units;
        return () => desk.session.choose({ system: system === "SI" ? "US" : "SI", own: {} });
      }
      case "/":
        return () => find.open();
      case "?":
        return openKeys;
      default:
        return undefined;
    }
  };

  document.addEventListener("keydown", (event) => {
    if (event.defaultPrevented || document.querySelector("dialog[open]")) return;
    const target = event.target instanceof HTMLElement || event.target instanceof SVGElement ? (event.target as HTMLElement) : document.body;
    const typing = target.matches("input:not([type=range], [type=radio], [type=checkbox]), select, textarea");
    const plain = !event.ctrlKey && !event.metaKey && !event.altKey;
    const deed =
      whole(event, target) ??
      (plain && event.key === "Escape" ? () => closeTopmost(traces) : undefined) ??
      (plain && !typing ? (onLine(event, target) ?? (single.value === "on" ? sign(event, target) : undefined)) : undefined);
    if (!deed) return;
    event.preventDefault();
    deed();
  });
}

/** Closes what lies on top: the sheet of echoes on a small screen, else a trace. */
function closeTopmost(traces: Traces): void {
  const pulled = document.querySelector<HTMLElement>(".echo.open .echo-pull");
  if (pulled) {
    pulled.click();
    pulled.focus();
  } else traces.close();
}

/** Opens the trace of what has the focus: a line, a number in a sentence, or a line's name elsewhere on the page. */
function trace(desk: Desk, traces: Traces, target: HTMLElement): void {
  if (target.closest(".trace")) {
    traces.close();
    return;
  }
  const line = target.closest<HTMLElement>(".line");
  if (line) {
    line.querySelector<HTMLElement>(".how-toggle")?.click();
    return;
  }
  const key = target.dataset["key"] ?? target.dataset["input"] ?? target.closest<HTMLElement>("[data-key]")?.dataset["key"];
  if (key === undefined || !desk.graph.position.has(key)) return;
  const sentence = target.closest(".prose");
  if (sentence) {
    traces.toggle(nodeOf(desk.graph, key), { put: (element) => sentence.after(element) }, target);
    return;
  }
  goToLine(desk, key);
  document.getElementById(desk.places.get(key)?.id ?? "")?.querySelector<HTMLElement>('.how-toggle[aria-expanded="false"]')?.click();
}
