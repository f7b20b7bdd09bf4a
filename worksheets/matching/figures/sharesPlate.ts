import { type Group, plate, px, resized, share, spot, textWidth, write } from "../../drawing";
import type { FigureFrame } from "../../sheet";
import {
  type Across,
  axisAcross,
  footOf,
  leftOf,
  linePanel,
  panelFrame,
  panelHead,
  panelScale,
  speedAcross,
} from "./overPanel";
import { promisedOf, type Run } from "./run";
import { type Corner, hatchedShape, polyline } from "./shapes";
import { blowerPower, type Shares, sharesOf } from "./shares";

/** Shares of turbochargers, blower and losses over engine speed, and below them the power that the blower takes. */
export function sharesPlate(run: Run, { width, units }: FigureFrame): SVGSVGElement {
  const { points, ratedSpeed, matchBuild } = run;
  const part = (value: number) => units.number("fraction", value);
  const known = points.map((point) => (point.ok ? sharesOf(point) : undefined));
  const all = {
    title: `Shares of the pressure rise, ${units.unit("fraction")}`,
    top: 16,
    height: width < 480 ? 190 : 230,
    values: known.map((each) => each && part(1 + each.lost)),
    holds: [part(1)],
  };
  const powers = {
    title: `Power that the blower takes, ${units.unit("power")}`,
    top: footOf(all) + 34,
    height: 110,
    values: points.map((point) => (point.ok ? units.number("power", blowerPower(point)) : undefined)),
    look: "line-2",
  };
  const hasBlower = matchBuild.path.some(({ kind }) => kind === "blower");
  const scales = [all, ...(hasBlower ? [powers] : [])].map(panelScale);
  const along = speedAcross(run, [leftOf(scales), width - 4], units);
  const { svg, ground } = plate(width, 10);
  const spots = ground.append("g");
  const y = panelFrame(ground, along, all);
  const here = promisedOf(run);
  const atPromise = here && sharesOf(here);
  areas(ground, known, along, (value) => y(part(value)));
  const words = (name: string, value: (shares: Shares) => number) =>
    atPromise ? `${name} ${share(units, value(atPromise))}` : name;
  names(ground, known, along, (value) => y(part(value)), {
    turbochargers: words("turbochargers", ({ turbochargers }) => turbochargers),
    blower: words("blower", ({ blower }) => blower),
    lost: words("lost on the way", ({ lost }) => lost),
  });

  const promised = along.at(units.number("rotationalSpeed", ratedSpeed));
  let foot = footOf(all);
  if (hasBlower) {
    foot = footOf(powers);
    const height = linePanel(ground, along, powers);
    if (here) {
      const at = height(units.number("power", blowerPower(here)));
      ground.append("circle").attr("class", "dark").attr("cx", px(promised)).attr("cy", px(at)).attr("r", 4.5);
      const text = units.text("power", blowerPower(here));
      const size = textWidth(text, { bold: true });
      // Below the line, which rises; above it where there is no room.
      const base = at + 22 < foot - 6 ? at + 22 : at - 10;
      write(ground, text, { x: Math.min(promised, along.right - size / 2), y: base, anchor: "middle", look: "two" });
    }
  }
  ground
    .append("path")
    .attr("class", "dotted")
    .attr("d", `M${px(promised)},${px(foot)}V${all.top + panelHead}`);
  const bottom = axisAcross(ground, along, foot);
  along.columns.forEach(([from, to], i) => {
    spot(spots, i, { x: from, y: all.top + panelHead, width: to - from, height: foot - all.top - panelHead });
  });
  return resized(svg, width, bottom + 2);
}

/** Turbochargers from the foot, the blower on them, and hatched what is lost again above the whole. */
function areas(
  group: Group,
  known: readonly (Shares | undefined)[],
  { places }: Across,
  y: (value: number) => number,
): void {
  const path = (look: string, d: string) => group.append("path").attr("class", look).attr("d", d);
  const between = (
    from: number,
    to: number,
    low: (at: Shares) => number,
    high: (at: Shares) => number,
  ): readonly Corner[] => {
    const upper: Corner[] = [];
    const lower: Corner[] = [];
    for (let i = from; i < to; i += 1) {
      upper.push([places[i]!, y(high(known[i]!))]);
      lower.unshift([places[i]!, y(low(known[i]!))]);
    }
    return [...upper, ...lower];
  };
  for (const [from, to] of stretches(known)) {
    const count = to - from;
    const turbochargers = between(
      from,
      to,
      () => 0,
      (at) => at.turbochargers,
    );
    const blower = between(
      from,
      to,
      (at) => at.turbochargers,
      (at) => at.turbochargers + at.blower,
    );
    const lost = between(
      from,
      to,
      () => 1,
      (at) => 1 + at.lost,
    );
    path("wash-1", `${polyline(turbochargers)}Z`);
    path("wash", `${polyline(blower)}Z`);
    path("hatch", hatchedShape(lost, 5, -Math.PI / 4));
    path("line-1", polyline(turbochargers.slice(0, count)));
    path("outline", polyline(blower.slice(0, count)));
    path("limit", polyline(lost.slice(count)));
  }
}

/** Runs of neighbours at which there is something to share. */
function stretches(known: readonly (Shares | undefined)[]): readonly (readonly [number, number])[] {
  const all: (readonly [number, number])[] = [];
  known.forEach((each, i) => {
    if (!each) return;
    const last = all.at(-1);
    if (last?.[1] === i) all[all.length - 1] = [last[0], i + 1];
    else all.push([i, i + 1]);
  });
  return all;
}

/** Names where their areas are thickest. */
function names(
  group: Group,
  known: readonly (Shares | undefined)[],
  { places, left, right }: Across,
  y: (value: number) => number,
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
      const [low, high] = bounds[key](at);
      const x = Math.min(Math.max(places[i]!, left + 6 + size / 2), right - 6 - size / 2);
      // The area must be thick over the whole of the words, so their ends count.
      const ends = known.flatMap((other, j) =>
        other && Math.abs(places[j]! - x) <= size / 2 + 10 ? [bounds[key](other)] : [],
      );
      const foot = Math.max(low, ...ends.map(([from]) => from));
      const head = Math.min(high, ...ends.map(([, to]) => to));
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
  const highest = Math.max(...known.map((at) => (at ? at.lost : 0)));
  if (highest > 0.0005) write(group, words.lost, { x: right, y: 12, anchor: "end", look: "mute" });
  if (known.every((at) => !at)) {
    write(group, "The manifold holds no more than the open air.", { x: left + 8, y: y(0.5), look: "mute" });
  }
}
