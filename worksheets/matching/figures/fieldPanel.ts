import { curveCatmullRom, line, scaleLinear } from "d3";
import type { BankResult, CompressorBankElement } from "../../../lib/charge";
import type { MassFlow, RotationalSpeed } from "../../../lib/quantity";
import {
  axisBelow,
  axisLeft,
  axisRoom,
  type Box,
  figures,
  type Group,
  leading,
  overlap,
  px,
  reading,
  share,
  spotAt,
  textWidth,
  widest,
  wrapped,
  write,
} from "../../drawing";
import type { FigureUnits } from "../../sheet";
import { edgeOf, type FieldPlace, isEdge, isles, lineOf, spotOf } from "./fieldMesh";
import { type Corner, hatchedShape, polyline } from "./shapes";

/** A point of the operating line in one compressor's field. */
export interface FieldRun {
  /** Row of the figure's numbers. */
  readonly row: number;
  readonly engineSpeed: RotationalSpeed;
  readonly result: BankResult;
  readonly promised: boolean;
}

/** A measured point of a compressor: corrected flow [kg/s] and pressure ratio. */
export interface MeasuredSpot {
  readonly flow: number;
  readonly pressureRatio: number;
}

interface FieldPanel {
  readonly bank: CompressorBankElement;
  readonly run: readonly FieldRun[];
  readonly measured: readonly MeasuredSpot[];
  readonly width: number;
  readonly top: number;
  readonly units: FigureUnits;
}

/** Efficiencies of which lines are drawn, the best few of them. */
const steps = [0.3, 0.4, 0.5, 0.6, 0.65, 0.7, 0.73, 0.76, 0.78, 0.8, 0.82, 0.84, 0.86];

