import type { Session } from "../state";

/** Rest after which everything is brought up to date at once, in milliseconds. */
const rest = 120;

/**
 * Brings up to date what stands beside the sheets. While the hand moves, one piece in each frame: nobody reads all of these
 * numbers sixty times a second, and the sheets need the frame. When the hand rests or lets go, all at once.
 *
 * @param session tells whether the hand moves
 * @param pieces of work in their order; a movement of the hand begins with the first
 */
export function inTurns(session: Pick<Session, "state">, pieces: readonly (() => void)[]): { refresh(): void } {
  let next = 0;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let gesture: unknown;
  const all = (): void => {
    for (const piece of pieces) piece();
  };
  return {
    refresh: () => {
      clearTimeout(timer);
      const now = session.state.gesture?.key;
      if (now !== gesture) next = 0;
      gesture = now;
      if (now === undefined) return all();
      pieces[next]!();
      next = (next + 1) % pieces.length;
      timer = setTimeout(all, rest);
    },
  };
}
