import { type Cell, type Evaluation, type InputValues, isRefusal, outsideRange, type Program, type QuantityInput } from "../../lib/graph";
import { type Track, trackOf, type Zone, type Zones } from "../control";
import { countingCells, type Desk, nodeOf } from "./desk";

/** Places along a track that are tried at first, and halvings to each edge between two of them. */
const [places, halvings] = [16, 5];
/** Rest before a look begins, in milliseconds. */
const rest = 250;

/**
 * Looks ahead along the slider that is pointed at or focused: where would lines lose their answer, or leave the span of
 * their model? It looks when nothing moves, a setting at a time, and forgets what it found when another input moves.
 *
 * @param desk what is on the page
 * @param program tries settings
 */
export function createZones(desk: Pick<Desk, "session" | "graph" | "sheets" | "places" | "values">, program: Program): Zones & { start(): void } {
  const { session } = desk;
  const shows = new Map<string, (zones: readonly Zone[]) => void>();
  const found = new Map<string, readonly Zone[]>();
  let wanted: string | undefined;
  let look: Iterator<undefined, readonly Zone[]> | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;

  const stop = (): void => {
    clearTimeout(timer);
    look = undefined;
  };
  const step = (): void => {
    const { done, value } = look!.next();
    if (!done) {
      timer = setTimeout(step, 0);
      return;
    }
    look = undefined;
    found.set(wanted!, value);
    shows.get(wanted!)?.(value);
  };
  const begin = (): void => {
    if (wanted === undefined || found.has(wanted) || session.state.gesture) return;
    look = zonesAlong({ program, inputs: session.inputs, input: nodeOf(desk.graph, wanted) as QuantityInput, cells: countingCells(desk) });
    step();
  };
  const soon = (): void => {
    stop();
    timer = setTimeout(begin, rest);
  };
  const forget = (but: string | undefined): void => {
    for (const key of [...found.keys()].filter((each) => each !== but)) {
      found.delete(key);
      shows.get(key)?.([]);
    }
  };

  return {
    watch: (key, show) => void shows.set(key, show),
    ask: (key) => {
      if (wanted === key) return;
      wanted = key;
      soon();
    },
    start: () => {
      session.subscribe((state, previous) => {
        const moved = state.build !== previous.build || state.installation !== previous.installation;
        if (moved) forget(state.gesture && state.installation === previous.installation ? state.gesture.key : undefined);
        if (moved || state.gesture !== previous.gesture) soon();
      });
    },
  };
}

interface Looking {
  readonly program: Program;
  readonly inputs: InputValues;
  readonly input: QuantityInput;
  /** The lines that count. */
  readonly cells: readonly Cell[];
}

/** The zones of an input's track; yields after each setting tried. What is amiss all along it is not the input's doing. */
export function* zonesAlong({ program, inputs, input, cells }: Looking): Generator<undefined, readonly Zone[]> {
  const track = trackOf(input);
  const start = program.run(inputs);
  const troublesAt = (place: number): ReadonlyMap<Cell, string> => {
    const value = track.value(place);
    const { evaluation } = program.rerun(start, { [input.key]: value });
    return new Map(cells.flatMap((cell) => troubleOf(cell, evaluation)));
  };
  const tried: { readonly place: number; readonly troubles: ReadonlyMap<Cell, string> }[] = [];
  for (const place of placesOf(track)) {
    tried.push({ place, troubles: troublesAt(place) });
    yield;
  }
  const always = [...tried[0]!.troubles.keys()].filter((cell) => tried.every(({ troubles }) => troubles.has(cell)));
  const without = (troubles: ReadonlyMap<Cell, string>) => [...troubles].filter(([cell]) => !always.includes(cell));
  const isClear = (troubles: ReadonlyMap<Cell, string>): boolean => without(troubles).length === 0;

  const zones: { from: number; to: number; words: string }[] = [];
  for (const [i, { place, troubles }] of tried.entries()) {
    if (isClear(troubles)) continue;
    let [from, to] = [place, place];
    for (const beside of [tried[i - 1], tried[i + 1]]) {
      if (!beside) continue;
      let [clear, amiss] = [beside.place, place];
      for (let n = 0; n < halvings && isClear(beside.troubles); n += 1) {
        const middle = (clear + amiss) / 2;
        if (isClear(troublesAt(middle))) clear = middle;
        else amiss = middle;
        yield;
      }
      const end = isClear(beside.troubles) ? amiss : beside.place;
      [from, to] = [Math.min(from, end), Math.max(to, end)];
    }
    const last = zones.at(-1);
    const words = wordsOf(without(troubles).map(([, each]) => each));
    // Neighbours that are amiss for the same reason make one zone.
    if (last && last.words === words && from <= last.to) last.to = to;
    else zones.push({ from: Math.max(from, last?.to ?? 0), to, words });
  }
  return zones;
}

/** Places along a track, its ends among them; for few steps, each step once. */
function placesOf(track: Track): readonly number[] {
  const even = Array.from({ length: places + 1 }, (_, i) => i / places);
  return [...new Set(even.map((place) => track.position(track.value(place))))];
}

function troubleOf(cell: Cell, evaluation: Evaluation): readonly (readonly [Cell, string])[] {
  const value = evaluation.get(cell);
  if (isRefusal(value)) return value.root === cell.key ? [[cell, `${cell.label} has no answer`]] : [];
  return outsideRange(cell, evaluation).length > 0 ? [[cell, `${cell.label} is outside its model's range`]] : [];
}

function wordsOf(troubles: readonly string[]): string {
  const [first = "", ...others] = troubles;
  return others.length === 0 ? first : `${first}, and ${others.length} more`;
}