/** One compressor's field with the line along which the engine runs through it. Gives back the height it ends at. */
export function fieldPanel(group: Group, { bank, run, measured, width, top, units }: FieldPanel): number {
  const field = bank.compressor;
  const flowOf = (flow: number) => units.number("massFlow", flow);
  const wheel = (speed: number) => units.number("rotationalSpeed", speed);
  const span = speedsOf(bank, run, measured.length > 0);
  const allowed = allowedSpeed(bank, run);

  // Words above: what is drawn, and the state to which it is referred.
  const { reference } = field;
  const margin = bank.leastSurgeMargin ?? 0;
  const words = wrapped(
    `${figures(bank.count)} × ${field.name}. Flow through each and wheel speed as they would be with air at ${reading(units, "temperature", reference.temperature, { digits: 4 })} and ${reading(units, "pressure", reference.pressure, { digits: 4 })} before it. Each ring is a speed of the engine.${margin > 0 ? ` Dotted: ${share(units, margin)} away from surge.` : ""}${measured.length > 0 ? " Crosses: measured." : ""}`,
    width - 4,
  );
  write(group, capital(bank.name), { x: 2, y: top + 13, look: "strong" });
  words.forEach((text, i) => {
    write(group, text, { x: 2, y: top + 13 + (i + 1) * leading, look: "mute" });
  });
  const titleTop = top + 13 + (words.length + 1) * leading + 8;
  write(group, "Pressure ratio", { x: 2, y: titleTop, look: "band" });
  write(group, `Wheel speed, ${units.unit("rotationalSpeed")}`, {
    x: width - 2,
    y: titleTop,
    anchor: "end",
    look: "band",
  });
  const plotTop = titleTop + 12;

  const speedTicks = scaleLinear([wheel(span[0]), wheel(span[1])], [0, 1])
    .ticks(width < 480 ? 6 : 8)
    .map((turns) => turns / wheel(1));
  const speedWords = speedTicks.map((speed) => figures(wheel(speed), 6));
  const corners = [...edgeOf(0, span), ...edgeOf(1, span)].map((place) => spotOf(field, place));
  const ratios = [...corners, ...measured, ...run.map(({ result }) => result)].map((each) => each.pressureRatio);
  const flows = [...corners, ...measured].map(({ flow }) => flow).concat(run.map(({ result }) => result.correctedFlow));
  const height = Math.round(Math.min(430, Math.max(270, 0.6 * width)));
  const bottom = plotTop + height;
  const y = scaleLinear([Math.min(1, ...ratios), Math.max(...ratios) * 1.02], [bottom, plotTop + 4]);
  const left = widest(y.ticks(6).map((tick) => figures(tick, 4))) + 12;
  const right = width - widest(speedWords) - 12;
  const x = scaleLinear([0, flowOf(Math.max(...flows) * 1.01)], [left, right]);
  const at = (place: FieldPlace): Corner => cornerOf(spotOf(field, place));
  const cornerOf = ({ flow, pressureRatio }: MeasuredSpot): Corner => [x(flowOf(flow)), y(pressureRatio)];
  const path = (look: string, d: string) => group.append("path").attr("class", look).attr("d", d);

  axisLeft(group, { at: y, ticks: y.ticks(6), ends: [plotTop, bottom], across: left, grid: right });
  axisBelow(group, {
    at: x,
    ticks: x.ticks(Math.max(3, Math.floor((right - left) / 80))),
    ends: [left, right],
    across: bottom,
    title: `Corrected flow of each, ${units.unit("massFlow")}`,
  });

  // The field: quiet isles, the speed lines, its edges.
  const shown = isles(field, span, (best) => steps.filter((step) => step < best - 0.002).slice(width < 480 ? -4 : -6));
  const shore: { readonly efficiency: number; readonly places: readonly Corner[] }[] = [];
  for (const { efficiency, rings } of shown) {
    path("isle", rings.map((ring) => `${polyline(ring.map(at))}Z`).join(""));
    let stroke = "";
    const places: Corner[] = [];
    for (const ring of rings) {
      ring.slice(1).forEach((place, i) => {
        if (isEdge(ring[i]!, place, span)) return;
        stroke += polyline([at(ring[i]!), at(place)]);
        places.push(at(place));
      });
    }
    path("shore", stroke);
    shore.push({ efficiency, places });
  }
  const surge = edgeOf(0, span).map(at);
  const choke = edgeOf(1, span).map(at);
  for (const [from, to] of unknownSpeeds(field.speedSpan, span)) {
    const shape = [...edgeOf(0, [from, to], 9), ...edgeOf(1, [from, to], 9).toReversed()].map(at);
    path("hatch", hatchedShape(shape, 6, -Math.PI / 4));
  }
  for (const speed of speedTicks) path("thread", polyline(lineOf(speed).map(at)));
  if (allowed !== undefined && allowed < span[1]) path("limit", polyline(lineOf(allowed).map(at)));
  if (margin > 0) {
    const away = edgeOf(0, span).map(({ speed }) => {
      const flow = (field.surgeFlow(speed as RotationalSpeed) / (1 - margin)) as MassFlow;
      return cornerOf({ flow, pressureRatio: field.at(flow, speed as RotationalSpeed).pressureRatio });
    });
    path("dotted", polyline(away));
  }
  path("outline thick", polyline(surge));
  path("outline", polyline(choke));
  path(
    "outline",
    measured
      .map(cornerOf)
      .map(([a, b]) => `M${px(a - 3)},${px(b - 3)}l6,6M${px(a + 3)},${px(b - 3)}l-6,6`)
      .join(""),
  );

  // The line along which the engine runs.
  const ran = run.map(({ result }) => cornerOf({ flow: result.correctedFlow, pressureRatio: result.pressureRatio }));
  const draw = line<Corner>(
    ([a]) => px(a),
    ([, b]) => px(b),
  ).curve(curveCatmullRom);
  for (const { outside, corners } of pieces(run, ran))
    path(outside ? "running outside" : "running", draw([...corners]) ?? "");

  const taken: Box[] = [];
  const tryWrite = (
    text: string,
    spots: readonly { x: number; y: number; anchor: "start" | "middle" | "end" }[],
    look: string,
  ): boolean => {
    const size = textWidth(text, { bold: look !== "mute" && look !== "shore-word" });
    for (const spot of spots) {
      const from = spot.anchor === "start" ? spot.x : spot.anchor === "end" ? spot.x - size : spot.x - size / 2;
      const box = { x: from, y: spot.y - 11, width: size, height: 14 };
      if (box.x < 0 || box.x + size > width || box.y < plotTop - 6 || box.y + 12 > bottom) continue;
      if (taken.some((other) => overlap(box, other, 3))) continue;
      taken.push(box);
      write(group, text, { ...spot, look });
      return true;
    }
    return false;
  };
  const onRun = (box: Corner): number => Math.min(...ran.map(([a, b]) => Math.hypot(a - box[0], b - box[1])), 1e9);

  // Wheel speeds at the right ends of their lines, from the fastest.
  speedTicks.toReversed().forEach((speed, i) => {
    const [a, b] = at({ across: 1, speed });
    const text = speedWords[speedTicks.length - 1 - i]!;
    if (b < bottom - 14) tryWrite(text, [{ x: a + 6, y: b + 4.5, anchor: "start" }], "mute");
  });
  if (allowed !== undefined && allowed < span[1]) {
    const [a, b] = at({ across: 0, speed: allowed });
    tryWrite(
      `allowed ${figures(wheel(allowed), 5)}`,
      [6, 18, 30].map((up) => ({ x: a - 8, y: b + 10 - up, anchor: "end" as const })),
      "",
    );
  }

  // Marks of the engine's speeds.
  run.forEach(({ row, promised }, i) => {
    const [a, b] = ran[i]!;
    spotAt(group, row, a, b);
    group
      .append("circle")
      .attr("class", promised ? "dark" : "ring")
      .attr("data-row", row)
      .attr("cx", px(a))
      .attr("cy", px(b))
      .attr("r", promised ? 6 : 3);
  });
  const beside = ([a, b]: Corner) =>
    [10, 18, 28, 40].flatMap((away) => [
      { x: a - away, y: b + 4.5, anchor: "end" as const },
      { x: a - away * 0.7, y: b - away * 0.7, anchor: "end" as const },
      { x: a + away, y: b + 4.5 + away * 0.5, anchor: "start" as const },
      { x: a + away * 0.7, y: b + away * 0.7 + 9, anchor: "start" as const },
    ]);
  const order = run.map((each, i) => ({ ...each, i })).sort((a, b) => Number(b.promised) - Number(a.promised));
  for (const { i } of order) taken.push({ x: ran[i]![0] - 4, y: ran[i]![1] - 4, width: 8, height: 8 });
  let lastWritten: Corner | undefined;
  for (const { engineSpeed, promised, i } of order) {
    const text = `${promised ? "promised " : ""}${figures(wheel(engineSpeed), 5)}`;
    const far =
      !lastWritten || Math.hypot(ran[i]![0] - lastWritten[0], ran[i]![1] - lastWritten[1]) > (width < 480 ? 56 : 44);
    if (!promised && !far) continue;
    if (tryWrite(text, beside(ran[i]!), promised ? "strong" : "run-word") && !promised) lastWritten = ran[i];
  }
  tryWrite(
    "surge",
    [0.5, 0.62, 0.4, 0.75].map((share) => {
      const [a, b] = surge[Math.round(share * (surge.length - 1))]!;
      return { x: a - 10, y: b - 4, anchor: "end" as const };
    }),
    "band",
  );
  tryWrite(
    "choke",
    speedTicks.slice(1).flatMap((speed, i) => {
      const [a, b] = at({ across: 1, speed: (speed + speedTicks[i]!) / 2 });
      return b > bottom - 12 ? [] : [{ x: a + 10, y: b + 6, anchor: "start" as const }];
    }),
    "band",
  );
  // Each isle's value where its shore has most room.
  for (const { efficiency, places } of shore.toReversed()) {
    const text =
      figures(units.number("fraction", efficiency), 3) +
      (efficiency === shown.at(-1)!.efficiency ? ` ${units.unit("fraction")}` : "");
    const roomy = places
      .map((place) => ({
        place,
        room: Math.min(
          onRun(place),
          ...taken.map((box) => Math.hypot(box.x + box.width / 2 - place[0], box.y + 7 - place[1])),
        ),
      }))
      .sort((a, b) => b.room - a.room);
    tryWrite(
      text,
      roomy.slice(0, 12).map(({ place: [a, b] }) => ({ x: a, y: b + 4.5, anchor: "middle" as const })),
      "shore-word",
    );
  }
  return bottom + axisRoom;
}

