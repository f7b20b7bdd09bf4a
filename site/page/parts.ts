import type { Part } from "./desk";
import type { Watch } from "./nearness";

/** The parts of the page, found by the nodes they watch. */
export interface Parts extends Gathering {
  /**
   * Parts that stand within one element, and are on the screen when it is.
   *
   * @param watch tells when that is
   */
  gathered(element: Element, watch: Watch): Gathering;
  /** Brings up to date the parts that watch any of the keys: those near the screen now, the others when the hand rests. */
  refresh(keys: Iterable<string>): void;
  refreshAll(): void;
  /** Keys that the parts near the screen watch; the same set until other parts are. */
  near(): ReadonlySet<string>;
}

export interface Gathering {
  add<P extends Part>(part: P): P;
}

/** Parts this far off the screen are kept up to date in every frame. */
const ahead = "100px 0px";
/** Rest after which the parts off the screen follow, in milliseconds. */
const rest = 120;

/** @param moving whether the hand moves */
export function createParts(moving: () => boolean): Parts {
  const all: Part[] = [];
  const byKey = new Map<string, Part[]>();
  const away = new Set<Part>();
  const late = new Set<Part>();
  let timer: number | undefined;
  let near: ReadonlySet<string> | undefined;

  const catchUp = (): void => {
    window.clearTimeout(timer);
    for (const part of late) part.refresh();
    late.clear();
  };
  /** Brings up to date the part near the screen that has waited longest. */
  const nextInTurn = (): void => {
    for (const part of late) {
      if (away.has(part)) continue;
      late.delete(part);
      part.refresh();
      return;
    }
  };
  const add = <P extends Part>(part: P): P => {
    near = undefined;
    all.push(part);
    for (const key of new Set(part.watches)) {
      const watching = byKey.get(key);
      if (watching) watching.push(part);
      else byKey.set(key, [part]);
    }
    return part;
  };

  return {
    add,
    gathered: (element, watch) => {
      const parts: Part[] = [];
      let isNear = true;
      watch(element, ahead, (nearNow) => {
        isNear = nearNow;
        near = undefined;
        for (const part of parts) {
          if (!isNear) away.add(part);
          else if (away.delete(part) && late.delete(part)) part.refresh();
        }
      });
      return {
        add: (part) => {
          parts.push(part);
          if (!isNear) away.add(part);
          return add(part);
        },
      };
    },
    refresh: (keys) => {
      const due = new Set<Part>();
      for (const key of keys) for (const part of byKey.get(key) ?? []) due.add(part);
      const turns = moving();
      for (const part of due) {
        if (away.has(part) || (turns && part.takesTurns)) late.add(part);
        else {
          late.delete(part);
          part.refresh();
        }
      }
      if (turns) nextInTurn();
      window.clearTimeout(timer);
      timer = window.setTimeout(catchUp, rest);
    },
    refreshAll: () => {
      late.clear();
      for (const part of all) part.refresh();
    },
    near: () => {
      near ??= new Set(all.filter((part) => !away.has(part)).flatMap(({ watches }) => watches));
      return near;
    },
  };
}
