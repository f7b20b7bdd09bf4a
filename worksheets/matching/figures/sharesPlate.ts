import { type Group, plate, px, resized, share, spot, textWidth, write } from "../../drawing";
import type { FigureFrame } from "../../sheet";
import { emptyPlate } from "./emptyPlate";
import {
  type Across,
  axisAcross,
  footOf,
  leapsOf,
  leftOf,
  panelFrame,
  panelHead,
  panelScale,
  speedAcross,
  stretchesOf,
} from "./overPanel";
import { attained, promisedOf, type Run } from "./run";
import { gapWords } from "./runWords";
import { type Corner, hatchedShape, polyline } from "./shapes";
import { noRise, type Shares, sharesOf } from "./shares";
import { smoothLine } from "./smoothLine";

/** What is known of each speed, and how the shares lie on the plate. */
interface Areas {
  readonly known: readonly (Shares | undefined)[];
  readonly leaps: readonly boolean[];
  readonly along: Across;
  readonly y: (share: number) => number;
}

/** Shares of turbochargers, blower and losses over engine speed. */
export function sharesPlate(run: Run, { width, units }: FigureFrame): SVGSVGElement {
  const { points, ratedSpeed } = run;
  const part = (value: number) => units.number("fraction", value);
  const known = points.map((point) => {
    const at = attained(point);
    return at && sharesOf(at);
  });
  if (known.every((at) => !at)) return emptyPlate(gapWords(run, units) || noRise, points.length, width);
  const panel = {
    title: `Shares of the pressure rise, ${units.unit("fraction")}`,
    top: 16,
    height: width < 480 ? 200 : 250,
    values: known.map((each) => each && part(1 + each.lost)),
    holds: [part(1)],
  };
  const along = speedAcross(run, [leftOf([panelScale(panel)]), width - 4], units);
  const { svg, ground } = plate(width, 10);
  const spots = ground.append("g");
  const scale = panelFrame(ground, along, panel);
  const drawn: Areas = { known, leaps: leapsOf(run), along, y: (value) => scale(part(value)) };
  areas(ground, drawn);
  const here = promisedOf(run);
  const atPromise = here && sharesOf(here);
  const words = (name: string, value: (shares: Shares) => number) =>
    atPromise ? `${name}, ${share(units, value(atPromise))} at ${units.text("rotationalSpeed", ratedSpeed)}` : name;
  names(ground, drawn, {
    turbochargers: words("turbochargers", ({ turbochargers }) => turbochargers),
    blower: words("blower", ({ blower }) => blower),
    lost: words("lost on the way", ({ lost }) => lost),
  });
  const foot = footOf(panel);
  const promised = along.at(units.number("rotationalSpeed", ratedSpeed));
  ground
    .append("path")
    .attr("class", "dotted")
    .attr("d", `M${px(promised)},${px(foot)}V${panel.top + panelHead}`);
  const bottom = axisAcross(ground, along, foot);
  along.columns.forEach(([from, to], i) => {
    spot(spots, i, { x: from, y: panel.top + panelHead, width: to - from, height: foot - panel.top - panelHead });
  });
  return resized(svg, width, bottom);
}

/** Turbochargers from the foot, the blower on them, and hatched what is lost again above the whole. */
function areas(group: Group, { known, leaps, along: { places }, y }: Areas): void {
  const path = (look: string, d: string) => group.append("path").attr("class", look).attr("d", d);
  for (const [from, to] of stretchesOf(known, leaps)) {
    const line = (height: (at: Shares) => number): readonly Corner[] =>
      known.slice(from, to).map((at, i): Corner => [places[from + i]!, y(height(at!))]);
    const foot = line(() => 0);
    const first = line(({ turbochargers }) => turbochargers);
    const whole = line(() => 1);
    const head = line(({ lost }) => 1 + lost);
    const closed = (upper: readonly Corner[], lower: readonly Corner[]) =>
      `${smoothLine(upper)}${smoothLine(lower.toReversed()).replace("M", "L")}Z`;
    path("wash-1", closed(first, foot));
    path("wash", closed(head, first));
    path("hatch", hatchedShape([...head, ...whole.toReversed()], 5, -Math.PI / 4));
    path("line-1", smoothLine(first));
    path("outline", smoothLine(head));
    path("limit", polyline(whole));
  }
}

/** Names where their areas are thickest. */
function names(
  group: Group,
  { known, along: { places, left, right }, y }: Areas,
  words: Readonly<Record<keyof Shares, string>>,
): void {
  const bounds = {
    turbochargers: (at: Shares) => [0, at.turbochargers] as const,
    blower: (at: Shares) => [at.turbochargers, at.turbochargers + at.blower] as const,
  };
  for (const key of ["turbochargers", "blower"] as const) {
    const size = textWidth(words[key], { bold: true });
    let best: { x: number; y: number; thick: number } | undefined;
    known.forEach((at, i) => {
      if (!at) return;
      const x = Math.min(Math.max(places[i]!, left + 8 + size / 2), right - 8 - size / 2);
      // The area must be thick over the whole of the words, so their ends count.
      const ends = known.flatMap((other, j) =>
        other && Math.abs(places[j]! - x) <= size / 2 + 10 ? [bounds[key](other)] : [],
      );
      const foot = Math.max(bounds[key](at)[0], ...ends.map(([from]) => from));
      const head = Math.min(bounds[key](at)[1], ...ends.map(([, to]) => to));
      const thick = y(foot) - y(head);
      if (!best || thick > best.thick) best = { x, y: (y(foot) + y(head)) / 2, thick };
    });
    if (best && best.thick > 18)
      write(group, words[key], {
        x: best.x,
        y: best.y + 4.5,
        anchor: "middle",
        look: key === "turbochargers" ? "one" : "strong",
      });
  }
  const most = Math.max(...known.map((at) => (at ? at.lost : 0)));
  if (!(most > 0.0005)) return;
  const [long, short] = [`hatched: ${words.lost}`, "hatched: lost on the way"];
  const text = textWidth(long) < right - left - 8 ? long : short;
  write(group, text, { x: right, y: y(1 + most) - 6, anchor: "end", look: "mute" });
}
