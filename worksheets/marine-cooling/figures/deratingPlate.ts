import { isRefusal, type ValuesOf } from "../../../lib/graph";
import { derating } from "../../boat-duty/derating";
import type { Derating, DeratingSeries } from "../../boat-duty/deratingSeries";
import { share } from "../../drawing";
import { type FigureUnits, figure } from "../../sheet";
import { type CurveField, drawCurves } from "./curveFields";
import { notDrawn } from "./notDrawn";

const from = { derating };
type At = ValuesOf<typeof from>;

/** The answer, or in words why there is none. */
const answerOf = ({ derating }: At): Derating | string => {
  const answer = derating.get();
  return isRefusal(answer) ? answer.words : answer;
};

/** Losses of ducts are read in the ducts' unit, temperatures in their own. */
const hintOf = ({ kind }: DeratingSeries) => (kind === "pressureDifference" ? ("duct" as const) : undefined);
const names = {
  sea: "Sea temperature",
  room: "Temperature of the intake air",
  depression: "Intake depression",
  backPressure: "Exhaust back pressure",
} as const;

/** A value of what is worse, as a sentence begins with it. */
const opening = {
  sea: (value: string) => `A sea of ${value}`,
  room: (value: string) => `Intake air of ${value}`,
  depression: (value: string) => `An intake depression of ${value}`,
  backPressure: (value: string) => `An exhaust back pressure of ${value}`,
} as const;

/** A limit's name within a sentence. */
const limitOf = (name = "no limit") => `${name[0]!.toLowerCase()}${name.slice(1)} met first`;

const drawnSeries = ({ series }: Derating) => series.filter(({ values }) => values.length > 0);

/** One field for each thing that may be worse, in numbers of the units shown. */
function fieldsOf(answer: Derating, units: FigureUnits): readonly CurveField[] {
  let row = 0;
  return drawnSeries(answer).map((series): CurveField => {
    const across = (value: number) => units.number(series.kind, value, hintOf(series));
    const along = (which: "solved" | "standard") =>
      series.values.flatMap((value) => {
        const power = value[which];
        return power === undefined ? [] : [[across(value.at), units.number("power", power)] as const];
      });
    const firstRow = row;
    row += series.values.length;
    const standard = along("standard");
    return {
      title: `Power, ${units.unit("power")}`,
      across: `${names[series.key]}, ${units.unit(series.kind, hintOf(series))}`,
      curves: [
        { name: "chosen parts", points: along("solved"), look: "line-1" },
        ...(standard.length > 0 ? [{ name: "standard", points: standard, look: "line-2" as const }] : []),
      ],
      listed: series.values.map(({ at }) => across(at)),
      firstRow,
      here: { at: across(series.design), text: "as here" },
      limit: { at: units.number("power", answer.promised), text: "promised" },
    };
  });
}

export const deratingPlate = figure({
  key: "deratingPlate",
  title: "What a warmer sea, warmer air and tighter pipes leave of the power",
  atRest: true,
  from,
  describe: (at, units) => {
    const answer = answerOf(at);
    if (typeof answer === "string") return `Not drawn: ${units.refusal(answer)}`;
    const power = (value: number) => units.text("power", value);
    const sentences = drawnSeries(answer).map((series) => {
      const worst = series.values.at(-1)!;
      const where = opening[series.key](units.text(series.kind, worst.at, hintOf(series)));
      if (worst.solved === undefined) return `${where} has no answer${worst.refused ? `: ${units.refusal(worst.refused)}` : ""}.`;
      const left = `${power(worst.solved)}, ${share(units, worst.solved / answer.most)} of it, with ${limitOf(worst.binding)}`;
      const beside = worst.standard === undefined ? "" : `; the standard's correction leaves ${power(worst.standard)}`;
      return `${where} leaves ${left}${beside}.`;
    });
    const usual = `Here the parts give ${power(answer.most)}, with ${limitOf(answer.binding)}; ${power(answer.promised)} are promised.`;
    return [usual, ...sentences].join(" ");
  },
  draw: (at, { width, units }) => {
    const answer = answerOf(at);
    if (typeof answer === "string") return notDrawn(units.refusal(answer), width);
    return drawCurves({ fields: fieldsOf(answer, units), width, alike: true });
  },
  table: (at, units) => {
    const answer = answerOf(at);
    const power = units.unit("power");
    return {
      columns: [
        "What is worse",
        "Value",
        "Unit",
        ["Chosen parts", power],
        "Limit that is met first",
        ["Standard's correction", power],
      ],
      rows:
        typeof answer === "string"
          ? []
          : drawnSeries(answer).flatMap((series) =>
              series.values.map(({ at: value, solved, binding, standard }) => [
                names[series.key],
                units.number(series.kind, value, hintOf(series)),
                units.unit(series.kind, hintOf(series)),
                solved === undefined ? "–" : units.number("power", solved),
                binding ?? "–",
                standard === undefined ? "–" : units.number("power", standard),
              ]),
            ),
    };
  },
});
