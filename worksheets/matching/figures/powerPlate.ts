import type { SweepPoint } from "../../../lib/charge";
import { plate, px, resized, spot } from "../../drawing";
import type { FigureFrame } from "../../sheet";
import { emptyPlate } from "./emptyPlate";
import { givenAndPromised } from "./givenAndPromised";
import { limitBand, type Stretch } from "./limitBand";
import { axisAcross, footOf, leapsOf, leftOf, linePanel, panelHead, panelScale, speedAcross, titleBox } from "./overPanel";
import { attained, isEmpty, promisedOf, type Run } from "./run";
import { gapWords } from "./runWords";
import type { Corner } from "./shapes";

/** Power and torque that the parts give over engine speed, and beneath them which limit binds, and which would next. */
export function powerPlate(run: Run, { width, units }: FigureFrame): SVGSVGElement {
  const { points, ratedSpeed, ratedPower } = run;
  if (isEmpty(run)) return emptyPlate(gapWords(run, units), points.length, width);
  const tall = width < 480 ? 0.8 : 1;
  const given = points.map(attained);
  const leaps = leapsOf(run);
  const power = (value: number) => units.number("power", value);
  const powers = {
    title: `Most power at the flywheel, ${units.unit("power")}`,
    top: 16,
    height: 230 * tall,
    values: given.map((at) => at && power(at.point.brakePower)),
    holds: [power(ratedPower)],
    look: "line-1",
    leaps,
  };
  const torques = {
    title: `Torque, ${units.unit("torque")}`,
    top: footOf(powers) + 34,
    height: 130 * tall,
    values: given.map((at) => at && units.number("torque", at.point.torque)),
    look: "line-2",
    leaps,
  };
  const ends = [leftOf([panelScale(powers), panelScale(torques)]), width - 4] as const;
  const along = speedAcross(run, ends, units);
  const { svg, ground } = plate(width, 10);
  const spots = ground.append("g");
  const y = linePanel(ground, along, powers);
  linePanel(ground, along, torques);
  let top = axisAcross(ground, along, footOf(torques)) + 10;

  const here = promisedOf(run);
  const line = along.places.flatMap((x, i): readonly Corner[] =>
    powers.values[i] === undefined ? [] : [[x, y(powers.values[i]!)]],
  );
  const speeds = given.flatMap((at) => at?.engineSpeed ?? []);
  givenAndPromised(ground, {
    x: along.at(units.number("rotationalSpeed", ratedSpeed)),
    promised: { y: y(power(ratedPower)), text: `promised ${units.text("power", ratedPower)}` },
    given: here && {
      y: y(power(here.point.brakePower)),
      text: `given ${units.text("power", here.point.brakePower)}`,
      track: line.map(([a, b], i) => [speeds[i], px(a), px(b)].join(",")).join(" "),
    },
    short: here !== undefined && here.point.brakePower < ratedPower,
    line,
    title: titleBox(powers),
    bounds: {
      x: along.left + 2,
      y: powers.top - 14,
      width: along.right - along.left - 2,
      height: footOf(powers) - powers.top + 8,
    },
    foot: footOf(torques),
  });

  const frame = { left: along.left, right: along.right, known: [] };
  for (const { title, name } of bands) {
    const stretches = points.map((point, i): Stretch => {
      const [from, to] = along.columns[i]!;
      return { ...name(point), from, to };
    });
    if (stretches.every((stretch) => stretch.name === "")) continue;
    top += limitBand(ground, stretches, { ...frame, top, title }) + 14;
  }
  along.columns.forEach(([from, to], i) => {
    const begin = powers.top + panelHead;
    spot(spots, i, { x: from, y: begin, width: to - from, height: top - begin - 10 });
  });
  return resized(svg, width, top - 6);
}

type Name = Omit<Stretch, "from" | "to">;

/** What the bands under the curves tell of each speed. */
const bands: readonly { readonly title: string; readonly name: (point: SweepPoint) => Name }[] = [
  {
    title: "Limit that is met first",
    name: (point) => {
      const name = attained(point)?.binding.name;
      return name === undefined ? { name: point.ok ? "none is allowed" : "no balance", empty: true } : { name };
    },
  },
  {
    title: "Limit that would be met next",
    name: (point) => {
      const at = attained(point);
      if (!at) return { name: "", empty: true };
      return at.next ? { name: at.next.name } : { name: "none in sight", empty: true };
    },
  },
  {
    title: "Passed at every load",
    name: (point) => {
      const [first, ...others] = point.ok ? point.violated : [];
      if (!first) return { name: "", empty: true };
      return { name: others.length > 0 ? `${first.name}, and ${others.length} more` : first.name, past: true };
    },
  },
];
