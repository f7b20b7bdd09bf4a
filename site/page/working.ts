import { h } from "../dom";

/** Longest time for which nothing is said, in milliseconds. */
const patience = 120;

/** The word "working", only where values are waited for longer than a moment; what is on the page stays. */
export function workingWord(root: HTMLElement, settled: () => Promise<void>): { begin(): void; end(): void } {
  const word = h("p", { class: "working-word", role: "status" });
  document.body.append(word);
  let timer: number | undefined;
  const end = (): void => {
    window.clearTimeout(timer);
    timer = undefined;
    word.textContent = "";
    root.classList.remove("is-working");
  };
  const begin = (): void => {
    timer ??= window.setTimeout(async () => {
      // What came back to where it was settles without a word.
      const grace = new Promise<"late">((resolve) => window.setTimeout(() => resolve("late"), 50));
      const settling = settled().then(end);
      if ((await Promise.race([settling, grace])) !== "late") return;
      word.textContent = "working …";
      root.classList.add("is-working");
    }, patience);
  };
  return { begin, end };
}
