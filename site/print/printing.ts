import type { Program } from "../../lib/graph";
import { figuresOf } from "../../worksheets/sheet";
import { h } from "../dom";
import type { Desk } from "../page/desk";
import { loadTypesetter } from "../page/math";

/**
 * Prints the notebook as a document of its own, of what the reader chooses. A printer does not wait: the document must be made within the browser's
 * event, so all that it takes is fetched when the page is first used, and not before. Whoever prints comes to the printer
 * by a key or a pointer.
 *
 * @param desk what is on the page
 * @param program evaluates the inputs
 * @param version of airledger
 * @returns asks what to print and prints it, as soon as what that takes has come
 */
export function printAsDocument(desk: Desk, program: Program, version: string): () => Promise<void> {
  const place = h("div", { class: "folio" }, h("p", {}, "What it takes to print had not been fetched yet. Print once more."));
  document.body.append(place);
  let ready: Promise<{ open(): void }> | undefined;
  const prepare = async (): Promise<{ open(): void }> => {
    const [{ paperFor }, { printChoice }] = await Promise.all([import("./paper"), import("./choice"), loadTypesetter(), ...desk.sheets.map(figuresOf)]);
    const choice = printChoice(desk, () => window.print());
    const paper = paperFor(desk, program, version, choice.printed);
    document.body.append(choice.element);
    place.replaceChildren();
    window.addEventListener("beforeprint", () => place.replaceChildren(...paper()));
    window.addEventListener("afterprint", () => place.replaceChildren());
    return choice;
  };
  const prepared = (): Promise<{ open(): void }> => {
    ready ??= prepare().catch((error) => {
      ready = undefined;
      throw error;
    });
    return ready;
  };
  whenUsed(prepared);
  return async () => {
    const choice = await prepared().catch(() => undefined);
    if (choice) choice.open();
    // Without what it takes, the document says so itself.
    else window.print();
  };
}

/** Does something once, when the page is first used; and again at the next use where it could not be done. */
function whenUsed(work: () => Promise<unknown>): void {
  const uses = ["pointermove", "pointerdown", "keydown", "wheel", "scroll"] as const;
  const used = (): void => {
    for (const use of uses) window.removeEventListener(use, used);
    work().catch(listen);
  };
  const listen = (): void => {
    for (const use of uses) window.addEventListener(use, used, { passive: true });
  };
  listen();
}
