import { scaleLinear } from "d3";
import { figures, leading, narrow, plate, px, resized, spot, textWidth, wrapped, write, writeLines } from "../../drawing";
import { type FigureUnits, figure } from "../../sheet";
import { beltRuns } from "../beltRuns";
import { clearanceLeast, fittingSlack, meshLeast, serviceFactor, stretchShare } from "../inputs";
import { pickCrankFewest, pickCrankMost, pickRatio, pickRole, pickTolerance } from "../pickInputs";
import { frontPicks, type Picking, reasonOf } from "../picking";
import { ratioRanges } from "../ratioRanges";
import { unitLoads } from "../unitLoads";

/** So many are shown, and stand in the table. */
const shown = 10;

const text = (units: FigureUnits) => (kind: "length" | "velocity", value: number) => units.text(kind, value);

/** What became of the pairs that were left out, in words. */
function leftOut(at: Picking): string {
  const picks = frontPicks(at);
  if (picks.none !== undefined) return picks.none;
  const { pairs, refused } = picks.found;
  const why = Object.entries(refused)
    .filter(([, count]) => count > 0)
    .map(([reason, count]) => `${count} by ${reason}`);
  return `${pairs} pairs of pulleys give the ratio${why.length > 0 ? `; left out ${why.join(", ")}` : ""}.`;
}

export const picks = figure({
  key: "picks",
  title: "Pulleys and belts that do it, best first",
  from: {
    beltRuns,
    unitLoads,
    ratioRanges,
    pickRole,
    pickRatio,
    pickTolerance,
    pickCrankFewest,
    pickCrankMost,
    meshLeast,
    clearanceLeast,
    fittingSlack,
    stretchShare,
    serviceFactor,
  },
  atRest: true,
  describe: (at, units) => {
    const found = frontPicks(at);
    if (found.none !== undefined) return found.none;
    const best = found.found.picks[0];
    if (best === undefined) return `No pulleys and belt do it. ${leftOut(at)}`;
    return `Best for the ${found.unit.toLowerCase()}: ${best.driverTeeth} teeth on the crank and ${best.drivenTeeth} on the unit, with a belt of ${best.belt.teeth} teeth: ${reasonOf(best, text(units))}. ${leftOut(at)}`;
  },
  draw: (at, { width, units }) => {
    const found = frontPicks(at);
    const rows = found.none === undefined ? found.found.picks.slice(0, shown) : [];
    const stacked = width < narrow + 120;
    const { svg, ground } = plate(width, 1);
    write(ground, "Pulleys and belts, best first", { x: 2, y: 16, look: "band" });
    if (rows.length === 0) {
      const why = found.none ?? `No pulleys and belt do it. ${leftOut(at)}`;
      const told = wrapped(why, width - 8);
      write(ground, `wanted ${figures(at.pickRatio, 4)}, within ${units.text("fraction", at.pickTolerance)}`, { x: 2, y: 40, look: "mute" });
      writeLines(ground, told, { x: 2, y: 64 });
      return resized(svg, width, 72 + 18 * told.length);
    }
    const spread = at.pickRatio * at.pickTolerance;
    const names = rows.map(({ driverTeeth, drivenTeeth }) => `${driverTeeth} : ${drivenTeeth}`);
    const belts = rows.map(({ belt }) => `${belt.teeth} teeth, ${units.text("length", belt.length)}`);
    const nameWidth = Math.max(...names.map((name) => textWidth(name, { bold: true })), ...belts.map((name) => textWidth(name)));
    const left = stacked ? 6 : nameWidth + 44;
    const strip = stacked ? width - 12 : Math.min(240, (width - left) * 0.36);
    const x = scaleLinear([at.pickRatio - spread, at.pickRatio + spread], [left + 6, left + strip - 6]);
    const room = stacked ? width - 12 : width - left - strip - 22;
    const reasons = rows.map((pick) => wrapped(reasonOf(pick, text(units)), room));
    const heights = reasons.map((lines) => (stacked ? 74 + lines.length * leading : Math.max(44, 10 + lines.length * leading)));
    const tops = heights.map((_, i) => 56 + heights.slice(0, i).reduce((sum, height) => sum + height, 0));

    write(ground, `wanted ${figures(at.pickRatio, 4)}`, { x: x(at.pickRatio), y: 40, anchor: "middle", look: "mute" });
    write(ground, `crank : ${found.none === undefined ? found.unit.toLowerCase() : ""}`, { x: 30, y: 40, look: "mute" });
    rows.forEach((pick, i) => {
      const y = tops[i]!;
      const lines = reasons[i]!;
      const line = stacked ? y + 52 : y + 13;
      if (i > 0) ground.append("path").attr("class", "grid").attr("d", `M0,${px(y - 9)}H${width}`);
      write(ground, names[i]!, { x: 30, y: y + 9, look: "strong" });
      write(ground, String(i + 1), { x: 4, y: y + 9, look: "mute" });
      write(ground, belts[i]!, { x: 30, y: y + 26, look: pick.belt.standard ? "" : "mute" });
      ground
        .append("path")
        .attr("class", "axis")
        .attr("d", `M${px(x.range()[0]!)},${px(line)}H${px(x.range()[1]!)}M${px(x(at.pickRatio))},${px(line - 8)}v16`);
      spot(ground, i, { x: 0, y: y - 8, width, height: heights[i]! - 2 });
      ground.append("circle").attr("class", "dark").attr("cx", px(x(pick.ratio))).attr("cy", px(line)).attr("r", 5);
      writeLines(ground, lines, {
        x: stacked ? 6 : left + strip + 18,
        y: stacked ? y + 76 : y + (lines.length > 1 ? 9 : 17),
        look: ["mute"],
      });
    });
    const foot = tops.at(-1)! + heights.at(-1)! + (stacked ? 6 : 8);
    const told = wrapped(leftOut(at), width - 8);
    writeLines(ground, told, { x: 2, y: foot + 6, look: ["mute"] });
    return resized(svg, width, foot + 8 + 18 * told.length);
  },
  table: (at, units) => {
    const found = frontPicks(at);
    const columns = [
      "Crank teeth",
      "Unit teeth",
      "Ratio",
      "Belt teeth",
      ["Belt length", units.unit("length")],
      "Standard",
      ["Tensioner moves", units.unit("length")],
      ["Belt speed, highest", units.unit("velocity")],
      "In mesh",
      ["Width needed", units.unit("length")],
      "Why here",
    ] as const;
    const rows = found.none === undefined ? found.found.picks.slice(0, shown) : [];
    return {
      columns,
      rows: rows.map((pick) => [
        pick.driverTeeth,
        pick.drivenTeeth,
        Number(pick.ratio.toPrecision(5)),
        pick.belt.teeth,
        units.number("length", pick.belt.length),
        pick.belt.standard ? "yes" : "no",
        units.number("length", pick.travel),
        units.number("velocity", pick.beltSpeed),
        pick.teethInMesh,
        units.number("length", pick.widthNeeded),
        reasonOf(pick, text(units)),
      ]),
    };
  },
});
