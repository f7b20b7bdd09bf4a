import { type ScaleLinear, scaleLinear } from "d3";
import { axisBelow, axisRoom, figures, type Group, plate, px, spot, textWidth, widest, write } from "../../drawing";
import type { FigureUnits } from "../../sheet";
import { hotSide } from "./hotSide";
import { placeRows, writeWords } from "./lineRows";
import { type ProfileRow, profile } from "./profile";
import { limitDown, type WetExhaustEnd, wetExhaustEnd } from "./wetExhaustEnd";

/** What a hot side may reach [K], and the end of it at which that is felt. */
export interface HotLimit {
  readonly at: number;
  readonly end: "inlet" | "outlet";
}

/** One element of the raw-water line, in the order in which the water meets them. */
export interface SeaElement {
  readonly name: string;
  readonly remarks: readonly string[];
  readonly group: number;
  /** Part of the stream that passes it. */
  readonly share: number;
  /** Sea water of this part of the stream, and of the whole stream around its group [K]. */
  readonly seaInlet: number;
  readonly seaOutlet: number;
  readonly trunkInlet: number;
  readonly trunkOutlet: number;
  /** Over the barometer's pressure [Pa]. */
  readonly pressureIn: number;
  readonly pressureOut: number;
  /** What it cools, in counterflow [K]. */
  readonly hot: { readonly inlet: number; readonly outlet: number; readonly limit: HotLimit | undefined } | undefined;
}

interface SeaLine {
  readonly elements: readonly SeaElement[];
  readonly dischargeLimit: number;
  /** Behind the last element, where the water is led into the exhaust [K]; undefined with a dry exhaust. */
  readonly exhaust: WetExhaustEnd | undefined;
  readonly units: FigureUnits;
  readonly width: number;
  /** Words above the rows instead of beside them. */
  readonly stacked: boolean;
}

const top = 58;
const begin = top - 12;

/** Temperature and pressure of the sea water, down the page along its line, and each hot side's way beside it. */
export function drawSeaLine(line: SeaLine): SVGSVGElement {
  const { elements, dischargeLimit, exhaust, units, width, stacked } = line;
  const warm = (temperature: number) => units.number("temperature", temperature);
  const hard = (pressure: number) => units.number("gaugePressure", pressure);
  const text = (temperature: number) => figures(warm(temperature));
  const hardText = (pressure: number) => figures(hard(pressure), 2);
  const worded = exhaust
    ? [...elements, { name: "Wet exhaust", remarks: [`at most ${text(exhaust.limit)}`], group: -1, share: 1 }]
    : elements;
  const { places, end } = placeRows(worded, { above: stacked, width: width - 4, from: stacked ? top + 12 : top });
  const bottom = end + 6;
  const { x, p } = scalesOf(line, worded);
  const at = (temperature: number) => x(warm(temperature));
  const on = (pressure: number) => p(hard(pressure));
  const last = elements.length - 1;

  const { svg, ground } = plate(width, bottom + axisRoom);
  elements.forEach((_, i) => {
    spot(ground, i, { x: 0, y: places[i]!.from - 8, width, height: places[i]!.height - 2 });
  });
  field(ground, x, { title: "Temperature", unit: units.unit("temperature"), bottom, room: width });
  field(ground, p, { title: "Gauge pressure", unit: units.unit("gaugePressure"), bottom, room: width });
  limitDown(ground, at(dischargeLimit), begin - 4, places[last]!.bottom + 12);
  const allowed = `discharge at most ${text(dischargeLimit)}`;
  const mostRight = p.range()[0]! - 6 - textWidth(allowed);
  write(ground, allowed, { x: Math.max(2, Math.min(at(dischargeLimit) + 6, mostRight)), y: begin - 10, look: "mute" });

  const sea = profile(
    elements.map(
      ({ group, share, ...each }, i): ProfileRow => ({
        ...places[i]!,
        group,
        share,
        begin: at(each.seaInlet),
        end: at(each.seaOutlet),
        trunkBegin: at(each.trunkInlet),
        trunkEnd: at(each.trunkOutlet),
      }),
    ),
    begin,
    exhaust ? places.at(-1)!.top : places[last]!.bottom + 14,
  );
  const pressed = profile(
    elements.map(({ group, share, pressureIn, pressureOut }, i): ProfileRow => {
      const [from, to] = [on(pressureIn), on(pressureOut)];
      return { ...places[i]!, group, share, begin: from, end: to, trunkBegin: from, trunkEnd: to };
    }),
    begin,
    places[last]!.bottom + 14,
  );
  elements.forEach(({ hot, seaInlet, seaOutlet }, i) => {
    if (!hot) return;
    const side = {
      inlet: at(hot.inlet),
      outlet: at(hot.outlet),
      seaInlet: at(seaInlet),
      seaOutlet: at(seaOutlet),
      limit: hot.limit && at(hot.limit.at),
      words: [text(hot.inlet), text(hot.outlet)] as const,
      past: hot.limit && hot[hot.limit.end] > hot.limit.at ? hot.limit.end : undefined,
    };
    hotSide(ground, side, places[i]!);
  });
  for (const { trunk, branches, mixes } of [sea, pressed]) {
    if (branches) ground.append("path").attr("class", "line-1 thin").attr("d", branches);
    ground.append("path").attr("class", "line-1").attr("d", trunk);
    for (const { x: cx, y: cy } of mixes)
      ground.append("circle").attr("class", "solid").attr("cx", px(cx)).attr("cy", px(cy)).attr("r", 3.5);
  }
  if (exhaust)
    wetExhaustEnd(ground, exhaust, {
      at,
      text,
      place: places.at(-1)!,
      from: at(elements[last]!.trunkOutlet),
      row: elements.length,
    });

  write(ground, text(elements[0]!.trunkInlet), {
    x: at(elements[0]!.trunkInlet) - 8,
    y: begin + 6,
    anchor: "end",
    look: "one",
  });
  write(ground, hardText(elements[0]!.pressureIn), { x: on(elements[0]!.pressureIn) + 8, y: begin + 6, look: "one" });
  for (const { x: mixX, y: mixY } of sea.mixes) {
    const { trunkOutlet } = elements.findLast((_, i) => places[i]!.bottom < mixY)!;
    write(ground, text(trunkOutlet), { x: mixX - 8, y: mixY + 15, anchor: "end", look: "one" });
  }
  elements.forEach(({ seaInlet, seaOutlet, pressureOut, group }, i) => {
    const y = places[i]!.bottom + 13;
    const past = i === last && seaOutlet > dischargeLimit;
    if (Math.abs(seaOutlet - seaInlet) > 0.1) {
      write(ground, `${past ? "■ " : ""}${text(seaOutlet)}`, {
        x: at(seaOutlet) - 8,
        y,
        anchor: "end",
        look: past ? "past" : "one",
      });
    }
    if (elements[i + 1]?.group !== group)
      write(ground, hardText(pressureOut), { x: on(pressureOut) + 8, y, look: "one" });
  });
  for (const place of places) writeWords(ground, place);
  return svg;
}

