import { preference } from "../state";
import type { Desk } from "./desk";
import type { Moves } from "./moves";
import type { Standings } from "./standings";

/** Rest after the first release before it is told what it did, in milliseconds. */
const settling = 400;

/**
 * After the first number that this reader ever moves: a sentence under the hand that tells what it did elsewhere. It
 * stands until it is put away, and never comes again.
 */
export function tellFirstMove(desk: Desk, standings: Standings, moves: Moves): void {
  const told = preference("first move", ["untold", "told"]);
  if (told.value === "told") return;
  const end = desk.session.subscribe((state, previous) => {
    if (state.gesture || state.done.length <= previous.done.length) return;
    const hand = document.activeElement;
    window.setTimeout(async () => {
      const [key] = moves.keys;
      // Needed once in a reader's life, so not part of the first load.
      const { firstMoveNote, firstMoveWords } = await import("./first-move-words");
      const words = firstMoveWords(desk, moves, standings);
      const place = key === undefined ? null : placeOf(hand, key);
      if (words === "" || !place || told.value === "told" || desk.session.state.gesture) return;
      told.set("told");
      end();
      place.after(firstMoveNote(words, hand));
    }, settling);
  });
}

/** The sentence or line in which the hand was, or the input's own line. */
function placeOf(hand: Element | null, key: string): Element | null {
  const held = hand?.getAttribute("data-input") === key ? hand.closest(".prose, .line, .figure-place") : null;
  return held ?? document.getElementById(`line-${key}`);
}
