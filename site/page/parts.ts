import { frameAllowance } from "./allowance";
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
  /** Brings up to date the parts that watch any of the keys: those near the screen now, or soon; the others when the hand rests. */
  refresh(keys: Iterable<string>): void;
  refreshAll(): void;
  /** Keys that the parts near the screen watch; the same set until other parts are. */
  near(): ReadonlySet<string>;
}

export interface Gathering {
  add<P extends Part>(part: P): P;
}

/** Parts this far off the screen are kept up to date while the hand moves. */
const ahead = "100px 0px";
/** Rest after which the parts off the screen follow, in milliseconds. */
const rest = 120;
/** Time for them at once while the hand is down, and between two such times, in milliseconds. */
const portion = 1;
const between = 17;
/** Time in one frame to write into parts that follow a moving hand, in milliseconds; to lay out and paint what is written takes four times as long. */
const writing = 0.25;

/**
 * While the hand moves, the part that it holds and the figures follow in every frame, and of the others near the screen as
 * many as there is time for; what has waited longest comes first in the next. On a fast machine that is all of them.
 *
 * @param hand key of the input that the hand moves, if it moves
 */
export function createParts(hand: () => string | undefined): Parts {
  const all: Part[] = [];
  const byKey = new Map<string, Part[]>();
  const everyFrame: Part[] = [];
  const allowance = frameAllowance(writing);
  const away = new Set<Part>();
  /** Behind their values, in the order in which they came to be. */
  const late = new Set<Part>();
  let timer: number | undefined;
  let continues = false;
  let near: ReadonlySet<string> | undefined;

  const bring = (part: Part): void => {
    late.delete(part);
    part.refresh();
  };
  /** Brings what is left, once nothing has changed for a while: in portions, while the hand may move on. */
  const catchUp = (): void => {
    const start = performance.now();
    for (const part of late) {
      if (hand() !== undefined && performance.now() - start > portion) {
        timer = window.setTimeout(catchUp, between);
        return;
      }
      bring(part);
    }
  };
  const bringNear = (parts: Iterable<Part>): void => {
    for (const part of parts) if (late.has(part) && !away.has(part)) bring(part);
  };
  const continueNext = (): void => {
    if (continues) return;
    continues = true;
    requestAnimationFrame(() => {
      continues = false;
      allowance.spend(bringSome);
    });
  };
  /** Brings what there is time for in this frame, one at least, and leaves the rest to the next. */
  const bringSome = (): void => {
    for (const part of late) {
      if (away.has(part)) continue;
      if (allowance.isSpent()) {
        continueNext();
        return;
      }
      bring(part);
    }
  };
  const add = <P extends Part>(part: P): P => {
    near = undefined;
    all.push(part);
    if (part.everyFrame) everyFrame.push(part);
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
      for (const key of keys) for (const part of byKey.get(key) ?? []) late.add(part);
      const key = hand();
      if (key === undefined) bringNear(late);
      else {
        allowance.spend(() => {
          bringNear((byKey.get(key) ?? []).filter(isHeld));
          bringNear(everyFrame);
          bringSome();
        });
      }
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

function isHeld({ element }: Part): boolean {
  return element.contains(document.activeElement);
}
