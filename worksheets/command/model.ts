import type { Cell, Graph, Program } from "../../lib/graph";
import type { Sheet, Tabulation } from "../sheet";

/** What the command needs to know of the worksheets. */
export interface CommandModel {
  readonly graph: Graph;
  readonly program: Program;
  /** Sheets in reading order. */
  readonly sheets: readonly CommandSheet[];
}

export interface CommandSheet {
  readonly title: string;
  /** The sheet's own cells, in the order in which they are printed. */
  readonly cells: readonly Cell[];
  /** How structured values are laid out. */
  readonly tabulations: readonly Tabulation[];
  /** When its limits count; always, if absent. */
  readonly applies?: NonNullable<Sheet["applies"]>;
}

/**
 * A sheet as the command prints it: cells that stand on a line of their own first, in reading order, then the others
 * in working order.
 *
 * @param sheet the sheet
 * @param cells all cells that belong to it
 * @param graph which knows the working order
 */
export function commandSheet({ title, blocks, applies }: Sheet, cells: readonly Cell[], graph: Graph): CommandSheet {
  const shown = blocks.flatMap((block) => {
    if (block.type === "line") return [block.node.key];
    return block.type === "tabulation" ? [block.tabulation.of.key] : [];
  });
  const first = new Map(shown.map((key, i) => [key, i - shown.length] as const).reverse());
  const place = ({ key }: Cell) => first.get(key) ?? graph.position.get(key)!;
  const tabulations = blocks.flatMap((block) => (block.type === "tabulation" ? [block.tabulation] : []));
  return { title, cells: cells.toSorted((a, b) => place(a) - place(b)), tabulations, ...(applies && { applies }) };
}
