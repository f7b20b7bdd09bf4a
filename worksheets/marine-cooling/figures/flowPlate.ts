import { type Group, hatching, leading, plate, px, share, spot, textWidth, widest, write, writeLines } from "../../drawing";
import type { FigureUnits } from "../../sheet";
import { type BranchPlace, bend, type FlowLayout, flowLayout } from "./flowLayout";
import { type Flow, powerTo } from "./flows";

interface FlowPlate {
  /** In the order in which they leave the stream. */
  readonly flows: readonly Flow[];
  /** Where the engine stands, in two lines. */
  readonly place: readonly [string, string];
  readonly units: FigureUnits;
  readonly width: number;
}

/** Length of an arrow's point, room of the shares' column, and height at which the stream begins. */
const point = 12;
const shareRoom = 64;
const top = 46;

/**
 * A stream from the fuel downwards, from which branches turn off to the right, each as wide as the power it carries.
 * What comes in beside the fuel is hatched at the stream's head.
 */
export function drawFlows({ flows, place, units, width }: FlowPlate): SVGSVGElement {
  const text = (power: number) => units.text("power", power, "heat");
  const fuel = flows.reduce((sum, { power }) => sum + power, 0);
  const stream = Math.min(230, Math.max(96, 0.27 * width));
  const branching = flows.filter(({ goal }) => goal !== "work");
  const words = stream + 22;
  const names = widest(branching.map(({ name }) => name));
  const values =
    words +
    names +
    16 +
    widest(
      branching.map(({ power }) => text(power)),
      { bold: true },
    );
  const seaRight = width - 2;
  const seaShare =
    branching.reduce((sum, { power, goal }) => sum + (goal === "sea" ? Math.max(0, power) : 0), 0) / fuel;
  // Value and share stand beside the name if they end before the gathered water, else under it.
  const stacked = values + shareRoom > seaRight - seaShare * stream - 8;
  const line = (stacked ? 2 : 1) * leading;
  const layout = flowLayout(flows, { stream, from: top + 22, line });
  const { branches, foot } = layout;
  const { svg, ground } = plate(width, foot + point + 2 * leading + 12);

  spot(ground, 0, { x: 0, y: 2, width: stream + 4, height: top - 4 });
  branches.forEach((branch, i) => {
    const { flow, upper, thick } = branch;
    spot(ground, i + 1, {
      x: words,
      y: upper - line - 3,
      width: stacked ? names : values + shareRoom - words,
      height: line,
    });
    if (flow.power > 0) {
      ground
        .append("path")
        .attr("class", `${flow.goal === "sea" ? "flow-sea" : "flow"}${thick < 2 ? " hair" : ""}`)
        .attr("data-row", i + 1)
        .attr("d", branchPath(branch, layout, width));
    }
    const y = upper - 6;
    const [value, part] = [text(flow.power), share(units, flow.power / fuel)];
    write(ground, flow.name, { x: words, y: stacked ? y - leading : y });
    write(ground, value, stacked ? { x: words, y, look: "strong" } : { x: values, y, anchor: "end", look: "strong" });
    if (stacked) write(ground, part, { x: words + textWidth(value, { bold: true }) + 10, y, look: "mute" });
    else write(ground, part, { x: values + shareRoom, y, anchor: "end", look: "mute" });
  });
  ends(ground, layout, { width, rows: branches.length });
  write(ground, "Fuel", { x: 2, y: 16, look: "band" });
  write(ground, text(fuel), { x: 2, y: 16 + leading + 3, look: "strong" });
  const beside = Math.max(words, 2 + textWidth(text(fuel), { bold: true }) + 12);
  writeLines(ground, place, { x: beside, y: 16, look: ["mute"] });
  const [work, sea] = [powerTo(flows, "work"), powerTo(flows, "sea")];
  const y = foot + point + leading;
  footWords(ground, "Shaft", `${text(work)}, ${share(units, work / fuel)}`, { x: 2, y, anchor: "start" });
  if (sea > 0)
    footWords(ground, "Sea water", `${text(sea)}, ${share(units, sea / fuel)}`, { x: seaRight, y, anchor: "end" });
  return svg;
}

/** The shaft's part with its point, the point of the gathered water, and at the head what comes in beside the fuel. */
function ends(
  group: Group,
  { work, sea, foot, fuel, stream }: FlowLayout,
  { width, rows }: { width: number; rows: number },
): void {
  group
    .append("path")
    .attr("class", "flow-work")
    .attr("data-row", rows + 1)
    .attr("d", `M2,${top}H${px(2 + work)}V${px(foot)}l${px(-work / 2)},${point}l${px(-work / 2)},${-point}Z`);
  if (sea > 0) {
    const right = width - 2;
    group
      .append("path")
      .attr("class", "flow-sea")
      .attr("data-row", rows + 2)
      .attr("d", `M${px(right - sea)},${px(foot)}H${px(right)}L${px(right - sea / 2)},${px(foot + point)}Z`);
  }
  if (fuel < stream) {
    group
      .append("path")
      .attr("class", "hatch")
      .attr("d", hatching({ x: 2 + fuel, y: top - 14, width: stream - fuel, height: 14 }, 4));
  }
}

/** Down the stream, around to the right, and out at an arrow or down into the gathered water. */
function branchPath(
  { left, right, upper, thick, gathered }: BranchPlace,
  { sea, foot }: FlowLayout,
  width: number,
): string {
  const [x0, x1, y0, y1] = [2 + left, 2 + right, upper, upper + thick];
  const outer = bend + thick;
  const enter = `M${px(x0)},${top}H${px(x1)}V${px(y0 - bend)}A${bend},${bend} 0 0 0 ${px(x1 + bend)},${px(y0)}`;
  const leave = `H${px(x0 + outer)}A${px(outer)},${px(outer)} 0 0 1 ${px(x0)},${px(y1 - outer)}Z`;
  if (!gathered) {
    const [half, end] = [thick / 2, width - 2];
    const heel = px(end - Math.min(point, half + 4));
    return `${enter}H${heel}L${px(end)},${px(y0 + half)}L${heel},${px(y1)}${leave}`;
  }
  const [inner, far] = gathered.map((edge) => width - 2 - sea + edge) as [number, number];
  return `${enter}H${px(far - outer)}A${px(outer)},${px(outer)} 0 0 1 ${px(far)},${px(y0 + outer)}V${px(foot)}H${px(inner)}V${px(y1 + bend)}A${bend},${bend} 0 0 0 ${px(inner - bend)},${px(y1)}${leave}`;
}

function footWords(
  group: Group,
  name: string,
  value: string,
  { x, y, anchor }: { x: number; y: number; anchor: "start" | "end" },
): void {
  write(group, name, { x, y, anchor, look: "band" });
  write(group, value, { x, y: y + leading, anchor, look: "strong" });
}
