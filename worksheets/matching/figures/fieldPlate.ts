import type { CompressorBankElement } from "../../../lib/charge";
import { plate, resized } from "../../drawing";
import type { FigureFrame } from "../../sheet";
import { fieldPanel, type FieldRun, type MeasuredSpot } from "./fieldPanel";
import type { Run } from "./run";

/** The banks of a path, in the order of flow. */
export function banksOf({ matchBuild }: Run): readonly CompressorBankElement[] {
  return matchBuild.path.filter((element) => element.kind === "compressorBank");
}

/** What one bank does at each speed of a run; rows are counted bank by bank. */
export function runOfBank({ points, ratedSpeed }: Run, bank: number): readonly FieldRun[] {
  return points.flatMap((point, i) => {
    const result = point.ok ? point.point.banks[bank] : undefined;
    if (!result) return [];
    const { engineSpeed } = point;
    return [{ row: bank * points.length + i, engineSpeed, result, promised: engineSpeed === ratedSpeed }];
  });
}

/** One panel for each bank. */
export function fieldPlate(run: Run, { width, units }: FigureFrame, measured: readonly MeasuredSpot[]): SVGSVGElement {
  const { svg, ground } = plate(width, 10);
  let top = 0;
  banksOf(run).forEach((bank, i) => {
    top =
      fieldPanel(ground, { bank, run: runOfBank(run, i), measured: i === 0 ? measured : [], width, top, units }) + 22;
  });
  return resized(svg, width, top);
}
