import "../../site/style/tokens.css";
import "../../worksheets/drawing/figures.css";
import "../../worksheets/drive-speeds/figures/belts.css";
import "../../worksheets/matching/figures/matching.css";
import { completeDrawing } from "../../site/figure/complete";
import { readTrack } from "../../site/figure/mark-track";
import "../../worksheets/marine-cooling/figures/marine.css";
import { type Evaluation, isRefusal } from "../../lib/graph";
import { figureUnits } from "../../site/state/figureUnits";
import { powerStaircase } from "../../worksheets/air-demand/figures/powerStaircase";
import { chargeStaircase } from "../../worksheets/boost/figures/chargeStaircase";
import { altitude } from "../../worksheets/brief/figures/altitude";
import { declaredValues } from "../../worksheets/build/build";
import { beltTensions } from "../../worksheets/drive-speeds/figures/beltTensions";
import { driveBudgets } from "../../worksheets/drive-speeds/figures/driveBudgets";
import { installedRuns } from "../../worksheets/drive-speeds/figures/installedRuns";
import { unitTorque } from "../../worksheets/drive-speeds/figures/unitTorque";
import { frontDrives } from "../../worksheets/drive-speeds/figures/frontDrives";
import { picks } from "../../worksheets/drive-speeds/figures/picks";
import { speedWindows } from "../../worksheets/drive-speeds/figures/speedWindows";
import { boatReach } from "../../worksheets/fuel-delivery/figures/boatReach";
import { injectionTimeline } from "../../worksheets/fuel-delivery/figures/injectionTimeline";
import { nozzleTrade } from "../../worksheets/fuel-delivery/figures/nozzleTrade";
import { pumpOverSpeed } from "../../worksheets/fuel-delivery/figures/pumpOverSpeed";
import { pumpsCompared } from "../../worksheets/fuel-delivery/figures/pumpsCompared";
import { supplyProfile } from "../../worksheets/fuel-delivery/figures/supplyProfile";
import { tankWarming } from "../../worksheets/fuel-delivery/figures/tankWarming";
import { Later } from "../../worksheets/later";
import { closedCircuits } from "../../worksheets/marine-cooling/figures/closedCircuits";
import { curveFlows } from "../../worksheets/marine-cooling/figures/curveFlows";
import { curveTemperatures } from "../../worksheets/marine-cooling/figures/curveTemperatures";
import { deratingPlate } from "../../worksheets/marine-cooling/figures/deratingPlate";
import { dutyPlate } from "../../worksheets/marine-cooling/figures/dutyPlate";
import { failurePlate } from "../../worksheets/marine-cooling/figures/failurePlate";
import { heatFlows } from "../../worksheets/marine-cooling/figures/heatFlows";
import { landPlate } from "../../worksheets/marine-cooling/figures/landPlate";
import { pumpPlate } from "../../worksheets/marine-cooling/figures/pumpPlate";
import { seaWaterLine } from "../../worksheets/marine-cooling/figures/seaWaterLine";
import { towerPlate } from "../../worksheets/marine-cooling/figures/towerPlate";
import * as matchFigures from "../../worksheets/matching/figures";
import { graph, program } from "../../worksheets/model";
import type { Figure } from "../../worksheets/sheet";

// The page on which the browser test draws every figure and looks at what the browser made of it.

export interface Showing {
  readonly key: string;
  readonly changes: Readonly<Record<string, unknown>>;
  readonly width: number;
  readonly system: "SI" | "US";
  /** What is worked out at rest has no answer. */
  readonly refused?: boolean;
}

export interface Seen {
  /** Why the figure waits, where one of its values has no answer. */
  readonly waits: string | undefined;
  /** Labels that lie over each other or outside, marks of no row of the numbers and rows without marks, marks that are no numbers, styles that the policy forbids. */
  readonly faults: readonly string[];
  readonly labels: readonly string[];
  /** Marks and lines that reach over the edge of the drawing. */
  readonly outside: readonly string[];
  /** Marks that set an input, with the number of places on their track. */
  readonly settable: readonly { readonly input: string; readonly track: number }[];
  /** Paths of marks that follow the hand. */
  readonly moving: readonly string[];
  readonly smallest: number;
  /** Colours of the first label and of its halo, as the browser resolved them. */
  readonly ink: string;
  readonly paper: string;
}

const figures: readonly Figure[] = [
  powerStaircase,
  chargeStaircase,
  injectionTimeline,
  nozzleTrade,
  pumpOverSpeed,
  pumpsCompared,
  supplyProfile,
  tankWarming,
  boatReach,
  frontDrives,
  speedWindows,
  unitTorque,
  beltTensions,
  driveBudgets,
  installedRuns,
  picks,
  heatFlows,
  seaWaterLine,
  curveFlows,
  closedCircuits,
  curveTemperatures,
  pumpPlate,
  failurePlate,
  dutyPlate,
  deratingPlate,
  landPlate,
  towerPlate,
  altitude,
  ...Object.values(matchFigures),
];
const figureOf = (key: string) => figures.find((each) => each.key === key)!;

/** The last build that was worked out: one is drawn in many sizes. */
let last: { readonly of: string; readonly evaluation: ReturnType<typeof program.run> } | undefined;

function evaluated(changes: Showing["changes"]): ReturnType<typeof program.run> {
  const of = JSON.stringify(changes);
  if (last?.of !== of) last = { of, evaluation: program.run({ ...declaredValues(graph), ...changes }) };
  return last.evaluation;
}

