import type { BeltRun, DrivenMember, Rotation, RunningDrive, RunPulley, ToothProfile } from "../../../lib/drive";
import {
  arrowHead,
  type Box,
  clearSpot,
  type Disc,
  type Group,
  leading,
  px,
  type Segment,
  widest,
  wrapped,
  write,
  writeLines,
} from "../../drawing";
import type { FigureUnits } from "../../sheet";
import { beltPath, toothedOutline, turnsClockwise, type View } from "./beltPath";

/** What a belt takes up, in metres right of and above the crank. */
export interface Extent {
  readonly left: number;
  readonly high: number;
  readonly width: number;
  readonly height: number;
}

export interface Panel {
  readonly title: string;
  readonly drive: RunningDrive;
  readonly profile: ToothProfile;
  readonly extent: Extent;
  readonly crank: Rotation;
  /** CSS pixels for each metre. */
  readonly scale: number;
  readonly units: FigureUnits;
  readonly box: Box;
  /** Row of the first pulley in the figure's numbers. */
  readonly row: number;
}

export function extentOf({ pulleys }: BeltRun): Extent {
  const left = Math.min(...pulleys.map(({ x, pitchRadius }) => x - pitchRadius));
  const right = Math.max(...pulleys.map(({ x, pitchRadius }) => x + pitchRadius));
  const low = Math.min(...pulleys.map(({ y, pitchRadius }) => y - pitchRadius));
  const high = Math.max(...pulleys.map(({ y, pitchRadius }) => y + pitchRadius));
  return { left, high, width: right - left, height: high - low };
}

/** One belt over its pulleys, to scale; gives back how far down it reached. */
export function drawPanel(group: Group, { title, drive, profile, extent, crank, scale, units, box, row }: Panel): number {
  const { run, members } = drive;
  const x0 = box.x + (box.width - extent.width * scale) / 2;
  const y0 = box.y + (box.height - extent.height * scale) / 2;
  const view: View = { x: (x) => x0 + (x - extent.left) * scale, y: (y) => y0 + (extent.high - y) * scale, scale };
  const disc = ({ x, y, pitchRadius }: RunPulley): Disc => ({
    x: view.x(x),
    y: view.y(y),
    radius: pitchRadius * scale,
  });
  const body = Math.max(2.5, (profile.thickness - profile.toothHeight) * scale);

  write(group, title, { x: box.x + 2, y: box.y - 14, look: "band" });
  run.pulleys.forEach((pulley, i) => {
    drawPulley(group, pulley, members[i]!, { profile, view, crank, row: row + i });
  });
  group
    .append("path")
    .attr("class", "belt")
    .attr("stroke-width", px(body))
    .attr("d", beltPath(run, crank, view));
  const teeth = group
    .append("path")
    .attr("class", "belt-teeth")
    .attr("d", beltPath(run, crank, view, body / scale / 2 + profile.toothHeight / 3));
  const tooth = (profile.pitch * scale) / 2;
  teeth
    .attr("stroke-width", px(profile.toothHeight * scale * 0.8))
    .attr("stroke-dasharray", `${px(tooth)} ${px(tooth)}`);
  for (const { start, end, length, direction } of run.spans) {
    if (length * scale < 40) continue;
    const [x, y] = [view.x((start.x + end.x) / 2), view.y((start.y + end.y) / 2)];
    group
      .append("path")
      .attr("class", "travel")
      .attr("d", arrowHead(x + 7 * Math.cos(direction), y - 7 * Math.sin(direction), -direction, 15));
  }

  const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  const segments = run.spans.map(
    ({ start, end }): Segment => [view.x(start.x), view.y(start.y), view.x(end.x), view.y(end.y)],
  );
  const discs = run.pulleys.map(disc).map((each) => ({ ...each, radius: each.radius + 4 }));
  const boxes: Box[] = [];
  let foot = box.y + box.height;
  let listed = 0;
  run.pulleys.forEach((pulley, i) => {
    const member = members[i]!;
    const name = wrapped(member.unit, 96, { bold: true });
    const facts = factsOf(member, units);
    const lines = [...name, ...facts];
    const size = { width: widest(lines, { bold: true }), height: lines.length * leading };
    const own = disc(pulley);
    const outward = Math.atan2(own.y - middle.y, own.x - middle.x);
    const spot = clearSpot(own, size, outward, { discs, segments, boxes, bounds: box });
    const looks = lines.map((line, row) => (row < name.length ? "strong" : line.startsWith("■") ? "past" : ""));
    if (spot) {
      boxes.push(spot);
      const centre = { x: spot.x + spot.width / 2, y: spot.y + spot.height / 2 };
      if (spot.away > 12) leader(group, own, spot);
      writeLines(group, lines, { x: centre.x, y: spot.y + 13, anchor: "middle", look: looks });
      return;
    }
    listed += 1;
    write(group, String(listed), { x: own.x, y: own.y + 4.5, anchor: "middle", look: "strong" });
    for (const line of wrapped(`${listed} ${member.unit}, ${facts.join(", ")}`, box.width - 8)) {
      foot += leading;
      write(group, line, { x: box.x + 2, y: foot - 4 });
    }
  });
  return foot;
}

