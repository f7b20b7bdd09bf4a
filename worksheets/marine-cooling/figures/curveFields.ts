import { type ScaleLinear, scaleLinear } from "d3";
import { axisRoom, meetsSegment, narrow, plate, px, textWidth, write } from "../../drawing";
import { curve, endLabels, endRoom, numbersRoom, panel, strips, titleRoom, upwards } from "./panel";

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
const top = 44;

/** Fields of curves, two beside each other where there is room, else one below the other. */
export function drawCurves({ fields, width, alike }: Curves): SVGSVGElement {
  const columns = fields.length > 1 && width >= narrow + 200 ? 2 : 1;
  const own = (width - gap * (columns - 1)) / columns;
  const height = width < narrow ? 190 : 230;
  const pitch = height + axisRoom + 60;
  const heights = fields.map(heightsOf);
  const { svg, ground } = plate(width, top + Math.ceil(fields.length / columns) * pitch - 60);
  fields.forEach((field, i) => {
    const from = (i % columns) * (own + gap);
    const over = top + Math.floor(i / columns) * pitch;
    const reached = alike ? heights.flat() : heights[i]!;
    const y = upwards(reached.length > 0 ? reached : [0], over, height);
    const left = from + numbersRoom([y]);
    const right = from + own - endRoom(field.curves.map(({ name }) => [name]));
    const across = [
      ...field.curves.flatMap(({ points }) => points.map(([along]) => along)),
      ...field.listed,
      ...(field.here ? [field.here.at] : []),
    ];
    const x = scaleLinear([Math.min(...across), Math.max(...across)], [left, right]);
    strips(ground, x, field.listed, { top: over, bottom: over + height, firstRow: field.firstRow });
    if (heights[i]!.length === 0) {
      write(ground, field.title, { x: from + 2, y: over - titleRoom, look: "band" });
      write(ground, "no answer anywhere here", { x: from + 2, y: over + 14, look: "mute" });
      return;
    }
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
    // Last, so that the words' halo keeps them clear of the lines where no place is.
    if (field.limit) write(ground, field.limit.text, { ...limitPlace(field, x, y), look: "mute" });
    const ends = field.curves.filter(({ points }) => points.length > 0);
    endLabels(
      ground,
      ends.map(({ name, points, look }) => ({
        lines: [name],
        y: y(points.at(-1)![1]),
        from: x(points.at(-1)![0]),
        look: [wordsOf[look]],
      })),
      { x: right, span: [over - 6, bottom + 6] },
    );
  }
}

/** Every number that a field must reach up to; a limit keeps clear of the field's edges. */
function heightsOf({ curves, limit }: CurveField): readonly number[] {
  const heights = curves.flatMap(({ points }) => points.map(([, y]) => y));
  if (!limit || heights.length === 0) return heights;
  const room = (Math.max(...heights, limit.at) - Math.min(...heights, limit.at)) / 20;
  return [...heights, limit.at - room, limit.at + room];
}

/** Where a limit's words stand: above or below its line, clear of the curves and of the place where the build stands if they leave room. */
function limitPlace(
  { limit, curves, here }: CurveField,
  x: ScaleLinear<number, number>,
  y: ScaleLinear<number, number>,
): { readonly x: number; readonly y: number } {
  const [left, right] = x.range() as [number, number];
  const width = textWidth(limit!.text);
  const beside = here ? [x(here.at) - width - 6, x(here.at) + 6].filter((at) => at > left && at + width < right) : [];
  const places = [left + 6, right - width - 6, ...beside].flatMap((across) =>
    [-6, 16].map((down) => ({ x: across, y: y(limit!.at) + down })),
  );
  // The field's own words stand over its upper edge.
  const upper = y.range()[1]! + 14;
  const crossed = (place: { x: number }) => here && x(here.at) > place.x - 2 && x(here.at) < place.x + width + 2;
  const clear = (place: { x: number; y: number }) =>
    place.y > upper &&
    !crossed(place) &&
    curves.every(({ points }) =>
      points.slice(1).every((to, i) => {
        const box = { x: place.x, y: place.y - 13, width, height: 17 };
        return !meetsSegment(box, [x(points[i]![0]), y(points[i]![1]), x(to[0]), y(to[1])]);
      }),
    );
  const inside = (place: { y: number }) => place.y > upper;
  return places.find(clear) ?? places.find((place) => inside(place) && !crossed(place)) ?? places.find(inside) ?? places[0]!;
}