/** Corrected speed that belongs to the highest wheel speed allowed, with the air that the compressor meets. */
function allowedSpeed({ highestSpeed }: CompressorBankElement, run: readonly FieldRun[]): number | undefined {
  const known = run.find(({ promised }) => promised) ?? run.at(-1);
  if (highestSpeed === undefined || !known) return highestSpeed;
  return (highestSpeed * known.result.correctedSpeed) / known.result.wheelSpeed;
}

/** Corrected wheel speeds from which to which the field is drawn. */
function speedsOf(bank: CompressorBankElement, run: readonly FieldRun[], whole: boolean): readonly [number, number] {
  const [slowest, fastest] = bank.compressor.speedSpan;
  const ran = run.map(({ result }) => result.correctedSpeed as number);
  const wanted = whole ? fastest : Math.max(allowedSpeed(bank, run) ?? fastest, ...ran) * 1.03;
  return [Math.min(slowest, ...ran), Math.max(Math.min(fastest, wanted), ...ran)];
}

/** Parts of a drawn span of speeds that the field does not know. */
function unknownSpeeds([slowest, fastest]: readonly [number, number], [from, to]: readonly [number, number]) {
  const parts: (readonly [number, number])[] = [];
  if (from < slowest) parts.push([from, Math.min(slowest, to)]);
  if (to > fastest) parts.push([Math.max(fastest, from), to]);
  return parts;
}

/** Neighbours of the operating line that lie on the same side of the field's edge; pieces share their ends. */
function pieces(run: readonly FieldRun[], corners: readonly Corner[]) {
  const all: { outside: boolean; corners: Corner[] }[] = [];
  for (let i = 1; i < run.length; i += 1) {
    // Rows that do not follow each other have a speed between them at which there is nothing.
    const broken = run[i]!.row !== run[i - 1]!.row + 1;
    const outside = isOutside(run[i]!.result) || isOutside(run[i - 1]!.result);
    const last = all.at(-1);
    if (broken) continue;
    if (last && last.outside === outside && last.corners.at(-1) === corners[i - 1]) last.corners.push(corners[i]!);
    else all.push({ outside, corners: [corners[i - 1]!, corners[i]!] });
  }
  return all;
}

/** Whether a point lies outside its field, by more than rounding where a limit holds it at the edge. */
export function isOutside({ extrapolated, surgeMargin, chokeMargin }: BankResult): boolean {
  const onEdge = Math.min(Math.abs(surgeMargin), Math.abs(chokeMargin)) < 1e-6;
  return extrapolated && !onEdge;
}

function capital(name: string): string {
  return name === "" ? name : name[0]!.toUpperCase() + name.slice(1);
}
