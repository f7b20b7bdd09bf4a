import { type ScaleLinear, scaleLinear } from "d3";
import { axisRoom, narrow, plate, px, textWidth, write } from "../../drawing";
import { curve, endLabels, endRoom, numbersRoom, panel, strips, upwards } from "./panel";

/** A curve in numbers of the units shown. */
export interface NamedCurve {
  readonly name: string;
  readonly points: readonly (readonly [number, number])[];
  readonly look: "line-1" | "line-2" | "outline";
}

/** A field of curves over one quantity. */
export interface CurveField {
  readonly title: string;
  readonly across: string;
  readonly curves: readonly NamedCurve[];
  /** Numbers along the field that the figure's table lists. */
  readonly listed: readonly number[];
  /** Row of the first of them in the figure's numbers. */
  readonly firstRow: number;
  /** Where the build stands. */
  readonly here?: { readonly at: number; readonly text: string };
  /** A bound across the field. */
  readonly limit?: { readonly at: number; readonly text: string };
}

interface Curves {
  readonly fields: readonly CurveField[];
  readonly width: number;
  /** All fields have one scale upwards. */
  readonly alike: boolean;
}

const wordsOf = { "line-1": "one", "line-2": "two", outline: "strong" } as const;
const gap = 34;

/** Fields of curves, side by side where there is room, else one below the other. */
export function drawCurves({ fields, width, alike }: Curves): SVGSVGElement {
  const beside = fields.length > 1 && width >= narrow + 200;
  const own = beside ? (width - gap * (fields.length - 1)) / fields.length : width;
  const top = 46;
  const height = width < narrow ? 190 : 230;
  const pitch = height + axisRoom + 56;
  const heights = fields.map(heightsOf);
  const { svg, ground } = plate(
    width,
    beside ? top + height + axisRoom : top + (fields.length - 1) * pitch + height + axisRoom,
  );
  fields.forEach((field, i) => {
    const from = beside ? i * (own + gap) : 0;
    const over = beside ? top : top + i * pitch;
    const y = upwards(alike ? heights.flat() : heights[i]!, over, height);
    const left = from + numbersRoom([y]);
    const right = from + own - endRoom(field.curves.map(({ name }) => [name]));
    const across = [...field.curves.flatMap(({ points }) => points.map(([x]) => x)), ...field.listed];
    const x = scaleLinear([Math.min(...across), Math.max(...across)], [left, right]);
    strips(ground, x, field.listed, { top: over, bottom: over + height, firstRow: field.firstRow });
    panel(ground, { x, y, title: field.title, titleAt: from + 2, across: field.across });
    drawField(field, x, y);
  });
  return svg;

  function drawField(field: CurveField, x: ScaleLinear<number, number>, y: ScaleLinear<number, number>): void {
    const [left, right] = x.range() as [number, number];
    const [bottom, over] = y.range() as [number, number];
    if (field.limit) {
      ground
        .append("path")
        .attr("class", "limit")
        .attr("d", `M${px(left)},${px(y(field.limit.at))}H${px(right)}`);
      write(ground, field.limit.text, { x: left + 6, y: y(field.limit.at) - 6, look: "mute" });
    }
    for (const { points, look } of field.curves) curve(ground, { x, y }, points, look);
    if (field.here) {
      const at = x(field.here.at);
      const half = textWidth(field.here.text) / 2;
      ground
        .append("path")
        .attr("class", "dotted")
        .attr("d", `M${px(at)},${px(over - 2)}V${px(bottom)}`);
      write(ground, field.here.text, {
        x: Math.max(left + half, Math.min(at, right - half)),
        y: over - 4,
        anchor: "middle",
        look: "mute",
      });
    }
    const ends = field.curves.filter(({ points }) => points.length > 0);
    endLabels(
      ground,
      ends.map(({ name, points, look }) => ({ lines: [name], y: y(points.at(-1)![1]), look: [wordsOf[look]] })),
      { x: right, span: [over - 6, bottom + 6] },
    );
  }
}

/** Every number that a field must reach up to. */
function heightsOf({ curves, limit }: CurveField): readonly number[] {
  return [...curves.flatMap(({ points }) => points.map(([, y]) => y)), ...(limit ? [limit.at] : [])];
}
