import type { Cell, Check, Node } from "../../lib/graph";
import { inputsOf, installationOf } from "../../worksheets/build/build";
import { differingInputs } from "../state";
import type { Desk } from "./desk";
import type { Standings } from "./standings";

/** Samples of each value that are kept of a gesture. */
const longest = 24;

/** One installation shown after another, by their labels. */
export interface Shown {
  readonly now: string;
  readonly before: string;
}

/** What the hand does now, or did last: where values stood when it began, and how they went since. */
export interface Moves {
  /** Keys of the inputs that were moved; empty before the first move. */
  readonly keys: readonly string[];
  /** The installation whose showing moved them, and the one that was shown before, if that did. */
  readonly shown: Shown | undefined;
  /** A line's value when the gesture began. */
  before(node: Pick<Node, "key">): unknown;
  checksBefore(cell: Cell): readonly Check[];
  /** The last values of a cell or an input since then. */
  samples(key: string): readonly number[];
  /** Takes a sample of everything; once a frame. */
  sample(): void;
}

export function trackMoves(desk: Desk, standings: Standings): Moves {
  const { session, graph, values } = desk;
  let keys: readonly string[] = [];
  let shown: Shown | undefined;
  let before = new Map<string, unknown>();
  let checks = new Map<Cell, readonly Check[]>();
  let samples = new Map<string, number[]>();

  const begin = (moved: readonly string[], switched?: Shown): void => {
    keys = moved;
    shown = switched;
    before = new Map(graph.nodes.map((node) => [node.key, values.get(node)]));
    checks = new Map(graph.cells.map((cell) => [cell, standings.of(cell)]));
    samples = new Map();
    sample();
  };
  const sample = (): void => {
    for (const node of graph.nodes) {
      const value = values.get(node);
      if (typeof value !== "number") continue;
      const list = samples.get(node.key);
      if (!list) samples.set(node.key, [value]);
      else if (list.push(value) > longest) list.shift();
    }
  };

  session.subscribe((state, previous) => {
    if (state.gesture && !previous.gesture) return begin([state.gesture.key]);
    if (state.gesture || previous.gesture) return;
    if (state.build === previous.build && state.installation === previous.installation) return;
    const moved = differingInputs(graph, inputsOf(previous.build, previous.installation), session.inputs);
    if (moved.length === 0) return;
    const label = (key: string): string => installationOf(state.build, key).label;
    const switched = state.installation !== previous.installation && state.opened === previous.opened;
    begin(moved, switched ? { now: label(state.installation), before: label(previous.installation) } : undefined);
  });

  return {
    get keys() {
      return keys;
    },
    get shown() {
      return shown;
    },
    before: ({ key }) => before.get(key),
    checksBefore: (cell) => checks.get(cell) ?? [],
    samples: (key) => samples.get(key) ?? [],
    sample,
  };
}
