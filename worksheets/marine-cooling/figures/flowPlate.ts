import { type Group, leading, plate, px, share, spot, textWidth, widest, write } from "../../drawing";
import type { FigureUnits } from "../../sheet";
import type { Flow } from "./flows";

interface FlowPlate {
  readonly flows: readonly Flow[];
  /** What is left at the foot of the stream. */
  readonly shaft: number;
  readonly fuel: number;
  readonly sea: number;
  readonly units: FigureUnits;
  readonly width: number;
}

/** Radius of a bend's inner side, room above a branch for its words beyond one line, and length of an arrow's point. */
const bend = 10;
const air = 9;
const point = 12;
const shareRoom = 64;
const top = 46;

/** A stream from the fuel downwards, from which branches turn off to the right, each as wide as the power it carries. */
export function drawFlows({ flows, shaft, fuel, sea, units, width }: FlowPlate): SVGSVGElement {
  const stream = Math.min(230, Math.max(96, 0.27 * width));
  const scale = stream / fuel;
  const wide = (power: number) => Math.max(0, power) * scale;
  const seaWidth = flows.reduce((sum, { power, goal }) => sum + (goal === "sea" ? wide(power) : 0), 0);
  const seaRight = width - 2;
  const words = stream + 22;
  const names = widest(flows.map(({ name }) => name));
  const values =
    words +
    names +
    16 +
    widest(
      flows.map(({ power }) => units.text("power", power, "heat")),
      { bold: true },
    );
  // Value and share stand beside the name if they end before the gathered water, else under it.
  const stacked = values + shareRoom > seaRight - seaWidth - 8;
  const line = (stacked ? 2 : 1) * leading;

  let y = top + 22;
  const rows = flows.map((flow) => {
    const upper = y + line + air;
    const thick = wide(flow.power);
    y = upper + thick;
    return { ...flow, upper, thick };
  });
  const foot = Math.max(...rows.map(({ upper, thick, goal }) => upper + thick + (goal === "sea" ? bend : 0))) + 16;
  const { svg, ground } = plate(width, foot + point + 2 * leading + 12);

  let left = stream; // right edge of what is still in the stream
  let seaLeft = seaRight; // left edge of what has been gathered
  spot(ground, 0, { x: 0, y: 2, width: stream + 4, height: top + 4 });
  rows.forEach(({ name, power, goal, upper, thick }, i) => {
    const end = goal === "sea" ? seaLeft : width - 2;
    const look = goal === "sea" ? "flow-sea" : "flow";
    const hair = thick < 2 ? " hair" : "";
    spot(ground, i + 1, { x: words, y: upper - line - 3, width: stacked ? names : values + shareRoom - words, height: line });
    ground
      .append("path")
      .attr("class", look + hair)
      .attr("data-row", i + 1)
      .attr("d", branch({ left: left - thick, right: left, upper, thick, end, goal, foot }));
    left -= thick;
    if (goal === "sea") seaLeft -= thick;
    const y = upper - 6;
    const value = units.text("power", power, "heat");
    const part = share(units, power / fuel);
    write(ground, name, { x: words, y: stacked ? y - leading : y });
    write(ground, value, stacked ? { x: words, y, look: "strong" } : { x: values, y, anchor: "end", look: "strong" });
    if (stacked) write(ground, part, { x: words + textWidth(value, { bold: true }) + 10, y, look: "mute" });
    else write(ground, part, { x: values + shareRoom, y, anchor: "end", look: "mute" });
  });
  const shaftWidth = wide(shaft);
  ground
    .append("path")
    .attr("class", "flow-work")
    .attr("data-row", rows.length + 1)
    .attr(
      "d",
      `M2,${top}H${px(2 + shaftWidth)}V${px(foot)}l${px(-shaftWidth / 2)},${point}l${px(-shaftWidth / 2)},${-point}Z`,
    );
  const tip = (seaLeft + seaRight) / 2;
  ground
    .append("path")
    .attr("class", "flow-sea")
    .attr("data-row", rows.length + 2)
    .attr("d", `M${px(seaLeft)},${px(foot)}H${px(seaRight)}L${px(tip)},${px(foot + point)}Z`);
  write(ground, "Fuel", { x: 2, y: 16, look: "band" });
  write(ground, units.text("power", fuel, "heat"), { x: 2, y: 16 + leading + 3, look: "strong" });
  footWords(ground, "Shaft", units.text("power", shaft, "heat"), share(units, shaft / fuel), {
    x: 2,
    y: foot + point + leading,
    anchor: "start",
  });
  footWords(ground, "Sea water", units.text("power", sea, "heat"), share(units, sea / fuel), {
    x: seaRight,
    y: foot + point + leading,
    anchor: "end",
  });
  return svg;
}

interface Branch {
  /** Its strip of the stream. */
  readonly left: number;
  readonly right: number;
  /** Upper edge of its level part, and how wide it is. */
  readonly upper: number;
  readonly thick: number;
  /** Where the level part ends: at an arrow's tip, or at the far side of a bend downwards. */
  readonly end: number;
  readonly goal: Flow["goal"];
  readonly foot: number;
}

/** Down the stream, around to the right, and out at an arrow or down into the gathered water. */
function branch({ left, right, upper, thick, end, goal, foot }: Branch): string {
  const [x0, x1, y0, y1] = [2 + left, 2 + right, upper, upper + thick];
  const outer = bend + thick;
  const enter = `M${px(x0)},${top}H${px(x1)}V${px(y0 - bend)}A${bend},${bend} 0 0 0 ${px(x1 + bend)},${px(y0)}`;
  const leave = `H${px(x0 + outer)}A${px(outer)},${px(outer)} 0 0 1 ${px(x0)},${px(y1 - outer)}Z`;
  if (goal === "away") {
    const half = thick / 2;
    return `${enter}H${px(end - Math.min(point, half + 4))}L${px(end)},${px(y0 + half)}L${px(end - Math.min(point, half + 4))},${px(y1)}${leave}`;
  }
  const [inner, far] = [end - thick, end];
  return `${enter}H${px(far - outer)}A${px(outer)},${px(outer)} 0 0 1 ${px(far)},${px(y0 + outer)}V${px(foot)}H${px(inner)}V${px(y1 + bend)}A${bend},${bend} 0 0 0 ${px(inner - bend)},${px(y1)}${leave}`;
}

function footWords(
  group: Group,
  name: string,
  value: string,
  part: string,
  { x, y, anchor }: { x: number; y: number; anchor: "start" | "end" },
): void {
  write(group, name, { x, y, anchor, look: "band" });
  write(group, `${value}, ${part}`, { x, y: y + leading, anchor, look: "strong" });
}
