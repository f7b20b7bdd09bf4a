import type { Desk } from "./desk";

/** Lines of the hand's own sheet that stay lit with it. */
const lit = 3;

/**
 * While a finger is down on a slider or a number, all but its line, the first lines of its sheet that follow from it, and
 * the echo are dimmed: the eye stays where the hand is. A mouse hides nothing and dims nothing.
 */
export function dimUnderTouch(desk: Desk, root: HTMLElement): void {
  let marked: readonly Element[] = [];
  const release = (): void => {
    root.classList.remove("hand-down");
    for (const element of marked) element.classList.remove("under-hand");
    marked = [];
  };
  document.addEventListener("pointerdown", (event) => {
    if (event.pointerType !== "touch" || !(event.target instanceof Element)) return;
    const grip = event.target.closest(".slider, .handle, .step-key");
    const key = grip?.getAttribute("data-input") ?? grip?.closest(".line")?.getAttribute("data-key");
    if (!grip || !key) return;
    const sheet = grip.closest(".sheet");
    const following = followersOf(desk, key);
    const own = grip.closest(".line, .prose")!;
    const lines = [...(sheet?.querySelectorAll(".line") ?? [])].filter((line) => following.has(line.getAttribute("data-key") ?? ""));
    const below = lines.filter((line) => own.compareDocumentPosition(line) & Node.DOCUMENT_POSITION_FOLLOWING);
    marked = [own, ...[...below, ...lines].slice(0, lit)];
    for (const element of marked) element.classList.add("under-hand");
    root.classList.add("hand-down");
  });
  for (const end of ["pointerup", "pointercancel"] as const) document.addEventListener(end, release);
}

/** Keys of everything that follows from a node. */
export function followersOf({ users }: Pick<Desk, "users">, key: string): ReadonlySet<string> {
  const found = new Set<string>();
  const walk = (from: string): void => {
    for (const { key: next } of users.get(from) ?? []) {
      if (found.has(next)) continue;
      found.add(next);
      walk(next);
    }
  };
  walk(key);
  return found;
}
