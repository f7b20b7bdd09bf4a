import { scaleLinear } from "d3";
import type { CompressorBankElement } from "../../../lib/charge";
import { type Box, figures, widest } from "../../drawing";
import type { FigureUnits } from "../../sheet";
import { edgeOf, type FieldPlace, type FieldSpot, spotOf } from "./fieldMesh";
import { allowedSpeed, type FieldRun, speedsOf } from "./fieldSpan";
import type { Corner } from "./shapes";

/** What is drawn of one bank's field. */
export interface FieldShown {
  readonly bank: CompressorBankElement;
  readonly run: readonly FieldRun[];
  /** Measured points, if the field was fitted to some. */
  readonly measured: readonly FieldSpot[];
}

/** A field as it lies on the plate. */
export interface FieldView extends FieldShown {
  readonly units: FigureUnits;
  /** Where the scales span. */
  readonly box: Box;
  readonly width: number;
  /** Corrected wheel speeds drawn [rev/s]. */
  readonly span: readonly [number, number];
  /** Corrected wheel speed allowed [rev/s], if it lies among them. */
  readonly allowed: number | undefined;
  /** Corrected wheel speeds of which lines are drawn [rev/s], and their numbers. */
  readonly lines: readonly { readonly speed: number; readonly text: string }[];
  readonly ticks: { readonly flow: readonly number[]; readonly ratio: readonly number[] };
  /** In the units shown. */
  readonly x: (flow: number) => number;
  readonly y: (pressureRatio: number) => number;
  readonly at: (place: FieldPlace) => Corner;
  readonly cornerOf: (spot: FieldSpot) => Corner;
}

/** Lays one field out on a plate, its scales below a height. */
export function fieldView(shown: FieldShown, top: number, width: number, units: FigureUnits): FieldView {
  const { bank, run, measured } = shown;
  const field = bank.compressor;
  const small = width < 480;
  const flowOf = (flow: number) => units.number("massFlow", flow);
  const wheel = (speed: number) => units.number("rotationalSpeed", speed);
  const span = speedsOf(bank, run, measured.length > 0);
  const allowed = allowedSpeed(bank, run);
  const lines = scaleLinear([wheel(span[0]), wheel(span[1])], [0, 1])
    .ticks(small ? 6 : 8)
    .map((turns) => ({ speed: turns / wheel(1), text: figures(turns, 6) }));
  const corners = [...edgeOf(0, span), ...edgeOf(1, span)].map((place) => spotOf(field, place));
  const spots: readonly FieldSpot[] = [
    ...corners,
    ...measured,
    ...run.map(({ result: { correctedFlow, pressureRatio } }) => ({ flow: correctedFlow, pressureRatio })),
  ];
  const ratios = spots.map(({ pressureRatio }) => pressureRatio);
  const bottom = top + Math.round(Math.min(430, Math.max(270, 0.6 * width)));
  const y = scaleLinear([Math.min(1, ...ratios), Math.max(...ratios) * 1.02], [bottom, top + 4]);
  const left = Math.ceil(widest(y.ticks(6).map((tick) => figures(tick, 4)))) + 12;
  const right = Math.floor(width - widest(lines.map(({ text }) => text)) - 12);
  const x = scaleLinear([0, flowOf(Math.max(...spots.map(({ flow }) => flow)) * 1.01)], [left, right]);
  const cornerOf = ({ flow, pressureRatio }: FieldSpot): Corner => [x(flowOf(flow)), y(pressureRatio)];
  return {
    ...shown,
    units,
    width,
    box: { x: left, y: top, width: right - left, height: bottom - top },
    span,
    allowed: allowed !== undefined && allowed < span[1] ? allowed : undefined,
    lines,
    ticks: { flow: x.ticks(Math.max(3, Math.floor((right - left) / 80))), ratio: y.ticks(6) },
    x,
    y,
    at: (place) => cornerOf(spotOf(field, place)),
    cornerOf,
  };
}