/** A hair from a label to the pulley that it names. */
function leader(group: Group, own: Disc, spot: Box): void {
  const x = Math.min(Math.max(own.x, spot.x), spot.x + spot.width);
  const y = Math.min(Math.max(own.y, spot.y), spot.y + spot.height);
  const away = Math.hypot(own.x - x, own.y - y);
  const share = own.radius / away;
  group
    .append("path")
    .attr("class", "thread")
    .attr("d", `M${px(x)},${px(y)}L${px(own.x + (x - own.x) * share)},${px(own.y + (y - own.y) * share)}`);
}

function factsOf({ teeth, diameter, at, turnsRightly }: DrivenMember, units: FigureUnits): readonly string[] {
  return [
    teeth > 0 ? `${teeth} teeth` : `Ø ${units.text("length", diameter)}`,
    units.text("rotationalSpeed", at.rated),
    ...(turnsRightly ? [] : ["■ backwards"]),
  ];
}

function drawPulley(
  group: Group,
  pulley: RunPulley,
  member: DrivenMember,
  { profile, view, crank, row }: { profile: ToothProfile; view: View; crank: Rotation; row: number },
): void {
  const { x, y, pitchRadius, teeth } = pulley;
  const [cx, cy, radius] = [view.x(x), view.y(y), pitchRadius * view.scale];
  if (teeth === undefined) {
    const face =
      pulley.contact === "back"
        ? profile.thickness - profile.toothHeight - profile.pitchLineDistance
        : profile.toothHeight + profile.pitchLineDistance;
    const inner = Math.max(2, radius - face * view.scale);
    group
      .append("circle")
      .attr("class", "pulley smooth")
      .attr("data-row", row)
      .attr("cx", px(cx))
      .attr("cy", px(cy))
      .attr("r", px(inner));
    group
      .append("circle")
      .attr("class", "pulley smooth")
      .attr("cx", px(cx))
      .attr("cy", px(cy))
      .attr("r", px(inner * 0.8));
  } else {
    group
      .append("path")
      .attr("class", "pulley")
      .attr("data-row", row)
      .attr("d", toothedOutline(pulley, profile, view));
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
  const way = turnsClockwise(pulley, crank) ? 1 : -1;
  const ring = radius * 0.55;
  const at = (angle: number) => [cx + ring * Math.cos(angle), cy + ring * Math.sin(angle)] as const;
  const [from, to] = [way * -2.5, way * 1];
  const [[ax, ay], [bx, by]] = [at(from), at(to)];
  const past = member.turnsRightly ? "" : " past";
  group
    .append("path")
    .attr("class", `turning${past}`)
    .attr("d", `M${px(ax)},${px(ay)}A${px(ring)},${px(ring)} 0 1 ${way === 1 ? 1 : 0} ${px(bx)},${px(by)}`);
  const [tx, ty] = at(to + way * 0.12);
  group
    .append("path")
    .attr("class", member.turnsRightly ? "dark" : "mark-past")
    .attr("d", arrowHead(tx, ty, to + way * 0.12 + (way * Math.PI) / 2, Math.min(9, radius * 0.4)));
}
