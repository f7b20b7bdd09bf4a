import type { Node } from "../../lib/graph";
import { type Symbols, symbolsOf } from "../trace";
import type { Desk } from "./desk";
import { type Trace, traceOf } from "./trace";

/** The traces that are open on the page. */
export interface Traces {
  /**
   * Opens a trace, or closes the one that is open there.
   *
   * @param node whose trace
   * @param place the element after which it stands, or into which it goes
   * @param opener gets the focus back when it is closed
   * @returns whether it is open now
   */
  toggle(node: Node, place: TracePlace, opener: HTMLElement): boolean;
  refresh(): void;
  /** Walks the trace that holds the focus, or else the one opened last. @returns whether there was a step */
  walk(way: "up" | "down"): boolean;
  /** Takes the last step of that trace back. */
  back(): void;
  /** Closes the trace that holds the focus, or else the one opened last. @returns whether one was open */
  close(): boolean;
}

export interface TracePlace {
  /** Puts the trace onto the page. */
  put(element: HTMLElement): void;
  /** Called when it is taken away. */
  closed?(): void;
}

interface Open {
  readonly trace: Trace;
  readonly place: TracePlace;
  readonly opener: HTMLElement;
}

export function createTraces(desk: Desk): Traces {
  const symbols: Symbols = symbolsOf(desk.graph);
  let open: readonly Open[] = [];

  const shut = (one: Open): void => {
    const refocus = one.trace.element.contains(document.activeElement);
    open = open.filter((each) => each !== one);
    one.trace.element.remove();
    one.place.closed?.();
    if (refocus) one.opener.focus();
  };
  const current = (): Open | undefined => open.find(({ trace }) => trace.element.contains(document.activeElement)) ?? open.at(-1);

  return {
    toggle: (node, place, opener) => {
      const there = open.find((each) => each.opener === opener);
      if (there) {
        shut(there);
        return false;
      }
      const trace = traceOf(desk, symbols, node, () => shut(one));
      const one: Open = { trace, place, opener };
      open = [...open, one];
      place.put(trace.element);
      trace.refresh();
      return true;
    },
    refresh: () => {
      for (const { trace } of open) trace.refresh();
    },
    walk: (way) => current()?.trace.walk(way) ?? false,
    back: () => current()?.trace.back(),
    close: () => {
      const one = current();
      if (one) shut(one);
      return one !== undefined;
    },
  };
}
