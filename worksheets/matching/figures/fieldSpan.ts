import type { BankResult, CompressorBankElement } from "../../../lib/charge";
import type { RotationalSpeed } from "../../../lib/quantity";

/** A point of the operating line in one compressor's field. */
export interface FieldRun {
  /** Row of the figure's numbers. */
  readonly row: number;
  readonly engineSpeed: RotationalSpeed;
  readonly result: BankResult;
  readonly promised: boolean;
  /** Whether the engine may run here, and gives power. */
  readonly given: boolean;
  /** How it hangs together with the point before: no line where a speed between them gives nothing. */
  readonly joined: "line" | "leap" | "apart";
}

/** Corrected speed that belongs to the highest wheel speed allowed, with the air that the compressor meets. */
export function allowedSpeed({ highestSpeed }: CompressorBankElement, run: readonly FieldRun[]): number | undefined {
  const known = run.find(({ promised }) => promised) ?? run.at(-1);
  if (highestSpeed === undefined || !known) return highestSpeed;
  return (highestSpeed * known.result.correctedSpeed) / known.result.wheelSpeed;
}

/** Corrected wheel speeds from which to which the field is drawn. */
export function speedsOf(
  bank: CompressorBankElement,
  run: readonly FieldRun[],
  whole: boolean,
): readonly [number, number] {
  const [slowest, fastest] = bank.compressor.speedSpan;
  const ran = run.map(({ result }) => result.correctedSpeed as number);
  const wanted = whole ? fastest : Math.max(allowedSpeed(bank, run) ?? fastest, ...ran) * 1.03;
  return [Math.min(slowest, ...ran), Math.max(Math.min(fastest, wanted), ...ran)];
}

/** Parts of a drawn span of speeds that the field does not know. */
export function unknownSpeeds(
  [slowest, fastest]: readonly [number, number],
  [from, to]: readonly [number, number],
): readonly (readonly [number, number])[] {
  const parts: (readonly [number, number])[] = [];
  if (from < slowest) parts.push([from, Math.min(slowest, to)]);
  if (to > fastest) parts.push([Math.max(fastest, from), to]);
  return parts;
}

/** Whether a point lies outside its field, by more than rounding where a limit holds it at the edge. */
export function isOutside({ extrapolated, surgeMargin, chokeMargin }: BankResult): boolean {
  const onEdge = Math.min(Math.abs(surgeMargin), Math.abs(chokeMargin)) < 1e-6;
  return extrapolated && !onEdge;
}

/** Whether the line is broken at a point: outside the field, or where the parts give nothing. */
export function isUnsure({ result, given }: FieldRun): boolean {
  return !given || isOutside(result);
}
