/** Frames for which what was jumped to is held in its place. */
const held = 12;

/**
 * Brings an element onto the screen and holds it there for a moment, while passages around it that were never laid out
 * take their true heights. What the reader does meanwhile ends it.
 */
export function arriveAt(element: Element, place?: ScrollIntoViewOptions): void {
  const started = performance.now();
  const leaving = new AbortController();
  for (const deed of ["wheel", "touchstart", "pointerdown", "keydown"]) {
    // The key that led here is still on its way.
    window.addEventListener(deed, ({ timeStamp }) => timeStamp > started && leaving.abort(), { signal: leaving.signal, passive: true });
  }
  let frames = held;
  const hold = (): void => {
    if (leaving.signal.aborted) return;
    element.scrollIntoView(place);
    frames -= 1;
    if (frames > 0) requestAnimationFrame(hold);
    else leaving.abort();
  };
  hold();
}

/** Arrives at what the page's address names, now and whenever a link names it. */
export function followLinks(): void {
  const arrive = (hash: string): void => {
    const target = document.getElementById(hash.slice(1));
    if (target) arriveAt(target);
  };
  document.addEventListener("click", (event) => {
    const link = event.target instanceof Element ? event.target.closest<HTMLAnchorElement>('a[href^="#"]') : null;
    // After the browser's own jump.
    if (link && !event.defaultPrevented) setTimeout(arrive, 0, link.hash);
  });
  if (location.hash) arrive(location.hash);
}
