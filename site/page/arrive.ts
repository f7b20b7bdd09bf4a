import { layOut, release } from "./passage";

/** Frames for which what was jumped to is held in its place. */
const held = 12;
/** Most passages that are laid out ahead of a jump. */
const most = 5;

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
  const around = layOutAround(element);
  leaving.signal.addEventListener("abort", () => {
    release(around, "is-near");
  });
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
  const targetOf = (hash: string): Element | null => document.getElementById(hash.slice(1));
  const arrive = (hash: string): void => {
    const target = targetOf(hash);
    if (target) arriveAt(target);
  };
  document.addEventListener("click", (event) => {
    const link = event.target instanceof Element ? event.target.closest<HTMLAnchorElement>('a[href^="#"]') : null;
    if (!link || event.defaultPrevented) return;
    const target = targetOf(link.hash);
    if (target) layOutAround(target);
    // After the browser's own jump.
    setTimeout(arrive, 0, link.hash);
  });
  if (location.hash) arrive(location.hash);
}

/**
 * Lays out the passages that will stand on the screen with an element, before the jump: the browser finds out that they
 * are to be seen a frame after it shows them, and that frame would be blank.
 */
function layOutAround(element: Element): readonly Element[] {
  const passages = [...document.querySelectorAll(".passage")];
  const first = passages.findIndex((passage) => passage.contains(element) || element.contains(passage));
  if (first < 0) return [];
  const around = passages.slice(Math.max(0, first - 1), first);
  let room = window.innerHeight;
  for (const passage of passages.slice(first, first + most)) {
    if (room <= 0) break;
    layOut([passage], "is-near");
    around.push(passage);
    room -= passage.getBoundingClientRect().height;
  }
  layOut(around, "is-near");
  return around;
}
