import { plate, resized, spot } from "../../drawing";
import type { FigureFrame } from "../../sheet";
import { givenAndPromised } from "./givenAndPromised";
import { limitBand, type Stretch } from "./limitBand";
import { axisAcross, footOf, leftOf, linePanel, panelHead, panelScale, speedAcross } from "./overPanel";
import { attained, promisedOf, type Run } from "./run";

/** Power and torque that the parts give over engine speed, and beneath them which limit binds, and which would next. */
export function powerPlate(run: Run, { width, units }: FigureFrame): SVGSVGElement {
  const { points, ratedSpeed, ratedPower } = run;
  const tall = width < 480 ? 0.8 : 1;
  const power = (value: number) => units.number("power", value);
  const powers = {
    title: `Power at the flywheel, ${units.unit("power")}`,
    top: 16,
    height: 230 * tall,
    values: points.map((point) => (point.ok ? power(point.point.brakePower) : undefined)),
    holds: [power(ratedPower)],
    look: "line-1",
  };
  const torques = {
    title: `Torque, ${units.unit("torque")}`,
    top: footOf(powers) + 34,
    height: 130 * tall,
    values: points.map((point) => (point.ok ? units.number("torque", point.point.torque) : undefined)),
    look: "line-2",
  };
  const ends = [leftOf([panelScale(powers), panelScale(torques)]), width - 4] as const;
  const along = speedAcross(run, ends, units);
  const { svg, ground } = plate(width, 10);
  const spots = ground.append("g");
  const y = linePanel(ground, along, powers);
  linePanel(ground, along, torques);
  let top = axisAcross(ground, along, footOf(torques)) + 10;

  const here = promisedOf(run);
  givenAndPromised(ground, {
    x: along.at(units.number("rotationalSpeed", ratedSpeed)),
    promised: { y: y(power(ratedPower)), text: `promised ${units.text("power", ratedPower)}` },
    given: here && { y: y(power(here.point.brakePower)), text: `given ${units.text("power", here.point.brakePower)}` },
    short: here !== undefined && here.point.brakePower < ratedPower,
    line: along.places.flatMap((x, i) => (powers.values[i] === undefined ? [] : [[x, y(powers.values[i]!)] as const])),
    right: along.right,
    bottom: footOf(powers),
    foot: footOf(torques),
  });

  const frame = { left: along.left, right: along.right, known: [] };
  for (const { title, name } of bands) {
    const stretches = points.map((point, i): Stretch => {
      const [from, to] = along.columns[i]!;
      return { ...name(attained(point)), from, to };
    });
    if (stretches.every((stretch) => stretch.name === "")) continue;
    top += limitBand(ground, stretches, { ...frame, top, title }) + 14;
  }
  along.columns.forEach(([from, to], i) => {
    const begin = powers.top + panelHead;
    spot(spots, i, { x: from, y: begin, width: to - from, height: top - begin - 6 });
  });
  return resized(svg, width, top);
}

type Name = Omit<Stretch, "from" | "to">;
const nothing: Name = { name: "no balance", empty: true };

/** What the bands under the curves tell of each speed. */
const bands: readonly { readonly title: string; readonly name: (at: ReturnType<typeof attained>) => Name }[] = [
  { title: "Limit that is met first", name: (at) => (at ? { name: at.binding.name } : nothing) },
  {
    title: "Limit that would be met next",
    name: (at) => (!at ? nothing : at.next ? { name: at.next.name } : { name: "none in sight", empty: true }),
  },
  {
    title: "Passed at every load",
    name: (at) =>
      at && at.violated.length > 0
        ? { name: at.violated.map(({ name }) => name).join(", "), past: true }
        : { name: "", empty: true },
  },
];
