import type { Desk } from "./desk";
import type { Moves } from "./moves";
import { refusingRoots } from "./refused";

/** The last setting of an input at which a line had an answer. */
export interface Setting {
  readonly key: string;
  readonly value: unknown;
}

/** Where lines lost their answer while one input was moved. */
export interface Workable {
  /** @param root key of the cell that has no answer */
  of(root: string): Setting | undefined;
  /** Looks for answers lost and found; once a frame, after the values. */
  update(): void;
}

export function createWorkable(desk: Desk, moves: Moves): Workable {
  const { session } = desk;
  let lost = new Map<string, Setting>();
  let before = session.inputs;
  let refusing = new Set<string>();
  return {
    of: (root) => lost.get(root),
    update: () => {
      const now = new Set(refusingRoots(desk).map(({ key }) => key));
      const [moved, ...others] = moves.keys;
      const kept = new Map([...lost].filter(([root]) => now.has(root)));
      if (moved !== undefined && others.length === 0) {
        for (const root of now) if (!refusing.has(root)) kept.set(root, { key: moved, value: before[moved] });
      }
      lost = kept;
      refusing = now;
      before = session.inputs;
    },
  };
}
