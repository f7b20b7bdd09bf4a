import { type Box, type Group, leading, plate, px, reading, resized, wrapped, write } from "../../drawing";
import { type Across, type FigureFrame, type FigureUnits, figure } from "../../sheet";
import { beltRuns } from "../beltRuns";
import { beltDifferences } from "./beltDifferences";
import { beltPath, type View } from "./beltPath";
import { panelLayout, viewInto } from "./panelLayout";
import { scaleBar } from "./scaleBar";
import { extentOf, type ShownBelt } from "./shownBelt";

interface Installed {
  readonly label: string;
  readonly belts: readonly ShownBelt[];
}

/** Every installation's belts; those of the one shown alone, where no others are to be had. */
function installedOf(at: { readonly beltRuns: readonly ShownBelt[] } & Across<{ readonly beltRuns: readonly ShownBelt[] }>): readonly Installed[] {
  const all = at.installations?.map(({ label, values }) => ({ label, belts: values.beltRuns })) ?? [];
  return all.length > 0 ? all : [{ label: "As shown", belts: at.beltRuns }];
}

export const installedRuns = figure({
  key: "installedRuns",
  title: "The same engine, installed: its belts side by side",
  from: { beltRuns },
  across: true,
  atRest: true,
  describe: (at, units) => {
    const [first, ...others] = installedOf(at);
    const lengths = first!.belts.flatMap(({ run }) => (run ? [run.length] : []));
    const longest = lengths.length > 0 ? `, the longest ${reading(units, "length", Math.max(...lengths), { digits: 4 })}` : "";
    const belts = `${first!.label}: ${first!.belts.length} belts over ${pulleysOf(first!)} pulleys${longest}.`;
    if (others.length === 0) return `${belts} There is no other installation to hold beside it.`;
    return [
      belts,
      ...others.map((each) => {
        const found = beltDifferences(first!.belts, each.belts, units);
        const many = found.reduce((sum, { words }) => sum + words.length, 0);
        return many === 0
          ? `${each.label} is laid out alike.`
          : `${each.label}: ${each.belts.length} belts over ${pulleysOf(each)} pulleys; ${many} ${many === 1 ? "thing differs" : "things differ"}, on the ${listOf(found.map(({ belt }) => belt.toLowerCase()))}.`;
      }),
    ].join(" ");
  },
  draw: (at, frame) => drawInstalled(installedOf(at), frame),
  table: (at, units) => {
    const [first, ...others] = installedOf(at);
    const rows = [first!, ...others].flatMap((each, i) =>
      each.belts.map((belt) => {
        const found = i === 0 ? undefined : beltDifferences(first!.belts, each.belts, units).find((one) => one.belt === belt.name);
        return [
          each.label,
          belt.name,
          belt.run ? units.number("length", belt.run.length) : "–",
          belt.members.length,
          units.number("velocity", belt.beltSpeed.rated),
          i === 0 ? "is held against" : (found?.words.join("; ") ?? "as there"),
        ];
      }),
    );
    return {
      columns: [
        "Installation",
        "Belt",
        ["Length", units.unit("length")],
        "Pulleys",
        ["Belt speed", units.unit("velocity")],
        `Against ${first!.label}`,
      ],
      rows,
    };
  },
});

/** Widths below which outlines stand under each other, how tall one may be, and the room around it, in CSS pixels. */
const abreastFrom = 420;
const tallest = 300;
const margin = { side: 12, above: 10 };

