import type { Node } from "../../lib/graph";
import { h } from "../dom";
import type { Desk } from "./desk";
import type { Moves } from "./moves";
import type { Trace, Tracer } from "./trace";

/** The traces that are open on the page. */
export interface Traces {
  /**
   * Opens a trace, or closes the one that is open there. What traces are made of is fetched for the first one.
   *
   * @param node whose trace
   * @param place the element after which it stands, or into which it goes
   * @param opener gets the focus back when it is closed
   */
  toggle(node: Node, place: TracePlace, opener: HTMLElement): void;
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

/**
 * @param desk what is on the page
 * @param moves what the hand did last: a trace names what moved with it first
 */
export function createTraces(desk: Desk, moves: Moves): Traces {
  const movedLately = (node: Node): boolean => {
    const before = moves.before(node);
    return before !== undefined && before !== desk.values.get(node);
  };
  let tracer: Tracer | undefined;
  let fetching = false;
  let open: readonly Open[] = [];

  const shut = (one: Open): void => {
    const refocus = one.trace.element.contains(document.activeElement);
    open = open.filter((each) => each !== one);
    one.trace.element.remove();
    one.place.closed?.();
    if (refocus) one.opener.focus();
  };
  const current = (): Open | undefined => open.find(({ trace }) => trace.element.contains(document.activeElement)) ?? open.at(-1);

  const openAt = (trace: Tracer, node: Node, place: TracePlace, opener: HTMLElement): void => {
    const one: Open = { trace: trace(node, () => shut(one)), place, opener };
    open = [...open, one];
    place.put(one.trace.element);
    one.trace.refresh();
  };
  const toggle = (node: Node, place: TracePlace, opener: HTMLElement): void => {
    const there = open.find((each) => each.opener === opener);
    if (there) shut(there);
    else if (tracer) openAt(tracer, node, place, opener);
    else if (!fetching) void fetchFor(node, place, opener);
  };
  /** A second press while the first is waited for counts with it. */
  const fetchFor = async (node: Node, place: TracePlace, opener: HTMLElement): Promise<void> => {
    fetching = true;
    try {
      const { tracerOf } = await import("./trace");
      tracer = tracerOf(desk, movedLately);
      openAt(tracer, node, place, opener);
    } catch {
      place.put(h("p", { class: "remark", role: "status" }, "The trace could not be fetched. Press once more when there is a connection."));
    } finally {
      fetching = false;
    }
  };

  return {
    toggle,
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
