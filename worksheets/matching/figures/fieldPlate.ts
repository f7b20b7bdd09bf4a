import type { CompressorBankElement, OperatingPoint } from "../../../lib/charge";
import { axisRoom, plate, px, resized } from "../../drawing";
import type { FigureFrame } from "../../sheet";
import { emptyPlate } from "./emptyPlate";
import { fieldGround } from "./fieldGround";
import { fieldLabels } from "./fieldLabels";
import type { FieldSpot } from "./fieldMesh";
import type { FieldRun } from "./fieldSpan";
import { type FieldView, fieldView } from "./fieldView";
import { fieldWords } from "./fieldWords";
import { operatingLine, runCorners } from "./operatingLine";
import { attained, isLeap, type Run } from "./run";

/** The banks of a path, in the order of flow. */
export function banksOf({ matchBuild }: Run): readonly CompressorBankElement[] {
  return matchBuild.path.filter((element) => element.kind === "compressorBank");
}

/** What each bank does at each speed of a run at which there is something; rows are counted bank by bank. */
export function fieldRuns(run: Run): readonly (readonly FieldRun[])[] {
  const { points, ratedSpeed } = run;
  let row = 0;
  return banksOf(run).map((_, bank) =>
    points.flatMap((point, i): readonly FieldRun[] => {
      if (!point.ok) return [];
      const before = points[i - 1];
      const joined = !before?.ok ? "apart" : isLeap(before, point) ? "leap" : "line";
      const { engineSpeed } = point;
      const result = point.point.banks[bank]!;
      row += 1;
      const given = attained(point) !== undefined;
      return [{ row: row - 1, engineSpeed, result, promised: engineSpeed === ratedSpeed, given, joined }];
    }),
  );
}

/** Where fields lie on the pictures that were drawn of them, for what moves on them later. */
const views = new WeakMap<SVGSVGElement, readonly FieldView[]>();

/** Measured points to be drawn, by the name of their bank. */
export type MeasuredSpots = ReadonlyMap<string, readonly FieldSpot[]>;

/** One field for each bank, one below the other. */
export function fieldPlate(run: Run, measured: MeasuredSpots, { width, units }: FigureFrame): SVGSVGElement {
  const banks = banksOf(run);
  if (banks.length === 0) return emptyPlate("There are no turbochargers in the charge path.", 0, width);
  const runs = fieldRuns(run);
  const { svg, ground, over } = plate(width, 10);
  const present = over("follows");
  const words = over("labels");
  let top = 0;
  const laid = banks.map((bank, i): FieldView => {
    const shown = { bank, run: runs[i]!, measured: measured.get(bank.name) ?? [] };
    const view = fieldView(shown, fieldWords(ground, shown, top, width, units), width, units);
    const drawn = fieldGround(ground, view);
    const corners = runCorners(view);
    operatingLine(ground, view, corners);
    present.append("polygon").attr("class", "present");
    fieldLabels(words, view, drawn, corners);
    top = view.box.y + view.box.height + axisRoom + 22;
    return view;
  });
  views.set(svg, laid);
  return resized(svg, width, top - 20);
}

/** Moves the diamonds of a picture to where a point lies in its fields; they vanish where it lies off the scales. */
export function movePresent(picture: SVGSVGElement, point: OperatingPoint | undefined): void {
  const marks = picture.querySelectorAll(".present");
  views.get(picture)?.forEach(({ box, cornerOf }, i) => {
    const bank = point?.banks[i];
    const corner = bank && cornerOf({ flow: bank.correctedFlow, pressureRatio: bank.pressureRatio });
    const [x, y] = corner ?? [Number.NaN, Number.NaN];
    const inside = x >= box.x && x <= box.x + box.width && y >= box.y && y <= box.y + box.height;
    const corners = [[x - 7, y], [x, y - 7], [x + 7, y], [x, y + 7]] as const;
    marks[i]?.setAttribute("points", inside ? corners.map(([a, b]) => `${px(a)},${px(b)}`).join(" ") : "");
  });
}
