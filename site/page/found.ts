import type { Node } from "../../lib/graph";
import type { Desk } from "./desk";

/** Most that are listed. */
const longest = 12;

/**
 * The lines whose name, symbol or sheet holds every word typed, in any order and case: those in
 * whose name they stand together, or begin more words, come first, then names that begin with the first word, then by the order of the sheets.
 */
export function foundLines({ graph, places }: Pick<Desk, "graph" | "places">, text: string): readonly Node[] {
  const words = plain(text).split(" ").filter((word) => word !== "");
  if (words.length === 0) return [];
  return graph.nodes
    .filter(({ key }) => places.has(key))
    .flatMap((node, order) => {
      const name = plain(node.label);
      const around = `${name} ${plain(symbolOf(node))} ${plain(places.get(node.key)!.sheet.title)}`;
      if (!words.every((word) => around.includes(word))) return [];
      const starts = words.filter((word) => name.split(" ").some((part) => part.startsWith(word))).length;
      const together = name.includes(words.join(" ")) ? 1 : 0;
      const rank = (name.startsWith(words[0]!) ? 0 : 1) - 2 * starts - 2 * together;
      return { node, order, rank };
    })
    .sort((a, b) => a.rank - b.rank || a.order - b.order)
    .slice(0, longest)
    .map(({ node }) => node);
}

function symbolOf(node: Node): string {
  return node.type === "choice" || node.type === "table" ? "" : (node.symbol ?? "").replace(/\\(?:dot|mathrm)|[\\{}]/g, "");
}

/** Small letters without accents, hyphens as spaces. */
function plain(text: string): string {
  return text.normalize("NFD").replace(/\p{M}/gu, "").toLowerCase().replace(/[–—-]/g, " ").trim();
}
