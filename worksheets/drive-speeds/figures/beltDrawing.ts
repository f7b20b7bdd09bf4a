import { type BeltRun, isToothed } from "../../../lib/drive";
import { arrowHead, type Group, px } from "../../drawing";
import { beltPath, type View } from "./beltPath";
import { drawMount, drawPulley } from "./pulleyDrawing";
import type { ShownBelt } from "./shownBelt";

interface Drawn {
  readonly view: View;
  /** Row of the figure's numbers of its first pulley. */
  readonly mark: number;
  /** The run that it had when it could last be laid, where it cannot now. */
  readonly before?: BeltRun | undefined;
}

/** A belt over its pulleys, to scale and in full. */
export function drawBelt(group: Group, belt: ShownBelt, { view, mark, before }: Drawn): void {
  const { layout, members, run, section, travel } = belt;
  if (before)
    group.append("path").attr("class", "belt-before").attr("d", beltPath(before, travel, view));
  for (const member of members) drawMount(group, member, view);
  layout.pulleys.forEach((pulley, i) => {
    drawPulley(group, {
      pulley,
      member: members[i]!,
      section,
      wrapped: run?.pulleys[i],
      withCrank: pulley.contact === layout.pulleys[0]!.contact,
      crank: travel,
      view,
      mark: mark + i,
    });
  });
  if (!run) return;
  const thickness = isToothed(section) ? section.thickness - section.toothHeight : section.cordOffset + section.backDistance;
  const body = Math.max(2.5, thickness * view.scale);
  group.append("path").attr("class", "belt").attr("stroke-width", px(body)).attr("d", beltPath(run, travel, view));
  if (isToothed(section)) {
    const tooth = px((section.pitch * view.scale) / 2);
    group
      .append("path")
      .attr("class", "belt-teeth")
      .attr("stroke-width", px(section.toothHeight * view.scale * 0.8))
      .attr("stroke-dasharray", `${tooth} ${tooth}`)
      .attr("d", beltPath(run, travel, view, body / view.scale / 2 + section.toothHeight / 3));
  }
  for (const { start, end, length, direction } of run.spans) {
    if (length * view.scale < 40) continue;
    const [x, y] = [view.x((start.x + end.x) / 2), view.y((start.y + end.y) / 2)];
    group
      .append("path")
      .attr("class", "travel")
      .attr("d", arrowHead(x + 7 * Math.cos(direction), y - 7 * Math.sin(direction), -direction, 15));
  }
}

/** A belt in another plane: its line and the pitch circles of its pulleys. */
export function drawGhost(group: Group, { layout, run, travel }: ShownBelt, { view, mark }: Omit<Drawn, "before">): void {
  if (run) group.append("path").attr("class", "ghost-belt").attr("d", beltPath(run, travel, view));
  layout.pulleys.forEach(({ x, y, pitchRadius }, i) => {
    group
      .append("circle")
      .attr("class", "ghost")
      .attr("data-row", mark + i)
      .attr("cx", px(view.x(x)))
      .attr("cy", px(view.y(y)))
      .attr("r", px(pitchRadius * view.scale));
  });
}
