import { line, range, scaleLinear } from "d3";
import { standardAtmosphere } from "../../../lib/fluid";
import type { Length } from "../../../lib/quantity";
import { axisBelow, axisLeft, axisRoom, figures, plate, px, share, spotAt, textWidth, widest, write } from "../../drawing";
import { figure } from "../../sheet";
import { altitude as ownAltitude, ambientDensity } from "../cells";

const standard = (metres: number): number => standardAtmosphere(metres as Length).density;

/** Altitudes of the curve [m]: those that the input allows, a little wider. */
const curve = range(-200, 4601, 100).map((metres) => ({ metres, density: standard(metres) }));

/** Altitudes that the numbers list [m]. */
const listed = range(0, 4501, 500);

export const altitude = figure({
  key: "altitude",
  title: "The air outside, against the altitude",
  from: { altitude: ownAltitude, ambientDensity },
  describe: ({ altitude, ambientDensity }, units) => {
    const less = 1 - ambientDensity / standard(0);
    return `At ${units.text("length", altitude, "altitude")} and the temperature set, the air outside is ${share(units, Math.abs(less))} ${less >= 0 ? "thinner" : "denser"} than the standard atmosphere at sea level: ${units.text("density", ambientDensity)}.`;
  },
  draw: ({ altitude, ambientDensity }, { width, units }) => {
    const height = width < 480 ? 180 : 220;
    const [top, bottom] = [34, 34 + height];
    const up = (metres: number) => units.number("length", metres, "altitude");
    const dense = (density: number) => units.number("density", density);
    const densities = [...curve.map(({ density }) => density), ambientDensity].map(dense);
    const y = scaleLinear([Math.min(...densities) - dense(0.12), Math.max(...densities)], [bottom, top + 14]).nice(5);
    const ticks = y.ticks(5);
    const left = widest(ticks.map((tick) => figures(tick, 6))) + 12;
    const right = width - 14;
    const x = scaleLinear([up(curve[0]!.metres), up(curve.at(-1)!.metres)], [left, right]);
    const { svg, ground } = plate(width, bottom + axisRoom);
    write(ground, `Density, ${units.unit("density")}`, { x: 2, y: 16, look: "band" });
    axisLeft(ground, { at: y, ticks, ends: [top, bottom], across: left, grid: right });
    axisBelow(ground, {
      at: x,
      ticks: x.ticks(Math.max(3, Math.floor((right - left) / 90))),
      ends: [left, right],
      across: bottom,
      title: `Altitude, ${units.unit("length", "altitude")}`,
    });
    const points = curve.map(({ metres, density }): [number, number] => [px(x(up(metres))), px(y(dense(density)))]);
    ground.append("path").attr("class", "line-1").attr("d", line()(points));
    listed.forEach((metres, i) => {
      spotAt(ground, i + 1, x(up(metres)), y(dense(standard(metres))));
    });

    const own = { x: x(up(altitude)), y: y(dense(ambientDensity)) };
    ground
      .append("path")
      .attr("class", "dotted")
      .attr("d", `M${px(own.x)},${bottom}V${px(own.y)}H${left}`);
    ground
      .append("circle")
      .attr("class", "dark")
      .attr("data-row", 0)
      .attr("cx", px(own.x))
      .attr("cy", px(own.y))
      .attr("r", 5);
    // Each label keeps to its own side of the curve, which falls to the right: the air's below if it is the denser.
    const below = ambientDensity <= standard(altitude);
    const words = `here ${units.text("density", ambientDensity)}`;
    const size = textWidth(words, { bold: true });
    const beside = below ? Math.max(left + 4, own.x - 10 - size) : Math.min(own.x + 10, right - size);
    // Near the left edge the label reaches past the point, to where the curve has come down.
    const [, curveThere] = points.find(([across]) => across >= beside + size) ?? points.at(-1)!;
    const under = Math.max(own.y + 20, curveThere + 18);
    write(ground, words, { x: beside, y: Math.min(bottom - 8, below ? under : own.y - 8), look: "strong" });
    // The curve's name goes where the other is not: above its beginning, or below its end.
    const [nearX, nearY] = points[8]!;
    if (below)
      write(ground, "standard atmosphere, dry", { x: nearX + 10, y: nearY - 6, look: "one" });
    else
      write(ground, "standard atmosphere, dry", {
        x: right - 4,
        y: points.at(-1)![1] + 22,
        anchor: "end",
        look: "one",
      });
    return svg;
  },
  table: ({ altitude, ambientDensity }, units) => ({
    columns: ["Air", ["Altitude", units.unit("length", "altitude")], ["Density", units.unit("density")]],
    rows: [
      ["this build", units.number("length", altitude, "altitude"), units.number("density", ambientDensity)],
      ...listed.map((metres) => [
        "standard atmosphere",
        units.number("length", metres, "altitude"),
        units.number("density", standard(metres)),
      ]),
    ],
  }),
});
