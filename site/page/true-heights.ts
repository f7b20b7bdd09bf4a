/** Passages that are laid out in one frame to learn their heights. */
const together = 2;
/** Rest after the page has changed its width before heights are learned anew, in milliseconds. */
const rest = 400;

/**
 * Lays every passage out once, a few in a frame and only while nothing happens, so that the browser knows how high those
 * off the screen are: the scroll bar tells the truth, and a jump lands where it should. Again when the width changes.
 */
export function learnHeights(main: HTMLElement): void {
  let unknown: HTMLElement[] = [];
  let timer: number | undefined;
  let width = 0;

  const learn = (): void => {
    const some = unknown.splice(0, together);
    for (const passage of some) passage.classList.add("is-laid-out");
    requestAnimationFrame(() =>
      requestAnimationFrame(() => {
        for (const passage of some) passage.classList.remove("is-laid-out");
        if (unknown.length > 0) whenIdle(learn);
      }),
    );
  };
  const begin = (): void => {
    const busy = unknown.length > 0;
    unknown = [...main.querySelectorAll<HTMLElement>(".passage")];
    if (!busy) whenIdle(learn);
  };
  new ResizeObserver(([entry]) => {
    const next = Math.round(entry!.contentRect.width);
    if (next === width) return;
    width = next;
    window.clearTimeout(timer);
    timer = window.setTimeout(begin, rest);
  }).observe(main);
}

/** Not every browser tells when it is idle. */
function whenIdle(work: () => void): void {
  if ("requestIdleCallback" in window) window.requestIdleCallback(work);
  else setTimeout(work, 50);
}
