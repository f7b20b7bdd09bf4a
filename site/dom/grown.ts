import { h, setText } from "./h";

/**
 * A paragraph whose words change often: it lays out itself alone, and what stands below it only in the frame in which it
 * takes another number of lines.
 *
 * @param name class of the paragraph
 */
export function grownText(name: string): { readonly element: HTMLElement; show(text: string): void } {
  const words = h("span", { class: "grown" });
  const element = h("p", { class: `${name} grows` }, h("span", { class: "boxed-lines" }, words));
  let height = -1;
  new ResizeObserver(([entry]) => {
    const [size] = entry!.borderBoxSize;
    if (size === undefined || size.blockSize === height) return;
    height = size.blockSize;
    element.style.height = `${height}px`;
  }).observe(words);
  return { element, show: (text) => setText(words, text) };
}