function drawInstalled(all: readonly Installed[], { width, units }: FigureFrame): SVGSVGElement {
  const { svg, ground } = plate(width, 1);
  const extents = all.map(({ belts }) => extentOf(belts));
  const abreast = width < abreastFrom ? 1 : Math.min(all.length, 3);
  const { scale, rows } = panelLayout(extents, { width, abreast, side: margin.side, above: margin.above, tallest });
  const looks = looksOf(all);
  let [foot, mark] = [0, 0];
  for (const { panels, height } of rows) {
    const top = foot + 34;
    let low = top + height;
    for (const { at, left, width: across } of panels) {
      const { label, belts } = all[at]!;
      const box = { x: left, y: top, width: across, height };
      write(ground, label, { x: left + 2, y: top - 12, look: "band" });
      drawOutline(ground, belts, viewInto(extents[at]!, box, scale), { mark, looks });
      mark += belts.length;
      const below = { x: left + 2, y: top + height, width: across - 14, height: 0 };
      low = Math.max(low, writeDifferences(ground, all, at, { box: below, looks, units }));
    }
    foot = low;
  }
  scaleBar(ground, { x: 2, y: foot + 18, scale, units });
  return resized(svg, width, foot + 32);
}

/** Looks of belts by name, alike in every installation. */
function looksOf(all: readonly Installed[]): ReadonlyMap<string, string> {
  const names = [...new Set(all.flatMap(({ belts }) => belts.map(({ name }) => name)))];
  const looks = ["plain", "dashed", "dotted", "chained"];
  return new Map(names.map((name, i) => [name, looks[i % looks.length]!]));
}

/** Belts and pulleys of an installation as lines: solid, dashed and dotted by belt. */
function drawOutline(
  group: Group,
  belts: readonly ShownBelt[],
  view: View,
  { mark, looks }: { readonly mark: number; readonly looks: ReadonlyMap<string, string> },
): void {
  belts.forEach(({ name, layout, run, travel }, i) => {
    const look = looks.get(name)!;
    for (const { x, y, pitchRadius } of layout.pulleys) {
      group
        .append("circle")
        .attr("class", "plan-pulley")
        .attr("cx", px(view.x(x)))
        .attr("cy", px(view.y(y)))
        .attr("r", px(pitchRadius * view.scale));
    }
    const around = run ? beltPath(run, travel, view) : layout.pulleys.map(({ x, y }, at) => `${at === 0 ? "M" : "L"}${px(view.x(x))},${px(view.y(y))}`).join("");
    group.append("path").attr("class", `plan-belt ${run ? look : "past"}`).attr("data-row", mark + i).attr("d", around);
  });
}

/** Names the belts with a piece of their line, and what differs from the first installation; gives back how far down it reached. */
function writeDifferences(
  group: Group,
  all: readonly Installed[],
  at: number,
  { box: { x, y, width }, looks, units }: { readonly box: Box; readonly looks: ReadonlyMap<string, string>; readonly units: FigureUnits },
): number {
  const { belts } = all[at]!;
  const found = at === 0 ? [] : beltDifferences(all[0]!.belts, belts, units);
  let low = y + 4;
  const gone = found.map(({ belt }) => belt).filter((name) => !belts.some((belt) => belt.name === name));
  for (const name of [...belts.map((belt) => belt.name), ...gone]) {
    const belt = belts.find((each) => each.name === name);
    const words = found.find((each) => each.belt === name)?.words ?? [];
    low += leading + 4;
    if (belt) group.append("path").attr("class", `plan-belt ${looks.get(name)!}`).attr("d", `M${px(x)},${px(low - 4.5)}h26`);
    const length = belt?.run ? reading(units, "length", belt.run.length, { digits: 4 }) : belt ? "■ cannot be laid" : "not there";
    for (const [i, line] of wrapped(`${name}, ${length}`, width - 34, { bold: true }).entries()) {
      if (i > 0) low += leading;
      write(group, line, { x: x + 34, y: low, look: "strong" });
    }
    for (const word of words.filter((each) => each !== "not there" && !each.startsWith("length "))) {
      for (const line of wrapped(word, width - 34)) {
        low += leading;
        write(group, line, { x: x + 34, y: low, look: "mute" });
      }
    }
  }
  return low;
}

function pulleysOf({ belts }: Installed): number {
  return belts.reduce((sum, { members }) => sum + members.length, 0);
}

function listOf(parts: readonly string[]): string {
  return parts.length < 2 ? parts.join("") : `${parts.slice(0, -1).join(", ")} and ${parts.at(-1)}`;
}
