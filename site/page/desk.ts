import type { Cell, Evaluation, Graph, Node } from "../../lib/graph";
import { holds, type Sheet } from "../../worksheets/sheet";
import type { Controlled } from "../control";

/** Where a node stands on the page. */
export interface Place {
  readonly sheet: Sheet;
  /** The sheet's letter. */
  readonly letter: string;
  /** Id of its line. */
  readonly id: string;
}

/** What every part of the page works with. */
export interface Desk extends Controlled {
  readonly graph: Graph;
  readonly sheets: readonly Sheet[];
  /** Present values. */
  readonly values: Pick<Evaluation, "get">;
  /** First line of each node that has one. */
  readonly places: ReadonlyMap<string, Place>;
  /** Cells that use a node, by its key. */
  readonly users: ReadonlyMap<string, readonly Cell[]>;
}

/** A piece of the page that shows some values. */
export interface Part {
  readonly element: HTMLElement;
  /** Keys of the nodes whose change it shows. */
  readonly watches: readonly string[];
  /** Brings it up to date; writes only what differs. */
  refresh(): void;
  /** Whether it follows a moving hand in every frame, however little time there is. */
  readonly everyFrame?: boolean;
}

export function placesOf(sheets: readonly Sheet[]): ReadonlyMap<string, Place> {
  const places = new Map<string, Place>();
  for (const [index, sheet] of sheets.entries()) {
    for (const block of sheet.blocks) {
      if (block.type !== "line" || places.has(block.node.key)) continue;
      places.set(block.node.key, { sheet, letter: sheetLetter(index), id: `line-${block.node.key}` });
    }
  }
  return places;
}

export function usersOf(graph: Graph): ReadonlyMap<string, readonly Cell[]> {
  const users = new Map<string, Cell[]>();
  for (const cell of graph.cells) {
    for (const key of new Set(operandKeys(cell))) users.set(key, [...(users.get(key) ?? []), cell]);
  }
  return users;
}

/** Keys of what a cell's value and limits stand on. */
export function operandKeys(cell: Cell): readonly string[] {
  const bounds = cell.limits.flatMap(({ bound }) => (typeof bound === "number" ? [] : [bound.key]));
  return [...Object.values(cell.from).map(({ key }) => key), ...bounds];
}

export function sheetLetter(index: number): string {
  return String.fromCharCode(65 + index);
}

/** Whether a sheet counts with the present choice. */
export function applies(sheet: Sheet, values: Pick<Evaluation, "get">): boolean {
  return holds(sheet.applies, values);
}

const cellsKnown = new WeakMap<ReadonlyMap<string, Place>, Map<Sheet, readonly Cell[]>>();

/** The cells that stand as lines on a sheet and are at home there. Asked several times in a frame, so found once. */
export function cellsOf(sheet: Sheet, places: ReadonlyMap<string, Place>): readonly Cell[] {
  const known = cellsKnown.get(places) ?? new Map<Sheet, readonly Cell[]>();
  cellsKnown.set(places, known);
  const found = known.get(sheet);
  if (found) return found;
  const own = sheet.blocks.flatMap((block) => (block.type === "line" && block.node.type === "cell" ? [block.node] : []));
  const cells = [...new Set(own)].filter((cell) => places.get(cell.key)?.sheet === sheet);
  known.set(sheet, cells);
  return cells;
}

/** The cells that stand as lines on the sheets that count at present. */
export function countingCells(desk: Pick<Desk, "sheets" | "places" | "values">): readonly Cell[] {
  return desk.sheets.filter((sheet) => applies(sheet, desk.values)).flatMap((sheet) => cellsOf(sheet, desk.places));
}

export function nodeOf(graph: Graph, key: string): Node {
  return graph.nodes[graph.position.get(key)!]!;
}

/** What a sentence calls a node: its label, without a capital that only opens a line. */
export function inSentence(label: string): string {
  return /^[A-ZÄÖÜ][a-z]/.test(label) ? label[0]!.toLowerCase() + label.slice(1) : label;
}
