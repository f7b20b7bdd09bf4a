import type { Evaluation, Node, Ref, References, ValuesOf } from "../lib/graph";
import type { DisplayHint, KindName } from "../lib/quantity";
import type { Board, BoardView } from "./board";

/** A column of a figure's numbers: its label, and the unit's symbol where all of them share one. */
export type FigureColumn = string | readonly [label: string, unit: string];

/**
 * A figure's numbers, for those who read them rather than see them, and for export. Marks of the drawing that carry a
 * row's number, from 0, in "data-row" can be pointed at and stepped through; that row is then read out.
 */
export interface FigureTable {
  /** Words at the left of a row name it; a column "Unit" holds the unit of the number before it. */
  readonly columns: readonly FigureColumn[];
  readonly rows: readonly (readonly (string | number)[])[];
}

/** Units for a figure's axes and labels, as the page shows them at present. */
export interface FigureUnits {
  /** A value in the unit shown, as a bare number: for scales. */
  readonly number: (kind: KindName, value: number, hint?: DisplayHint) => number;
  /** The unit's symbol, for axis titles. */
  readonly unit: (kind: KindName, hint?: DisplayHint) => string;
  /** Number and unit, for direct labels. */
  readonly text: (kind: KindName, value: number, hint?: DisplayHint) => string;
  /** A refusal's words, which speak SI, with their numbers in the units shown. */
  readonly refusal: (words: string) => string;
}

export interface FigureFrame {
  /** Width to draw for, in CSS pixels; the height follows from the figure. */
  readonly width: number;
  readonly units: FigureUnits;
  /** How a board is shown; without it a figure draws all of itself. */
  readonly board?: BoardView<never>;
  /** Its list stands apart, as a table: only what is above it is drawn. */
  readonly listApart?: boolean;
}

/** What moves with every frame on a picture that is itself drawn only when the hand rests: cheap marks. */
export interface Following<L extends References = References> {
  readonly from: L;
  /** Moves marks of a picture that the figure has drawn, of these values or earlier ones; without values it hides them. */
  readonly move: (picture: SVGSVGElement, values: ValuesOf<L> | undefined) => void;
}

/**
 * A drawing of some values. Pure: the same values and frame give the same picture. A mark with "data-sets" sets the input of that key:
 * the hand moves it along its "data-track", which lists values in SI and the places where they lie, "value,x,y value,x,y …".
 */
export interface Figure<F extends References = References, L extends References = References> {
  readonly key: string;
  readonly title: string;
  readonly from: F;
  /** What is to be seen, in a sentence or two with the numbers that matter. */
  readonly describe: (values: ValuesOf<F>, units: FigureUnits) => string;
  readonly draw: (values: ValuesOf<F>, frame: FigureFrame) => SVGSVGElement;
  readonly table: (values: ValuesOf<F>, units: FigureUnits) => FigureTable;
  /**
   * Drawn when the hand rests, since it needs more than a frame allows; until then the last picture stands dimmed.
   * Where that depends on the values, it is asked of them.
   */
  readonly atRest?: boolean | ((values: ValuesOf<F>) => boolean);
  /** It lays the build's installations side by side: its values also hold those of each, see Across. */
  readonly across?: boolean;
  /** It ends in a list of its table's rows, which may be longer than a page is tall: on paper the list stands apart. */
  readonly listed?: boolean;
  /** Pieces of it can be moved, and are rows of a table. */
  readonly board?: Board<ValuesOf<F>>;
  readonly follow?: Following<L>;
}

/** Values of a figure in one installation of the build. */
export interface InInstallation<Values> {
  readonly key: string;
  readonly label: string;
  readonly values: Values;
}

/** What a figure across installations has among its values: all of them, the one shown as well; left out where there is but one to be had. */
export interface Across<Values> {
  readonly installations?: readonly InInstallation<Values>[];
}

/** Declares a figure; the values' types follow from `from`. */
export function figure<F extends References, L extends References = References>(options: Figure<F, L>): Figure {
  return options as unknown as Figure;
}

/** A figure that may still have to be fetched. */
export interface Drawing {
  /** The figure's key. */
  readonly key: string;
  /** The figure, once it is there. */
  readonly figure: Figure | undefined;
  /** @throws when it cannot be fetched */
  fetch(): Promise<Figure>;
}

/** Something holds while a choice has a value. */
export interface WhileChosen {
  readonly choice: Ref<string>;
  readonly is: string;
}

