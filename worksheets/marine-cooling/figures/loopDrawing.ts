import { type ScaleLinear, scaleLinear } from "d3";
import {
  arrowHead,
  axisBelow,
  axisRoom,
  figures,
  type Group,
  plate,
  px,
  spot,
  spread,
  textWidth,
  widest,
  write,
} from "../../drawing";
import type { FigureUnits } from "../../sheet";
import { placeRows, writeWords } from "./lineRows";
import { profile } from "./profile";

/** One element of a closed circuit: its temperatures, and those of the whole stream around its group [K]. */
export interface LoopElement {
  readonly name: string;
  readonly remarks: readonly string[];
  readonly group: number;
  /** Part of the stream that passes it. */
  readonly share: number;
  readonly inlet: number;
  readonly outlet: number;
  readonly trunkInlet: number;
  readonly trunkOutlet: number;
}

/** A temperature that is marked across a circuit [K]. */
export interface LoopMark {
  readonly name: string;
  readonly at: number;
}

/** A closed circuit from where the stream is coldest all around to there again. */
export interface Loop {
  readonly name: string;
  readonly elements: readonly LoopElement[];
  readonly marks: readonly LoopMark[];
}

interface Loops {
  readonly loops: readonly Loop[];
  readonly units: FigureUnits;
  readonly width: number;
  /** Words above the rows instead of beside them. */
  readonly stacked: boolean;
}

const gap = 40;

/** Each circuit unrolled down the page, warmer to the right; a dotted line leads from its end back to its beginning. */
export function drawLoops({ loops, units, width, stacked }: Loops): SVGSVGElement {
  const { svg, ground } = plate(width, 0);
  let y = 0;
  let row = 0;
  for (const loop of loops) {
    y = drawLoop(ground, loop, { units, width, stacked, from: y, row }) + gap;
    row += loop.elements.length;
  }
  svg.setAttribute("viewBox", `0 0 ${width} ${Math.ceil(y - gap)}`);
  svg.setAttribute("height", String(Math.ceil(y - gap)));
  return svg;
}

function drawLoop(
  ground: Group,
  { name, elements, marks }: Loop,
  frame: Omit<Loops, "loops"> & { readonly from: number; readonly row: number },
): number {
  const { units, width, stacked, from, row } = frame;
  const warm = (temperature: number) => units.number("temperature", temperature);
  const text = (temperature: number) => figures(warm(temperature));
  const top = from + 76;
  const begin = top - 12;
  const { places, end } = placeRows(elements, { above: stacked, width: width - 4, from: stacked ? top + 10 : top });
  const bottom = end + 8;
  const x = scaleOf(elements, marks, frame, warm);
  const at = (temperature: number) => x(warm(temperature));
  const [left, right] = x.range() as [number, number];

  write(ground, name, { x: 2, y: from + 16, look: "band" });
  elements.forEach((_, i) => {
    spot(ground, row + i, { x: 0, y: places[i]!.from - 8, width, height: places[i]!.height - 2 });
  });
  axisBelow(ground, {
    at: x,
    ticks: x.ticks(Math.max(3, Math.floor((right - left) / 72))),
    ends: [left, right],
    across: bottom,
    grid: begin,
    title: `Temperature, ${units.unit("temperature")}`,
  });
  const words = marks.map((mark) => `${mark.name} ${text(mark.at)}`);
  const middles = spread(
    marks.map((mark, i) => ({ at: at(mark.at), size: textWidth(words[i]!) })),
    [stacked ? 2 : left - 60, width - 2],
    10,
  );
  marks.forEach((mark, i) => {
    const line = `M${px(at(mark.at))},${px(bottom)}V${px(begin - 4)}L${px(middles[i]!)},${px(begin - 12)}`;
    ground.append("path").attr("class", "limit").attr("d", line);
    write(ground, words[i]!, { x: middles[i]!, y: begin - 16, anchor: "middle", look: "mute" });
  });

  const { trunk, branches, mixes } = profile(
    elements.map(({ group, share, inlet, outlet, trunkInlet, trunkOutlet }, i) => ({
      ...places[i]!,
      group,
      share,
      begin: at(inlet),
      end: at(outlet),
      trunkBegin: at(trunkInlet),
      trunkEnd: at(trunkOutlet),
    })),
    begin,
    end,
  );
  const home = at(elements[0]!.trunkInlet);
  ground
    .append("path")
    .attr("class", "dotted")
    .attr("d", `M${px(at(elements.at(-1)!.trunkOutlet))},${px(end)}H${px(home)}V${px(begin)}`);
  ground
    .append("path")
    .attr("class", "middle")
    .attr("d", arrowHead(home, begin, -Math.PI / 2, 9));
  if (branches) ground.append("path").attr("class", "line-1 thin").attr("d", branches);
  ground.append("path").attr("class", "line-1").attr("d", trunk);
  for (const mix of mixes) {
    ground.append("circle").attr("class", "solid").attr("cx", px(mix.x)).attr("cy", px(mix.y)).attr("r", 3.5);
    write(ground, text(elements[0]!.trunkInlet), { x: mix.x + 9, y: mix.y + 14, look: "one" });
  }
  if (mixes.length === 0)
    write(ground, text(elements[0]!.trunkInlet), { x: home - 8, y: begin + 6, anchor: "end", look: "one" });
  elements.forEach(({ inlet, outlet }, i) => {
    if (Math.abs(outlet - inlet) < 0.02) return;
    const y = places[i]!.bottom + 13;
    const colder = outlet < inlet;
    write(ground, text(outlet), {
      x: at(outlet) + (colder ? -8 : 8),
      y,
      ...(colder && { anchor: "end" as const }),
      look: "one",
    });
  });
  for (const place of places) writeWords(ground, place);
  return bottom + axisRoom;
}

function scaleOf(
  elements: readonly LoopElement[],
  marks: readonly LoopMark[],
  { width, stacked }: Omit<Loops, "loops">,
  warm: (temperature: number) => number,
): ScaleLinear<number, number> {
  const all = [...elements.flatMap(({ inlet, outlet }) => [inlet, outlet]), ...marks.map((mark) => mark.at)].map(warm);
  const value =
    widest(
      all.map((each) => figures(each)),
      { bold: true },
    ) + 12;
  const names = stacked
    ? 0
    : widest(
        elements.flatMap(({ name, remarks }) => [name, ...remarks]),
        { bold: true },
      ) + 10;
  return scaleLinear([Math.min(...all) - 1, Math.max(...all) + 1], [names + value, width - value]);
}
