import type { Session } from "../state";

/** Rest after which the others follow, and the time between two of them then, in milliseconds. */
const rest = 120;
const between = 17;

/**
 * Brings up to date what stands beside the sheets. While the hand moves, one piece in each frame: nobody reads all of these
 * numbers sixty times a second, and the sheets need the frame. While it rests the others follow one by one; when it lets
 * go, all at once.
 *
 * @param session tells whether the hand moves
 * @param pieces of work in their order; a movement of the hand begins with the first
 */
export function inTurns(session: Pick<Session, "state">, pieces: readonly (() => void)[]): { refresh(): void } {
  let next = 0;
  let behind = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let gesture: unknown;
  const bringOne = (): void => {
    pieces[next]!();
    next = (next + 1) % pieces.length;
    behind -= 1;
  };
  const bringOthers = (): void => {
    if (session.state.gesture !== undefined) bringOne();
    else while (behind > 0) bringOne();
    if (behind > 0) timer = setTimeout(bringOthers, between);
  };
  return {
    refresh: () => {
      clearTimeout(timer);
      const now = session.state.gesture?.key;
      if (now !== gesture) next = 0;
      gesture = now;
      behind = pieces.length;
      if (now === undefined) return bringOthers();
      bringOne();
      timer = setTimeout(bringOthers, rest);
    },
  };
}
