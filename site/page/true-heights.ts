import { type Patience, whenIdle } from "../runtime";
import { layOut, release, sheetOf } from "./passage";

/** Passages that are laid out in one frame to learn their heights. */
const together = 2;
/** Rest after the page has changed its width, or while a hand moves, before heights are learned, in milliseconds. */
const rest = 400;
const patience: Patience = { blind: 50 };

/**
 * Lays every passage out once, a few in a frame and only while nothing happens, so that the browser knows how high those
 * off the screen are: the scroll bar tells the truth, and a jump lands where it should. Again when the width changes. What
 * lies above the screen waits until it lies below it, since its height moves what the reader looks at.
 *
 * @param moving whether a hand moves, which needs the frames
 */
export function learnHeights(main: HTMLElement, moving: () => boolean): void {
  let unknown: HTMLElement[] = [];
  let learning = false;
  let timer: number | undefined;
  let width = 0;

  const learn = (): void => {
    if (moving()) {
      learning = false;
      timer = window.setTimeout(goOn, rest);
      return;
    }
    unknown = unknown.filter(isSkipped);
    const some = unknown.filter(isBelow).slice(0, together);
    learning = some.length > 0;
    if (!learning) {
      if (unknown.length > 0) window.addEventListener("scroll", goOn, { once: true, passive: true });
      return;
    }
    unknown = unknown.filter((passage) => !some.includes(passage));
    layOut(some, "is-laid-out");
    requestAnimationFrame(() =>
      requestAnimationFrame(() => {
        release(some, "is-laid-out");
        whenIdle(learn, patience);
      }),
    );
  };
  const goOn = (): void => {
    if (learning) return;
    learning = true;
    whenIdle(learn, patience);
  };
  new ResizeObserver(([entry]) => {
    const next = Math.round(entry!.contentRect.width);
    if (next === width) return;
    width = next;
    window.clearTimeout(timer);
    timer = window.setTimeout(() => {
      unknown = [...main.querySelectorAll<HTMLElement>(".passage")];
      goOn();
    }, rest);
  }).observe(main);
}

/** Those on the screen are laid out anyway; what the reader looks at is not touched. */
function isSkipped(passage: HTMLElement): boolean {
  return passage.firstElementChild?.checkVisibility({ contentVisibilityAuto: true }) === false;
}

/** Asks for the place of a passage only where its sheet is laid out: elsewhere that would lay out the sheet. */
function isBelow(passage: HTMLElement): boolean {
  const { top, bottom } = sheetOf(passage).getBoundingClientRect();
  if (top > window.innerHeight || bottom < 0) return top > window.innerHeight;
  return passage.getBoundingClientRect().top > window.innerHeight;
}
