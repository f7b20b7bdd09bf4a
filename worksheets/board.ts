import type { TableInput } from "../lib/graph";

/** Where a board is looked at. */
export interface Camera {
  /** What lies in the middle: metres to the right and above. */
  readonly x: number;
  readonly y: number;
  /** CSS pixels for each metre. */
  readonly scale: number;
  /** Height of the drawing, in CSS pixels. */
  readonly height: number;
}

/** One of several things that lie over each other on a board and are worked on one at a time. */
export interface Leaf {
  readonly key: string;
  readonly label: string;
}

/** What can be taken and moved: it stands where a row of the board's table says. */
export interface Piece {
  /** Key of the leaf that it belongs to. */
  readonly leaf: string;
  /** Row of the table, from 0. */
  readonly row: number;
  /** Columns that hold its place, both of them lengths. */
  readonly columns: readonly [x: string, y: string];
  /** Row of the figure's numbers, from 0. */
  readonly mark: number;
  readonly name: string;
  /** Where it stands, metres to the right and above. */
  readonly x: number;
  readonly y: number;
  /** How far it reaches [m]. */
  readonly radius: number;
  /** It stays where it is. */
  readonly fixed?: boolean;
}

/** What a figure is told when it is drawn as a board. */
export interface BoardView<Values = unknown> {
  /** Key of the leaf that is worked on. */
  readonly leaf: string;
  readonly camera: Camera;
  /** By leaf that cannot be laid out now: the last values with which it could. */
  readonly sound: ReadonlyMap<string, Values>;
  /** Row of the table under the hand. */
  readonly held?: number;
}

/** What makes a figure a board: rows of a table stand on it as pieces, to be moved by pointer and keys. */
export interface Board<Values = never> {
  readonly table: TableInput;
  readonly leaves: (values: Values) => readonly Leaf[];
  /** Every piece of every leaf, in the order in which keys step through them. */
  readonly pieces: (values: Values) => readonly Piece[];
  /** A camera that shows all of it. */
  readonly fit: (values: Values, width: number) => Camera;
  /** Why a leaf cannot be laid out, if it cannot. */
  readonly refusal: (values: Values, leaf: string) => string | undefined;
}
