import { h } from "../dom";
import { applies, cellsOf, type Desk } from "./desk";
import { feltBy } from "./felt";
import type { Moves } from "./moves";
import type { Standings } from "./standings";

/** What is said where nothing that counts has moved; sheets that do not count and did move are named, and lead there. */
export function echoNothing(desk: Desk, standings: Standings, moves: Moves): { readonly element: HTMLElement; show(nothing: boolean): void } {
  const element = h("p", { class: "echo-nothing" });
  let told = "";
  return {
    element,
    show: (nothing) => {
      const asides = nothing
        ? desk.sheets.filter((sheet) => !applies(sheet, desk.values) && cellsOf(sheet, desk.places).some((cell) => feltBy(desk, standings, moves, cell) !== undefined))
        : [];
      const words = nothing ? ["nothing", ...asides.map(({ key }) => key)].join(" ") : "";
      if (words === told) return;
      told = words;
      if (!nothing) return element.replaceChildren();
      const links = asides.flatMap(({ key, title }, i) => [i === 0 ? " " : " and ", h("a", { href: `#${key}` }, title)]);
      const count = asides.length === 1 ? "did; that sheet does not count" : "did; those sheets do not count";
      element.replaceChildren("Nothing outside this sheet has moved.", ...links, asides.length > 0 ? ` ${count} in this installation.` : "");
    },
  };
}
