import { curveMonotoneX, line, scaleLog } from "d3";
import { axisLeft, figures, type Group, narrow, plate, px, reading, spotAt, spread, widest, write } from "../../drawing";
import { figure } from "../../sheet";
import type { UnitLoad } from "../unitLoads";
import { engineSpeeds } from "./engineSpeeds";
import { drawSpeeds, speedAxis, speedRoom } from "./speedAxis";
import { atFiveSpeeds, type BlowerAt, linePoints, loaded, solvedBlower, type TorqueAt, torqueFrom } from "./torqueLines";

const height = 340;
/** Dashes that tell the lines apart without colour, in order. */
const dashes = ["", "9 3", "2 3", "12 3 2 3", "5 3", "1 2.5", "14 4", "7 3 1 3 1 3"];

/** Rows below the plot that tell the blower's two lines apart. */
const keyRows = 2 * 18 + 6;

export const unitTorque = figure({
  key: "unitTorque",
  title: "Torque of every unit over engine speed",
  atRest: true,
  from: torqueFrom,
  describe: (at, units) => {
    const all = loaded(at.unitLoads);
    if (all.length === 0) return `None of the ${at.unitLoads.length} driven units is given a load.`;
    const text = (torque: number) => reading(units, "torque", torque);
    const most = all.reduce((a, b) => (b.torque > a.torque ? b : a));
    const slow = all
      .map((each) => ({ each, ...peakOf(each) }))
      .filter(({ each, at: where, torque }) => (where === "idle" || where === "cruise") && torque > 1.02 * each.torque);
    const solved = solvedBlower(at);
    const top = solved.reduce<BlowerAt | undefined>((a, b) => (a && a.torque >= b.torque ? a : b), undefined);
    return [
      `${most.unit} asks for most: ${text(most.torque)} at its shaft at the promised speed.`,
      ...slow.map(({ each, at: where, torque }) => `${each.unit} pulls hardest at ${where}, ${text(torque)} against ${text(each.torque)} at the promised speed.`),
      ...(top ? [`With the most that the match's parts give, the blower takes up to ${text(top.torque)}, at ${reading(units, "rotationalSpeed", top.speed)}, and ${text(solved[0]!.torque)} at ${reading(units, "rotationalSpeed", solved[0]!.speed)}.`] : []),
    ].join(" ");
  },
  draw: (at, { width, units }) => {
    const all = loaded(at.unitLoads);
    const solved = solvedBlower(at);
    const speeds = at.beltRuns[0]!.members[0]!.at;
    const shown = (torque: number) => units.number("torque", torque);
    const names = all.map(({ unit, torque }) => `${unit} ${figures(shown(torque), 3)}`);
    const right = width < narrow ? width - 20 : width - widest(names, { bold: true }) - 12;
    const axis = speedAxis(speeds, [44, right]);
    const [top, bottom] = [26 + speedRoom.above, 26 + speedRoom.above + height];
    const listed = width < narrow ? all.length * 18 + 8 : 0;
    const { svg, ground } = plate(width, bottom + speedRoom.below + listed + (solved.length > 0 ? keyRows : 0));
    write(ground, `Torque at the unit's shaft, ${units.unit("torque")}`, { x: 2, y: 16, look: "band" });
    if (width >= narrow) write(ground, "numbers: at the promised speed", { x: width - 2, y: 16, anchor: "end", look: "mute" });
    const values = [...all.flatMap((each) => [...atFiveSpeeds(each, at), ...linePoints(each, at)]), ...solved].map(({ torque }) => shown(torque)).filter((value) => value > 0);
    const y = scaleLog([Math.min(...values) / 1.15, Math.max(...values) * 1.15], [bottom, top]);
    axisLeft(ground, { at: y, ticks: roundTorques(y.domain() as [number, number]), ends: [bottom, top + 11], across: 44, grid: right });
    drawSpeeds(ground, { axis, speeds, top, bottom, units, width });
    // Nothing has no place on a scale of tenfolds: it lies on the foot.
    const high = (torque: number) => y(Math.max(shown(torque), y.domain()[0]!));
    const place = ({ speed, torque }: TorqueAt): [number, number] => [axis.x(speed), high(torque)];

    // The middle line between neighbours' names is kept clear: names are as near to their lines' ends as may be.
    const places = spread(all.map(({ torqueAt }) => ({ at: high(torqueAt.overspeed), size: 14 })), [top, bottom], 3);
    all.forEach((each, i) => {
      const points = atFiveSpeeds(each, at).map(place);
      const own = each.role === "blower" && solved.length > 0 ? "dotted" : "torque";
      ground
        .append("path")
        .attr("class", own)
        .attr("stroke-dasharray", own === "torque" ? dashes[i % dashes.length]! : null)
        .attr("d", line().curve(curveMonotoneX)(linePoints(each, at).map(place))!);
      points.forEach(([cx, cy], j) => {
        const mark = i * engineSpeeds.length + j;
        spotAt(ground, mark, cx, cy, 7);
        ground.append("circle").attr("class", "dark").attr("data-row", mark).attr("cx", px(cx)).attr("cy", px(cy)).attr("r", 2.75);
      });
      const [ex, ey] = points.at(-1)!;
      if (width < narrow) {
        const row = bottom + speedRoom.below + 14 + 18 * i;
        write(ground, String(i + 1), { x: ex + 8, y: places[i]! + 4.5, look: "strong" });
        ground.append("path").attr("class", own).attr("stroke-dasharray", own === "torque" ? dashes[i % dashes.length]! : null).attr("d", `M26,${row - 4.5}h34`);
        write(ground, String(i + 1), { x: 2, y: row, look: "strong" });
        write(ground, `${each.unit}, ${reading(units, "torque", each.torque)}`, { x: 68, y: row });
        return;
      }
      ground.append("path").attr("class", "thread").attr("d", `M${px(ex + 4)},${px(ey)}L${px(right + 9)},${px(places[i]!)}`);
      const label = ground.append("text").attr("class", "label strong").attr("x", px(right + 12)).attr("y", px(places[i]! + 4.5)).text(each.unit);
      label.append("tspan").attr("class", "label mute").attr("dx", 7).text(figures(shown(each.torque), 3));
    });
    if (solved.length > 0) {
      const dash = dashes[all.findIndex(({ role }) => role === "blower") % dashes.length] ?? "";
      for (const piece of piecesOf(solved)) {
        ground.append("path").attr("class", "torque").attr("stroke-dasharray", dash).attr("d", line()(piece.map(place))!);
      }
      const first = all.length * engineSpeeds.length;
      solved.forEach((each, i) => {
        spotAt(ground, first + i, ...place(each), 5);
      });
      keyOf(ground, { at: bottom + speedRoom.below + listed + 14, dash });
    }
    return svg;
  },
  table: (at, units) => {
    const speeds = at.beltRuns[0]!.members[0]!.at;
    const { ratio } = at.beltRuns.flatMap(({ members }) => members).find(({ role }) => role === "blower") ?? { ratio: 0 };
    const row = (unit: string, phrase: string, values: { readonly speed: number; readonly torque: number; readonly power: number }) => [
      unit,
      phrase,
      units.number("rotationalSpeed", values.speed),
      units.number("torque", values.torque),
      units.number("power", values.power),
    ];
    return {
      columns: [
        "Unit",
        "At",
        ["Engine speed", units.unit("rotationalSpeed")],
        ["Torque at its shaft", units.unit("torque")],
        ["Power at its shaft", units.unit("power")],
      ],
      rows: [
        ...loaded(at.unitLoads).flatMap((each) =>
          engineSpeeds.map(({ key, phrase }) =>
            row(each.unit, phrase, { speed: speeds[key], torque: each.torqueAt[key], power: powerAt(each, speeds[key] / speeds.rated, key) }),
          ),
        ),
        ...solvedBlower(at).map(({ speed, torque, place }) =>
          row("Blower, as the parts give", place, { speed, torque, power: torque * 2 * Math.PI * speed * ratio }),
        ),
      ],
    };
  },
});

/** Pieces of the blower's line between leaps. */
function piecesOf(solved: readonly BlowerAt[]): readonly (readonly BlowerAt[])[] {
  const starts = solved.flatMap(({ apart }, i) => (apart || i === 0 ? [i] : []));
  return starts.map((start, i) => solved.slice(start, starts[i + 1]));
}

/** Says which of the blower's two lines is which. */
function keyOf(ground: Group, { at, dash }: { readonly at: number; readonly dash: string }): void {
  ground.append("path").attr("class", "torque").attr("stroke-dasharray", dash).attr("d", `M2,${at - 4.5}h34`);
  write(ground, "blower, with the most that the parts give", { x: 44, y: at });
  ground.append("path").attr("class", "dotted").attr("d", `M2,${at + 13.5}h34`);
  write(ground, "blower, as the map asks: for the belts", { x: 44, y: at + 18 });
}

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
