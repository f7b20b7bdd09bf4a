import type { FigureUnits } from "../../sheet";
import { figure } from "../../sheet";
import { share } from "../../drawing";
import { bankBCompressorPoints, bankBCompressorSource, compressorPoints, compressorSource } from "../inputs";
import { matched } from "../solved";
import { banksOf, fieldPlate, fieldRuns, movePresent } from "./fieldPlate";
import { type FieldRun, isOutside } from "./fieldSpan";
import { runFrom, runOf } from "./run";
import { gapWords, inSentence, sentences } from "./runWords";

export const compressorField = figure({
  key: "compressorField",
  title: "The compressors' fields, and the line along which the engine runs through them",
  from: { ...runFrom, compressorSource, compressorPoints, bankBCompressorSource, bankBCompressorPoints },
  atRest: true,
  describe: (values, units) => {
    const run = runOf(values);
    if (banksOf(run).length === 0) return "There are no turbochargers in the charge path, and so no field to draw.";
    const runs = fieldRuns(run);
    return sentences(...banksOf(run).map((bank, i) => bankWords(bank.name, runs[i]!, units)), gapWords(run, units));
  },
  draw: (values, frame) => {
    const measured = new Map([
      ["first bank", values.compressorSource === "points" ? values.compressorPoints : []],
      ["second bank", values.bankBCompressorSource === "points" ? values.bankBCompressorPoints : []],
    ]);
    return fieldPlate(runOf(values), measured, frame);
  },
  table: (values, units) => {
    const run = runOf(values);
    return {
      columns: [
        "Bank and engine speed",
        ["Engine speed", units.unit("rotationalSpeed")],
        ["Corrected flow of each", units.unit("massFlow")],
        "Pressure ratio",
        ["Efficiency", units.unit("fraction")],
        ["Wheel speed", units.unit("rotationalSpeed")],
        ["From surge", units.unit("fraction")],
        ["From choke", units.unit("fraction")],
        "Inside the field",
        "May run",
      ],
      rows: fieldRuns(run).flatMap((each, bank) =>
        each.map(({ engineSpeed, result, promised, given }) => [
          `${banksOf(run)[bank]!.name}, ${units.text("rotationalSpeed", engineSpeed)}${promised ? ", promised" : ""}`,
          units.number("rotationalSpeed", engineSpeed),
          units.number("massFlow", result.correctedFlow),
          result.pressureRatio,
          units.number("fraction", result.compressorEfficiency),
          units.number("rotationalSpeed", result.wheelSpeed),
          units.number("fraction", result.surgeMargin),
          units.number("fraction", result.chokeMargin),
          isOutside(result) ? "no" : "yes",
          given ? "yes" : "no",
        ]),
      ),
    };
  },
  follow: { from: { matched }, move: (picture, values) => movePresent(picture, values?.matched) },
});

/** What one bank does at the promised speed, and where it comes nearest to surge. */
function bankWords(name: string, run: readonly FieldRun[], units: FigureUnits): string {
  const here = run.find(({ promised }) => promised);
  const opening = here?.given ? atPromise(name, here, units) : "";
  if (run.length === 0) return "";
  const given = run.some((each) => each.given) ? run.filter((each) => each.given) : run;
  const nearest = given.reduce((least, each) => (each.result.surgeMargin < least.result.surgeMargin ? each : least));
  const outside = run.filter(({ result }) => isOutside(result)).length;
  const { surgeMargin } = nearest.result;
  const speed = units.text("rotationalSpeed", nearest.engineSpeed);
  const surge =
    surgeMargin < 0
      ? `At ${speed} it surges: it passes ${share(units, 1 / (1 - surgeMargin))} of the flow that would keep it from that.`
      : `It comes nearest to surge at ${speed}, with ${share(units, surgeMargin)} left.`;
  const beyond = outside > 0 ? `At ${outside} of ${run.length} speeds it runs outside what its field knows.` : "";
  return sentences(opening, surge, beyond);
}

function atPromise(name: string, { engineSpeed, result }: FieldRun, units: FigureUnits): string {
  const { correctedFlow, pressureRatio, compressorEfficiency, wheelSpeed } = result;
  return `With the most that ${units.text("rotationalSpeed", engineSpeed)} gives, each compressor of the ${inSentence(name)} passes ${units.text("massFlow", correctedFlow)} (corrected) at a pressure ratio of ${units.text("ratio", pressureRatio)} and ${share(units, compressorEfficiency)} efficiency, its wheel at ${units.text("rotationalSpeed", wheelSpeed)}.`;
}
