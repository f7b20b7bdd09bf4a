import type { Evaluation, Graph, InputValues, Program } from "../../lib/graph";
import { type Build, inputsOf, installationOf, rejoined, separated, withInput, withMeasured } from "../../worksheets/build/build";
import { changeName, differingInputs } from "./naming";
import type { UnitChoice } from "./units";

/** The reference against which every movement is shown: a whole build, of which the installation shown is looked at. */
export interface Held {
  /** When it was held: a time of day, or as what the build was opened. */
  readonly name: string;
  readonly build: Build;
  /** Of that build, in the installation shown. */
  readonly evaluation: Evaluation;
}

/** One step back or forth. */
export interface Entry {
  readonly name: string;
  readonly before: Build;
  readonly after: Build;
  /** The installation that was shown. */
  readonly installation: string;
}

export interface State {
  readonly build: Build;
  /** The build as it was opened: where "changed" and "reset" are measured from. */
  readonly opened: Build;
  readonly installation: string;
  readonly held: Held;
  readonly units: UnitChoice;
  readonly done: readonly Entry[];
  readonly undone: readonly Entry[];
  /** The input under the hand, while there is one. */
  readonly gesture: Gesture | undefined;
}

export interface Gesture {
  readonly key: string;
  readonly before: Build;
}

export interface Session {
  readonly state: State;
  /** Every input's value in the installation shown. */
  readonly inputs: InputValues;
  /** Tells of each new state. @returns a function that ends it */
  subscribe(listener: (state: State, previous: State) => void): () => void;
  /** Starts a gesture on an input: what it sets until `end` becomes one entry. */
  begin(key: string): void;
  end(): void;
  /** Sets an input; outside a gesture this is an entry of its own. */
  set(key: string, value: unknown): void;
  /** Puts an input back to where the build was opened. */
  reset(key: string): void;
  separate(key: string): void;
  rejoin(key: string): void;
  /** Puts a measured value beside a cell's, or takes it away; an entry of its own. */
  measure(key: string, value: number | undefined, name: string): void;
  show(installation: string): void;
  /** Everything as it is in an installation of the build, shown or not. */
  evaluate(installation: string): Evaluation;
  /**
   * Puts another build on the page.
   *
   * @param name of the reference, which is what the build was opened as
   * @param as what its changes are measured from, with the same installations, and the installation shown; itself and
   *   the first, if absent
   */
  open(build: Build, name: string, as?: { readonly opened: Build; readonly installation: string }): void;
  /** Gives the build another name. */
  rename(name: string): void;
  hold(name: string): void;
  choose(units: UnitChoice): void;
  /** @returns the name of what was taken back, if anything was */
  undo(): string | undefined;
  redo(): string | undefined;
}

/** Longest list of steps back. */
const longestHistory = 200;

/**
 * The page's state: a build, the installation shown, the reference held, the units, and the way back.
 *
 * @param graph the inputs
 * @param program evaluates a reference when it is held
 * @param build what is open at first; its first installation is shown
 * @param name of the first reference
 */
export function createSession({ graph, program, build, name }: { graph: Graph; program: Program; build: Build; name: string }): Session {
  const first = build.installations[0]!.key;
  const heldAs = (heldName: string, held: Build, installation: string): Held => ({
    name: heldName,
    build: held,
    evaluation: program.run(inputsOf(held, installation)),
  });
  let state: State = {
    build,
    opened: build,
    installation: first,
    held: heldAs(name, build, first),
    units: { system: "SI", own: {} },
    done: [],
    undone: [],
    gesture: undefined,
  };
  let inputs = inputsOf(build, first);
  const listeners = new Set<(state: State, previous: State) => void>();

  const move = (change: Partial<State>): void => {
    const previous = state;
    state = { ...state, ...change };
    // Each installation stands against itself as it was held: what differs between them was moved by nobody.
    if (state.installation !== previous.installation && state.held === previous.held) {
      state = { ...state, held: heldAs(state.held.name, state.held.build, state.installation) };
    }
    if (state.build !== previous.build || state.installation !== previous.installation) {
      inputs = inputsOf(state.build, state.installation);
    }
    for (const listener of listeners) listener(state, previous);
  };

  const record = (entryName: string, before: Build, after: Build): Pick<State, "done" | "undone"> => ({
    done: [...state.done, { name: entryName, before, after, installation: state.installation }].slice(-longestHistory),
    undone: [],
  });

  const change = (after: Build, entryName?: string): void => {
    if (after === state.build) return;
    if (state.gesture) {
      move({ build: after });
      return;
    }
    const told = entryName ?? changeName(graph, state.units, inputs, inputsOf(after, state.installation));
    move({ build: after, ...record(told, state.build, after) });
  };

  const end = (): void => {
    if (!state.gesture) return;
    const { before } = state.gesture;
    const start = inputsOf(before, state.installation);
    const moved = differingInputs(graph, start, inputs).length > 0;
    move({
      gesture: undefined,
      ...(moved && record(changeName(graph, state.units, start, inputs), before, state.build)),
    });
  };

  const labelOf = (key: string): string => graph.inputs.find((input) => input.key === key)!.label;
  const here = (): string => installationOf(state.build, state.installation).label;

  return {
    get state() {
      return state;
    },
    get inputs() {
      return inputs;
    },
    subscribe: (listener) => {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    begin: (key) => {
      end();
      move({ gesture: { key, before: state.build } });
    },
    end,
    set: (key, value) => {
      if (Object.is(inputs[key], value)) return;
      change(withInput(state.build, state.installation, key, value));
    },
    reset: (key) => {
      const value = openedInputs(state)[key];
      if (!Object.is(inputs[key], value)) change(withInput(state.build, state.installation, key, value));
    },
    separate: (key) => {
      end();
      change(separated(state.build, state.installation, key), `${labelOf(key)}: own to ${here()}`);
    },
    rejoin: (key) => {
      end();
      change(rejoined(state.build, state.installation, key), `${labelOf(key)}: shared again`);
    },
    measure: (key, value, entryName) => {
      end();
      if (state.build.measured?.[state.installation]?.[key] === value) return;
      change(withMeasured(state.build, state.installation, key, value), entryName);
    },
    evaluate: (installation) => program.run(inputsOf(state.build, installation)),
    show: (installation) => {
      end();
      installationOf(state.build, installation);
      if (installation !== state.installation) move({ installation });
    },
    open: (next, heldName, { opened, installation } = { opened: next, installation: next.installations[0]!.key }) => {
      end();
      const held = heldAs(heldName, opened, installation);
      move({ build: next, opened, installation, held, done: [], undone: [] });
    },
    rename: (next) => {
      end();
      if (next !== state.build.name) change({ ...state.build, name: next }, `Renamed to ${next}`);
    },
    hold: (heldName) => move({ held: heldAs(heldName, state.build, state.installation) }),
    choose: (units) => move({ units }),
    undo: () => {
      end();
      const entry = state.done.at(-1);
      if (!entry) return undefined;
      move({
        build: entry.before,
        installation: entry.installation,
        done: state.done.slice(0, -1),
        undone: [...state.undone, entry],
      });
      return entry.name;
    },
    redo: () => {
      end();
      const entry = state.undone.at(-1);
      if (!entry) return undefined;
      move({
        build: entry.after,
        installation: entry.installation,
        done: [...state.done, entry],
        undone: state.undone.slice(0, -1),
      });
      return entry.name;
    },
  };
}

/** The values the build was opened with, in the installation shown. */
export function openedInputs({ opened, installation }: Pick<State, "opened" | "installation">): InputValues {
  return inputsOf(opened, installation);
}
