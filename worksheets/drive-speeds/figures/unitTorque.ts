import { curveMonotoneX, line, scaleLog } from "d3";
import { axisLeft, figures, narrow, plate, px, reading, spotAt, spread, textWidth, widest, write } from "../../drawing";
import { figure } from "../../sheet";
import { beltRuns } from "../beltRuns";
import { type UnitLoad, unitLoads } from "../unitLoads";
import { engineSpeeds } from "./engineSpeeds";
import { drawSpeeds, speedAxis, speedRoom } from "./speedAxis";

const height = 340;
/** Dashes that tell the lines apart without colour, in order. */
const dashes = ["", "9 3", "2 3", "12 3 2 3", "5 3", "1 2.5", "14 4", "7 3 1 3 1 3"];

const loaded = (loads: readonly UnitLoad[]) => loads.filter(({ torque }) => torque > 0);

export const unitTorque = figure({
  key: "unitTorque",
  title: "Torque of every unit over engine speed",
  from: { unitLoads, beltRuns },
  describe: ({ unitLoads }, units) => {
    const all = loaded(unitLoads);
    if (all.length === 0) return `None of the ${unitLoads.length} driven units is given a load.`;
    const text = (torque: number) => reading(units, "torque", torque);
    const most = all.reduce((a, b) => (b.torque > a.torque ? b : a));
    const peaks = all.map((each) => ({ each, ...peakOf(each) }));
    const atIdle = peaks.filter(({ at }) => at === "idle" ).filter(({ each, torque }) => torque > 1.02 * each.torque);
    return [
      `${most.unit} asks for most: ${text(most.torque)} at its shaft at the promised speed.`,
      ...atIdle.map(({ each, torque }) => `${each.unit} pulls hardest at idle, ${text(torque)} against ${text(each.torque)} at the promised speed.`),
    ].join(" ");
  },
  draw: ({ unitLoads, beltRuns }, { width, units }) => {
    const all = loaded(unitLoads);
    const speeds = beltRuns[0]!.members[0]!.at;
    const shown = (torque: number) => units.number("torque", torque);
    const names = all.map(({ unit, torque }) => `${unit} ${figures(shown(torque), 3)}`);
    const right = width < narrow ? width - 8 : width - widest(names, { bold: true }) - 12;
    const axis = speedAxis(speeds, [44, right]);
    const [top, bottom] = [26 + speedRoom.above, 26 + speedRoom.above + height];
    const listed = width < narrow ? all.length * 18 + 8 : 0;
    const { svg, ground } = plate(width, bottom + speedRoom.below + listed);
    write(ground, `Torque at the unit's shaft, ${units.unit("torque")}`, { x: 2, y: 16, look: "band" });
    const values = all.flatMap(({ torqueAt }) => engineSpeeds.map(({ key }) => shown(torqueAt[key])));
    const y = scaleLog([Math.min(...values) / 1.15, Math.max(...values) * 1.15], [bottom, top]);
    axisLeft(ground, { at: y, ticks: roundTorques(y.domain() as [number, number]), ends: [bottom, top + 11], across: 44, grid: right });
    drawSpeeds(ground, { axis, speeds, top, bottom, units, width });

    // The middle line between neighbours' names is kept clear: names are as near to their lines' ends as may be.
    const places = spread(all.map(({ torqueAt }) => ({ at: y(shown(torqueAt.overspeed)), size: 14 })), [top, bottom], 3);
    all.forEach((each, i) => {
      const points = engineSpeeds.map(({ key }) => [axis.x(speeds[key]), y(shown(each.torqueAt[key]))] as [number, number]);
      ground
        .append("path")
        .attr("class", "torque")
        .attr("stroke-dasharray", dashes[i % dashes.length]!)
        .attr("d", line().curve(curveMonotoneX)(points)!);
      points.forEach(([cx, cy], j) => {
        const mark = i * engineSpeeds.length + j;
        spotAt(ground, mark, cx, cy, 7);
        ground.append("circle").attr("class", "dark").attr("data-row", mark).attr("cx", px(cx)).attr("cy", px(cy)).attr("r", 2.75);
      });
      const [ex, ey] = points.at(-1)!;
      if (width < narrow) {
        const row = bottom + speedRoom.below + 14 + 18 * i;
        write(ground, String(i + 1), { x: Math.min(ex + 3, width - 8), y: places[i]! + 4.5, look: "strong" });
        ground.append("path").attr("class", "torque").attr("stroke-dasharray", dashes[i % dashes.length]!).attr("d", `M26,${row - 4.5}h34`);
        write(ground, String(i + 1), { x: 2, y: row, look: "strong" });
        write(ground, `${each.unit}, ${reading(units, "torque", each.torque)}`, { x: 68, y: row });
        return;
      }
      ground.append("path").attr("class", "thread").attr("d", `M${px(ex + 4)},${px(ey)}L${px(right + 9)},${px(places[i]!)}`);
      write(ground, each.unit, { x: right + 12, y: places[i]! + 4.5, look: "strong" });
      write(ground, figures(shown(each.torque), 3), { x: right + 16 + textWidth(each.unit, { bold: true }), y: places[i]! + 4.5, look: "mute" });
    });
    return svg;
  },
  table: ({ unitLoads, beltRuns }, units) => {
    const speeds = beltRuns[0]!.members[0]!.at;
    return {
      columns: [
        "Unit",
        "At",
        ["Engine speed", units.unit("rotationalSpeed")],
        ["Torque at its shaft", units.unit("torque")],
        ["Power at its shaft", units.unit("power")],
      ],
      rows: loaded(unitLoads).flatMap((each) =>
        engineSpeeds.map(({ key, phrase }) => [
          each.unit,
          phrase,
          units.number("rotationalSpeed", speeds[key]),
          units.number("torque", each.torqueAt[key]),
          units.number("power", powerAt(each, speeds[key] / speeds.rated, key)),
        ]),
      ),
    };
  },
});

/** The engine's speed at which a unit's torque is greatest; the slowest of several alike. */
function peakOf({ torqueAt }: UnitLoad): { readonly at: string; readonly torque: number } {
  return engineSpeeds
    .map(({ key }) => ({ at: key as string, torque: torqueAt[key] as number }))
    .reduce((most, each) => (each.torque > most.torque * (1 + 1e-9) ? each : most));
}

function powerAt({ torqueAt, speed }: UnitLoad, share: number, key: (typeof engineSpeeds)[number]["key"]): number {
  return torqueAt[key] * 2 * Math.PI * speed * share;
}

/** Torques of one, two or five with zeros inside a span. */
function roundTorques([low, high]: readonly [number, number]): readonly number[] {
  const ticks: number[] = [];
  for (let ten = 10 ** Math.floor(Math.log10(low)); ten <= high; ten *= 10) {
    for (const lead of [1, 2, 5]) if (lead * ten >= low && lead * ten <= high) ticks.push(lead * ten);
  }
  return ticks;
}
