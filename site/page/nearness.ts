/** Told whether an element is near the screen. */
export type Told = (near: boolean) => void;

/**
 * Watches an element within one section.
 *
 * @param element within the section
 * @param ahead how far off the screen is near, as a root margin
 * @param told at once when it is known, and at every change
 * @returns ends it
 */
export type Watch = (element: Element, ahead: string, told: Told) => () => void;

/** What comes near the screen and what leaves it. */
export interface Nearness {
  within(section: Element): Watch;
}

/** A section is near when any watched part of it can be: further than every watch looks ahead. */
const sectionAhead = "1200px 0px";

interface Watcher {
  readonly observer: IntersectionObserver;
  readonly told: Map<Element, Told>;
}

/**
 * Since the browser looks at every observed element in every frame in which something moved, elements are observed only
 * while their section is near.
 */
export function createNearness(): Nearness {
  const watchers = new Map<string, Watcher>();
  const changed = new Map<Element, (near: boolean) => void>();
  const sections = watcherOf(sectionAhead, changed);

  const watcherFor = (ahead: string): Watcher => {
    const known = watchers.get(ahead);
    if (known) return known;
    const told = new Map<Element, Told>();
    const watcher = { observer: watcherOf(ahead, told), told };
    watchers.set(ahead, watcher);
    return watcher;
  };

  return {
    within: (section) => {
      const watched = new Map<Element, Watcher>();
      let isNear: boolean | undefined;
      changed.set(section, (near) => {
        isNear = near;
        for (const [element, { observer, told }] of watched) {
          if (near) observer.observe(element);
          else {
            observer.unobserve(element);
            told.get(element)!(false);
          }
        }
      });
      sections.observe(section);
      return (element, ahead, told) => {
        const watcher = watcherFor(ahead);
        watcher.told.set(element, told);
        watched.set(element, watcher);
        if (isNear) watcher.observer.observe(element);
        else if (isNear === false) told(false);
        return () => {
          watcher.observer.unobserve(element);
          watcher.told.delete(element);
          watched.delete(element);
        };
      };
    },
  };
}

function watcherOf(rootMargin: string, told: ReadonlyMap<Element, Told>): IntersectionObserver {
  return new IntersectionObserver(
    (seen) => {
      for (const { target, isIntersecting } of seen) told.get(target)?.(isIntersecting);
    },
    { rootMargin },
  );
}