/** Scales of temperature and pressure, in the room that the words leave. */
function scalesOf(
  { elements, dischargeLimit, exhaust, units, width, stacked }: SeaLine,
  worded: readonly { readonly name: string; readonly remarks: readonly string[] }[],
): Readonly<Record<"x" | "p", ScaleLinear<number, number>>> {
  const temperatures = [
    dischargeLimit,
    ...elements.flatMap(({ seaInlet, seaOutlet }) => [seaInlet, seaOutlet]),
    ...elements.flatMap(({ hot }) => (hot ? [hot.inlet, hot.outlet, hot.limit?.at ?? hot.inlet] : [])),
    ...(exhaust ? [exhaust.mixed, exhaust.saturated, exhaust.limit] : []),
  ].map((temperature) => units.number("temperature", temperature));
  const pressures = [0, ...elements.flatMap(({ pressureIn, pressureOut }) => [pressureIn, pressureOut])].map(
    (pressure) => units.number("gaugePressure", pressure),
  );
  const bold = { bold: true };
  const names = stacked
    ? 0
    : widest(
        worded.flatMap(({ name, remarks }) => [name, ...remarks]),
        bold,
      ) + 10;
  const value =
    widest(
      temperatures.map((each) => figures(each)),
      bold,
    ) + 10;
  const pressure =
    widest(
      pressures.map((each) => figures(each, 2)),
      bold,
    ) + 10;
  const left = names + value;
  const middle = left + (width - left - value - 30 - pressure) * 0.64;
  return {
    x: scaleLinear([Math.min(...temperatures), Math.max(...temperatures)], [left, middle]),
    p: scaleLinear([Math.min(...pressures), Math.max(...pressures)], [middle + value + 30, width - pressure]),
  };
}

/** Grid, axis and title of one of the fields beside each other. */
function field(
  group: Group,
  scale: ScaleLinear<number, number>,
  {
    title,
    unit,
    bottom,
    room,
  }: { readonly title: string; readonly unit: string; readonly bottom: number; readonly room: number },
): void {
  const [left, right] = scale.range() as [number, number];
  write(group, title, { x: Math.min(left, room - textWidth(title, { size: 15 })), y: 16, look: "band" });
  const ticks = scale.ticks(Math.max(3, Math.floor((right - left) / 64)));
  axisBelow(group, { at: scale, ticks, ends: [left, right], across: bottom, grid: begin, title: unit });
}