function valuesOf({ from, across }: Figure, evaluation: Evaluation): never {
  const under = (each: Evaluation) =>
    Object.fromEntries(Object.entries(from).map(([name, reference]) => [name, each.require(reference)]));
  const values = under(evaluation);
  if (!across) return values as never;
  // Two installations: as declared, and as the case has it.
  const installations = [
    { key: "first", label: "As declared", values: under(program.run(declaredValues(graph))) },
    { key: "second", label: "As in this case", values },
  ];
  return { ...values, installations } as never;
}

/** An evaluation in which no value that is worked out at rest has an answer. */
function withoutAnswers(evaluation: Evaluation): Evaluation {
  const refusing = new Later("sea", {}, () => {
    throw new RangeError("sea: the water boils at 120 °C; give it more flow");
  });
  const replaced = <T>(value: T): T => (value instanceof Later ? (refusing as T) : value);
  return {
    values: evaluation.values.map(replaced),
    get: (reference) => replaced(evaluation.get(reference)),
    require: (reference) => replaced(evaluation.require(reference)),
  };
}

function show({ key, changes, width, system, refused = false }: Showing): Seen {
  const figure = figureOf(key);
  const answered = evaluated(changes);
  const answers = Object.fromEntries(
    Object.entries(figure.from).map(([name, reference]) => [name, answered.get(reference)]),
  );
  const waits = Object.values(answers).find(isRefusal)?.words;
  if (waits !== undefined) {
    return {
      waits,
      faults: [],
      labels: [],
      outside: [],
      settable: [],
      moving: [],
      smallest: Number.NaN,
      ink: "",
      paper: "",
    };
  }
  const evaluation = refused ? withoutAnswers(answered) : answered;
  const values = valuesOf(figure, evaluation);
  const frame = { width, units: figureUnits({ system, own: {} }) };
  const picture = completeDrawing(figure, values, evaluation, frame);
  document.body.replaceChildren(picture);
  const again = completeDrawing(figure, values, evaluation, frame);
  const faults = [
    ...(again === picture ? ["the same element came twice"] : []),
    ...(again.outerHTML === picture.outerHTML ? [] : ["the same values drew another picture"]),
    ...(picture.outerHTML.match(/NaN|Infinity|undefined|\sstyle=/g) ?? []),
    ...labelFaults(picture),
    ...markFaults(picture, figure.table(values, frame.units).rows.length),
  ];
  const labels = [...picture.querySelectorAll("text")];
  const look = getComputedStyle(labels[0]!);
  return {
    waits,
    faults,
    labels: labels.map((label) => label.textContent ?? ""),
    outside: marksOutside(picture),
    settable: [...picture.querySelectorAll("[data-sets]")].map((mark) => ({
      input: mark.getAttribute("data-sets")!,
      track: readTrack(mark.getAttribute("data-track")!).length,
    })),
    moving: [...picture.querySelectorAll(".follows > *")].map((mark) => mark.getAttribute("points") ?? ""),
    smallest: Math.min(...labels.map((label) => Number.parseFloat(getComputedStyle(label).fontSize))),
    ink: look.fill,
    paper: look.stroke,
  };
}

/** Rows of the numbers without a mark that could be pointed at, and marks without a row. */
function markFaults(picture: SVGSVGElement, rows: number): readonly string[] {
  const marked = new Set(
    [...picture.querySelectorAll("[data-row]")].map((mark) => Number(mark.getAttribute("data-row"))),
  );
  return [
    ...[...marked].filter((row) => !(row < rows)).map((row) => `a mark of row ${row}, which is not there`),
    ...Array.from({ length: rows }, (_, row) => row)
      .filter((row) => !marked.has(row))
      .map((row) => `row ${row} has no mark`),
  ];
}

/** Marks, lines and areas that lie outside the drawing, by more than half of a stroke. */
function marksOutside(picture: SVGSVGElement): readonly string[] {
  const { width, height } = picture.viewBox.baseVal;
  return [...picture.querySelectorAll<SVGGraphicsElement>("path, circle, rect")].flatMap((mark) => {
    const { x, y, width: across, height: down } = mark.getBBox();
    const out = x < -2 || y < -2 || x + across > width + 2 || y + down > height + 2;
    return out ? [`${mark.getAttribute("class")} at ${[x, y, across, down].map(Math.round).join(" ")}`] : [];
  });
}

/** Room by which a letter's box may reach over another's or over the edge: boxes are taller and wider than their ink. */
const grain = { across: 1.5, down: 2 };

function labelFaults(picture: SVGSVGElement): readonly string[] {
  const { width, height } = picture.viewBox.baseVal;
  const labels = [...picture.querySelectorAll("text")].map((label) => ({
    text: label.textContent ?? "",
    box: label.getBBox(),
  }));
  const outside = labels.filter(
    ({ box }) =>
      box.x < -grain.across ||
      box.y < -grain.down ||
      box.x + box.width > width + grain.across ||
      box.y + box.height > height + grain.down,
  );
  const over = labels.flatMap((a, i) =>
    labels
      .slice(i + 1)
      .filter(
        (b) =>
          Math.min(a.box.x + a.box.width, b.box.x + b.box.width) - Math.max(a.box.x, b.box.x) > grain.across &&
          Math.min(a.box.y + a.box.height, b.box.y + b.box.height) - Math.max(a.box.y, b.box.y) > grain.down,
      )
      .map((b) => `"${a.text}" over "${b.text}"`),
  );
  return [...outside.map(({ text }) => `"${text}" outside`), ...over];
}

const stage = { keys: figures.map(({ key }) => key), show };
export type Stage = typeof stage;
Object.assign(window, { stage });
