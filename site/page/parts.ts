import type { Part } from "./desk";

/** The parts of the page, found by the nodes they watch. */
export interface Parts {
  add<P extends Part>(part: P): P;
  /** Brings up to date the parts that watch any of the keys. */
  refresh(keys: Iterable<string>): void;
  refreshAll(): void;
}

export function createParts(): Parts {
  const all: Part[] = [];
  const byKey = new Map<string, Part[]>();
  return {
    add: (part) => {
      all.push(part);
      for (const key of new Set(part.watches)) {
        const watching = byKey.get(key);
        if (watching) watching.push(part);
        else byKey.set(key, [part]);
      }
      return part;
    },
    refresh: (keys) => {
      const due = new Set<Part>();
      for (const key of keys) for (const part of byKey.get(key) ?? []) due.add(part);
      for (const part of due) part.refresh();
    },
    refreshAll: () => {
      for (const part of all) part.refresh();
    },
  };
}
