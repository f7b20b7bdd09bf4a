import { type BeltSection, isToothed, type Pulley, type Rotation, type RunPulley } from "../../../lib/drive";
import { arrowHead, type Group, px } from "../../drawing";
import { toothedOutline, turnsClockwise, type View, wrapSector } from "./beltPath";
import type { ShownBelt } from "./shownBelt";

export interface DrawnPulley {
  readonly pulley: Pulley;
  readonly member: ShownBelt["members"][number];
  readonly section: BeltSection;
  /** With the belt around it, where one lies. */
  readonly wrapped?: RunPulley | undefined;
  /** It turns as the crank does. */
  readonly withCrank: boolean;
  readonly crank: Rotation;
  readonly view: View;
  /** Row of the figure's numbers. */
  readonly mark: number;
}

/** A pulley to scale: its rim, the part that the belt holds, its axis and the way it turns. */
export function drawPulley(group: Group, drawn: DrawnPulley): void {
  const { pulley, member, section, wrapped, withCrank, crank, view, mark } = drawn;
  const [cx, cy, radius] = [view.x(pulley.x), view.y(pulley.y), pulley.pitchRadius * view.scale];
  if (wrapped && wrapped.wrap > 0)
    group.append("path").attr("class", "wrap").attr("d", wrapSector(wrapped, crank, view));
  if (pulley.teeth !== undefined && isToothed(section)) {
    group
      .append("path")
      .attr("class", "pulley")
      .attr("data-row", mark)
      .attr("d", toothedOutline(pulley, section, view));
  } else {
    const inner = Math.max(2, radius - faceDepth(section, pulley) * view.scale);
    for (const [share, own] of [
      [1, true],
      [0.8, false],
    ] as const) {
      const circle = group
        .append("circle")
        .attr("class", "pulley smooth")
        .attr("cx", px(cx))
        .attr("cy", px(cy))
        .attr("r", px(inner * share));
      if (own) circle.attr("data-row", mark);
    }
  }
  const cross = Math.min(radius + 5, radius * 1.25);
  group
    .append("path")
    .attr("class", "center")
    .attr("d", `M${px(cx - cross)},${px(cy)}H${px(cx + cross)}M${px(cx)},${px(cy - cross)}V${px(cy + cross)}`);
  group
    .append("circle")
    .attr("class", "hub")
    .attr("cx", px(cx))
    .attr("cy", px(cy))
    .attr("r", px(Math.max(2, Math.min(7, radius * 0.16))));
  if (radius < 11) return;
  // Three quarters of a turn, with the head in the direction of rotation.
  const way = turnsClockwise({ sense: withCrank ? 1 : -1 }, crank) ? 1 : -1;
  const ring = radius * 0.55;
  const at = (angle: number) => [cx + ring * Math.cos(angle), cy + ring * Math.sin(angle)] as const;
  const [from, to] = [way * -2.5, way * 1];
  const [[ax, ay], [bx, by]] = [at(from), at(to)];
  group
    .append("path")
    .attr("class", `turning${member.turnsRightly ? "" : " past"}`)
    .attr("d", `M${px(ax)},${px(ay)}A${px(ring)},${px(ring)} 0 1 ${way === 1 ? 1 : 0} ${px(bx)},${px(by)}`);
  const [tx, ty] = at(to + way * 0.12);
  group
    .append("path")
    .attr("class", member.turnsRightly ? "dark" : "mark-past")
    .attr("d", arrowHead(tx, ty, to + way * 0.12 + (way * Math.PI) / 2, Math.min(9, radius * 0.4)));
}

/** From a pulley's face out to the belt's pitch line or cord [m]. */
function faceDepth(section: BeltSection, { contact }: Pulley): number {
  if (!isToothed(section)) return contact === "back" ? section.backDistance : section.cordOffset;
  const { thickness, toothHeight, pitchLineDistance } = section;
  return contact === "back" ? thickness - toothHeight - pitchLineDistance : toothHeight + pitchLineDistance;
}

/** How a pulley takes up its belt: the arm with its pivot, or the slide with arrows to both sides. */
export function drawMount(group: Group, { mount, guide, x, y }: DrawnPulley["member"], view: View): void {
  if (mount === "fixed") return;
  const [cx, cy, gx, gy] = [view.x(x), view.y(y), view.x(guide.x), view.y(guide.y)];
  if (mount === "pivoting") {
    group
      .append("path")
      .attr("class", "arm")
      .attr("d", `M${px(gx)},${px(gy)}L${px(cx)},${px(cy)}`);
    group.append("circle").attr("class", "pivot").attr("cx", px(gx)).attr("cy", px(gy)).attr("r", 5);
    return;
  }
  const direction = Math.atan2(gy - cy, gx - cx);
  const [cos, sin] = [Math.cos(direction), Math.sin(direction)];
  const at = (along: number) => `${px(cx + along * cos)},${px(cy + along * sin)}`;
  group
    .append("path")
    .attr("class", "slide")
    .attr("d", `M${at(-24)}L${at(24)}`);
  group
    .append("path")
    .attr("class", "dark")
    .attr(
      "d",
      arrowHead(cx + 30 * cos, cy + 30 * sin, direction, 8) +
        arrowHead(cx - 30 * cos, cy - 30 * sin, direction + Math.PI, 8),
    );
}