/** A block of a sheet; one with "only" stands there while that holds. */
export type Block = Content & { readonly only?: WhileChosen };

type Content =
  | { readonly type: "heading"; readonly text: string }
  | { readonly type: "prose"; readonly parts: readonly (string | Ref)[] }
  | { readonly type: "line"; readonly node: Node }
  | { readonly type: "tabulation"; readonly tabulation: Tabulation }
  | { readonly type: "figure"; readonly drawing: Drawing }
  | { readonly type: "caution"; readonly text: string };

/** One worksheet, in reading order. */
export interface Sheet {
  /** Its name in addresses, such as "air-demand". */
  readonly key: string;
  readonly title: string;
  /** What the sheet answers, as a question or a short sentence. */
  readonly answers: string;
  readonly blocks: readonly Block[];
  /** The sheet counts only while this choice has this value; its limits stay out of the ledger otherwise. */
  readonly applies?: WhileChosen & { readonly otherwise: string };
}

/** A sentence in which references stand for live values, and inputs for handles. */
export function prose(words: TemplateStringsArray, ...references: readonly Ref[]): Block {
  const parts = words.flatMap((text, i) => (i < references.length ? [text, references[i]!] : [text]));
  return { type: "prose", parts: parts.filter((part) => part !== "") };
}

export const heading = (text: string): Block => ({ type: "heading", text });
export const caution = (text: string): Block => ({ type: "caution", text });
export const lines = (...nodes: readonly Node[]): readonly Block[] => nodes.map((node) => ({ type: "line", node }));

/** Whether a choice has the value that something asks for; nothing asked, always. */
export function holds(asked: WhileChosen | undefined, values: Pick<Evaluation, "get">): boolean {
  return asked === undefined || values.get(asked.choice) === asked.is;
}

/** Blocks that stand on a sheet only while a choice has a value. */
export function whileChosen(choice: Ref<string>, is: string, ...blocks: readonly Block[]): readonly Block[] {
  return blocks.map((block) => ({ ...block, only: { choice, is } }));
}

/**
 * A figure in its place on a sheet. It is fetched when it is wanted: the drawings are a large part of the notebook, and
 * most of them are off the screen when it opens.
 *
 * @param from fetches the module that holds the figure
 * @param key of the figure, and its name in the module
 */
export function drawn<K extends string>(from: () => Promise<Readonly<Record<K, Figure>>>, key: K): Block {
  let figure: Figure | undefined;
  const drawing: Drawing = {
    key,
    get figure() {
      return figure;
    },
    fetch: async () => {
      figure ??= (await from())[key];
      return figure;
    },
  };
  return { type: "figure", drawing };
}

/** Every figure of a sheet, in reading order; fetched where it has to be. */
export function figuresOf({ blocks }: Sheet): Promise<readonly Figure[]> {
  return Promise.all(blocks.flatMap((block) => (block.type === "figure" ? [block.drawing.fetch()] : [])));
}

/** The blocks of a sheet that stand there with these values. */
export function blocksOf({ blocks }: Sheet, values: Pick<Evaluation, "get">): readonly Block[] {
  return blocks.filter(({ only }) => holds(only, values));
}

/** The parts of a sheet's first paragraph, which says what it comes to and also stands on paper by itself. */
export function openingOf(sheet: Sheet, values: Pick<Evaluation, "get">): readonly (string | Ref)[] {
  return blocksOf(sheet, values).find((block) => block.type === "prose")?.parts ?? [];
}

/** A column of a tabulation: with a kind its numbers are quantities in SI, without one they are words. */
export interface TabulationColumn {
  readonly label: string;
  readonly kind?: KindName;
  readonly hint?: DisplayHint;
}

/** A structured value laid out as a table on the sheet. */
export interface Tabulation {
  readonly key: string;
  readonly title: string;
  readonly of: Ref;
  readonly columns: readonly TabulationColumn[];
  readonly rows: (value: never) => readonly (readonly (string | number)[])[];
}

/** A block that lays a structured value out as a table; numbers stand in SI and are shown in the reader's units. */
export function tabulated<T>(
  options: Omit<Tabulation, "of" | "rows"> & {
    readonly of: Ref<T>;
    readonly rows: (value: T) => readonly (readonly (string | number)[])[];
  },
): Block {
  return { type: "tabulation", tabulation: options };
}
