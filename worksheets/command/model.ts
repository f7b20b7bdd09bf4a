import type { Cell, Graph, Program } from "../../lib/graph";

/** What the command needs to know of the worksheets. */
export interface CommandModel {
  readonly graph: Graph;
  readonly program: Program;
  /** Sheets in reading order, each with its own cells. */
  readonly sheets: readonly CommandSheet[];
}

export interface CommandSheet {
  readonly title: string;
  readonly cells: readonly Cell[];
}
