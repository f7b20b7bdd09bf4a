import { area, range, scaleLinear } from "d3";
import { axisRoom, figures, narrow, plate, px, textWidth, widest, write } from "../../drawing";
import type { FigureFrame } from "../../sheet";
import type { Flow } from "./flows";
import { endLabels, endRoom, numbersRoom, panel, strips, upwards } from "./panel";

/** The fuel's power at one engine speed, in the same parts at every speed. */
export interface HeatPoint {
  readonly speed: number;
  /** From the foot of the stack upwards. */
  readonly parts: readonly Flow[];
}

interface HeatBands extends FigureFrame {
  /** In ascending order of speed. */
  readonly points: readonly HeatPoint[];
  /** The curve that the speeds lie on, in words. */
  readonly along: string;
  /** The speed that the flows are drawn for, as a mark that sets an input. */
  readonly mark?: { readonly sets: string; readonly at: number; readonly valueAt: (speed: number) => number };
}

/** Where each part's band begins and ends at each speed [W]; what is below nothing takes no room. */
export function stacked(points: readonly HeatPoint[]): readonly (readonly (readonly [number, number])[])[] {
  const parts = points[0]?.parts ?? [];
  const reached = points.map(() => 0);
  return parts.map((_, part) =>
    points.map(({ parts: all }, i) => {
      const from = reached[i]!;
      reached[i] = from + Math.max(0, all[part]!.power);
      return [from, reached[i]!] as const;
    }),
  );
}

const looks = { work: "flow-work", sea: "flow-sea", room: "flow", away: "flow" } as const;
const wordLooks = { work: "strong", sea: "one", room: "", away: "" } as const;

/** The parts of the fuel's power as bands over the engine's speed, named at their right ends. */
export function drawHeatBands({ points, along, mark, width, units }: HeatBands): SVGSVGElement {
  const power = (value: number) => units.number("power", value, "heat");
  const speed = (value: number) => units.number("rotationalSpeed", value);
  const last = points.at(-1)!;
  const bands = stacked(points);
  const names = last.parts.map(({ name }) => name);
  const values = width < narrow ? undefined : last.parts.map(({ power: own }) => rounded(power(own)));
  const title = `Power, ${units.unit("power", "heat")}`;
  const short = `Engine speed, ${units.unit("rotationalSpeed")}`;
  const long = `${short}, on ${along}`;
  const top = 44;
  const height = Math.max(width < narrow ? 300 : 340, names.length * 20 + 20);
  const y = upwards([0, ...bands.flat(2).map(power)], top, height);
  const left = numbersRoom([y]);
  const right = width - endRoom(names.map((name) => [name])) - (values ? widest(values, { bold: true }) + 6 : 0);
  const x = scaleLinear([speed(points[0]!.speed), speed(last.speed)], [left, right]);
  const { svg, ground } = plate(width, top + height + axisRoom);
  const speeds = points.map((point) => speed(point.speed));
  strips(ground, x, speeds, { top, bottom: top + height });
  const { bottom } = panel(ground, {
    x,
    y,
    title,
    titleAt: 2,
    across: textWidth(long) < right ? long : short,
  });
  const shape = area<number>().x((i) => px(x(speeds[i]!)));
  bands.forEach((band, part) => {
    shape.y0((i) => px(y(power(band[i]![0])))).y1((i) => px(y(power(band[i]![1]))));
    ground
      .append("path")
      .attr("class", `${looks[last.parts[part]!.goal]} band-area`)
      .attr("d", shape(range(points.length)) ?? "");
  });
  endLabels(
    ground,
    last.parts.map(({ name, goal }, part) => ({
      lines: [name],
      ...(values && { value: values[part]! }),
      y: y(power((bands[part]!.at(-1)![0] + bands[part]!.at(-1)![1]) / 2)),
      look: [wordLooks[goal]],
    })),
    { x: right, span: [top - 6, bottom + 6], right: width },
  );
  if (mark) {
    const tops = bands.at(-1)!.map(([, to], i): [number, number] => [px(x(speeds[i]!)), px(y(power(to)))]);
    const here = markPlace(points, tops, mark.at);
    if (here) {
      const words = units.text("rotationalSpeed", mark.at);
      ground
        .append("path")
        .attr("class", "dotted")
        .attr("d", `M${px(here[0])},${px(top - 4)}V${px(bottom)}`);
      // Beside the title, which stands at the left.
      const clear = Math.max(here[0], textWidth(title, { size: 15 }) + textWidth(words) + 16);
      write(ground, words, { x: clear, y: top - 8, anchor: "end", look: "mute" });
      ground
        .append("circle")
        .attr("class", "dark")
        .attr("cx", px(here[0]))
        .attr("cy", px(here[1]))
        .attr("r", 5)
        .attr("data-sets", mark.sets)
        .attr("data-track", points.map(({ speed: at }, i) => [mark.valueAt(at), ...tops[i]!].join(",")).join(" "));
    }
  }
  return svg;
}

/** Where a speed lies on the upper edge of the stack; undefined outside the curve. */
function markPlace(
  points: readonly HeatPoint[],
  tops: readonly (readonly [number, number])[],
  at: number,
): readonly [number, number] | undefined {
  const rounding = 1e-9 * at;
  const after = points.findIndex(({ speed }) => speed >= at - rounding);
  if (after < 0 || at < points[0]!.speed - rounding) return undefined;
  const before = Math.max(0, after - 1);
  const [low, high] = [points[before]!.speed, points[after]!.speed];
  const part = high === low ? 1 : (at - low) / (high - low);
  const between = (i: 0 | 1) => tops[before]![i] + part * (tops[after]![i] - tops[before]![i]);
  return [between(0), between(1)];
}

/** A power as it stands in a column: whole from ten up, one decimal below. */
const rounded = (value: number) => figures(Math.abs(value) < 9.95 ? Math.round(value * 10) / 10 : Math.round(value), 6);
