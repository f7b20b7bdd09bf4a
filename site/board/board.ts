import type { TableInput } from "../../lib/graph";
import type { Board, BoardView, Camera, Piece } from "../../worksheets/board";
import { type Controlled, handOn } from "../control";
import { h, setAttribute, setChildren } from "../dom";
import { figureUnits, refusalWords } from "../state";
import { type Place, steady } from "./camera";
import { createGrip, type Grip, type Holding } from "./grip";
import { guides } from "./guides";
import { placeWords } from "./place-words";
import { onStep, snapped, stepsIn } from "./snap";
import { createLeaves } from "./leaves";
import { createZoom } from "./zoom";

/** How near another piece's axis draws a piece under the pointer, in CSS pixels. */
const pull = 6;

/** The hand's side of a figure whose pieces can be moved. */
export interface BoardDesk {
  /** Belts to choose from and the keys of the zoom; stands above the drawing. */
  readonly tools: HTMLElement;
  /** The drawing is put into this. */
  readonly stage: HTMLElement;
  /** What cannot be laid out, and why; stands below the drawing. */
  readonly remark: HTMLElement;
  /** What the figure is told before it is drawn. */
  view(values: unknown, width: number): BoardView<never>;
  /** To be called after each drawing. */
  drawn(values: unknown): void;
}

export interface BoardOptions {
  readonly board: Board;
  /** Of the figure. */
  readonly key: string;
  /** What can be focused; the stage and the grips are put into it. */
  readonly place: HTMLElement;
  readonly redraw: () => void;
  /** A row of the numbers is to be read out. */
  readonly read: (mark: number) => void;
}

export function createBoard(controlled: Controlled, { board, key, place, redraw, read }: BoardOptions): BoardDesk {
  const { session } = controlled;
  const { table } = board;
  const input = table.key;
  const hand = handOn(session, input);
  const stage = h("div", { class: "board-stage" });
  const lines = guides();
  const grips = h("div", { class: "grips" });
  const remark = h("p", { class: "board-remark", role: "status", hidden: true });
  const views: Grip[] = [];
  const sound = new Map<string, unknown>();
  let leaf = "";
  let pieces: readonly Piece[] = [];
  let held: Piece | undefined;
  let start: Place | undefined;
  let shown: Camera | undefined;
  let fitted: Camera | undefined;
  let across = 0;

  const rows = () => session.inputs[input] as readonly Readonly<Record<string, unknown>>[];
  const placeOf = ({ row, columns: [x, y] }: Piece): Place => ({ x: rows()[row]![x] as number, y: rows()[row]![y] as number });
  const spansOf = ({ columns: [x, y] }: Piece) => ({ x: spanOf(table, x), y: spanOf(table, y) });
  const unit = () => figureUnits(session.state.units).unit("length");
  const put = (piece: Piece, { x, y }: Place): void => {
    const now = placeOf(piece);
    if (now.x === x && now.y === y) return;
    const [across, up] = piece.columns;
    session.set(input, rows().map((entry, i) => (i === piece.row ? { ...entry, [across]: x, [up]: y } : entry)));
  };
  const workOn = (chosen: string): void => {
    if (leaf === chosen) return;
    leaf = chosen;
    redraw();
  };

  const holding: Holding = {
    steps: () => stepsIn(unit()),
    take: (piece) => {
      held = piece;
      start = placeOf(piece);
      hand.take();
      place.classList.add("is-moving");
    },
    drag: (piece, wanted, { coarse, free }) => {
      const { fine, coarse: wide } = stepsIn(unit());
      const to = snapped(wanted, {
        step: coarse ? wide : fine,
        others: pieces.filter((other) => other.leaf === piece.leaf && other.row !== piece.row),
        reach: free ? 0 : pull / shown!.scale,
        spans: spansOf(piece),
      });
      put(piece, to);
      lines.show(to, shown!, across);
    },
    step: (piece, by) => {
      const at = placeOf(piece);
      // A tenth of a key's step is the grain of what keys can say.
      const grain = stepsIn(unit()).key / 10;
      const spans = spansOf(piece);
      put(piece, { x: onStep(at.x + by.x, grain, spans.x), y: onStep(at.y + by.y, grain, spans.y) });
    },
    back: (piece) => start && put(piece, start),
    leave: () => {
      held = undefined;
      lines.hide();
      place.classList.remove("is-moving");
      hand.leave();
      redraw();
    },
    reach: (piece) => {
      workOn(piece.leaf);
      zoom.reach(piece);
      read(piece.mark);
    },
    open: ({ row }) => {
      const entry = document.querySelectorAll(`.table-input[data-input="${input}"] tbody tr`)[row];
      entry?.querySelector<HTMLElement>('.fold[aria-expanded="false"]')?.click();
      entry?.scrollIntoView({ block: "center" });
      entry?.querySelector<HTMLElement>("input, select")?.focus();
    },
  };

  const leaves = createLeaves(key, workOn);
  const zoom = createZoom({ place, stage, fitted: () => fitted, shown: () => shown, width: () => across, redraw });
  place.append(stage, lines.element, grips);

  const show = (): void => {
    while (views.length > pieces.length) views.pop()!.element.remove();
    while (views.length < pieces.length) {
      const view = createGrip(holding);
      views.push(view);
      grips.append(view.element);
    }
    const units = figureUnits(session.state.units);
    for (const [i, piece] of pieces.entries()) {
      views[i]!.show(piece, { camera: shown!, width: across, words: placeWords(piece, units), front: piece.leaf === leaf });
    }
  };

  return {
    tools: h("div", { class: "board-tools" }, leaves.element, zoom.element),
    stage,
    remark,
    view: (values, width) => {
      const all = board.leaves(values as never);
      if (!all.some((each) => each.key === leaf)) leaf = all[0]?.key ?? "";
      leaves.show(all, leaf);
      across = width;
      // The ground stands still under a hand.
      if (!held || !fitted) fitted = steady(fitted, board.fit(values as never, width));
      shown = zoom.camera(fitted);
      const refusals = all.flatMap((each) => {
        const refusal = board.refusal(values as never, each.key);
        if (refusal === undefined) sound.set(each.key, values);
        return refusal === undefined ? [] : [{ ...each, refusal }];
      });
      setChildren(remark, refusals.map(({ label, refusal }) => h("span", {}, h("strong", {}, `■ ${label}`), ` cannot be laid: ${refusalWords(refusal, session.state.units)}.`)));
      remark.hidden = refusals.length === 0;
      setAttribute(place, "data-unsound", refusals.some((each) => each.key === leaf));
      const last = new Map(refusals.flatMap((each) => (sound.has(each.key) ? [[each.key, sound.get(each.key)]] : [])) as [string, never][]);
      return { leaf, camera: shown, sound: last, ...(held && { held: held.row }) };
    },
    drawn: (values) => {
      pieces = board.pieces(values as never);
      show();
    },
  };
}

function spanOf({ columns }: TableInput, name: string): readonly [number, number] {
  const column = columns[name];
  if (column?.type !== "quantity") throw new Error(`board: the column "${name}" holds no length`);
  return column.span;
}
