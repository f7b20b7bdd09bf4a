import type { Pulley } from "../../../lib/drive";
import { type Box, clearSpot, type Disc, type Group, leading, px, reading, textWidth, write } from "../../drawing";
import type { FigureUnits } from "../../sheet";
import type { View } from "./beltPath";
import type { ShownBelt } from "./shownBelt";

/** Two pulleys that stand in each other. */
export interface Overlap {
  readonly first: Pulley;
  readonly second: Pulley;
  /** How far, at their pitch circles [m]. */
  readonly depth: number;
}

/** Every pair of pulleys whose pitch circles overlap. */
export function overlapsOf(pulleys: readonly Pulley[]): readonly Overlap[] {
  return pulleys.flatMap((second, i) =>
    pulleys.slice(0, i).flatMap((first) => {
      const depth = first.pitchRadius + second.pitchRadius - Math.hypot(first.x - second.x, first.y - second.y);
      return depth > 0 ? [{ first, second, depth }] : [];
    }),
  );
}

/** The pulleys of which a refusal speaks; a name that is part of a longer name in it does not count. */
export function namedIn(fault: string, pulleys: readonly Pulley[]): readonly Pulley[] {
  let rest = fault;
  const found = new Set<Pulley>();
  for (const pulley of [...pulleys].sort((a, b) => b.name.length - a.name.length)) {
    if (!rest.includes(pulley.name)) continue;
    found.add(pulley);
    rest = rest.replaceAll(pulley.name, "\u0000");
  }
  return pulleys.filter((pulley) => found.has(pulley));
}

/** Marks where a belt cannot be laid: what stands in each other, and the pulleys of which the refusal speaks; gives back where it wrote. */
export function drawFaults(
  group: Group,
  { layout, fault }: Pick<ShownBelt, "layout" | "fault">,
  { view, units, bounds }: { readonly view: View; readonly units: FigureUnits; readonly bounds: Box },
): readonly Box[] {
  if (fault === undefined) return [];
  const overlaps = overlapsOf(layout.pulleys);
  const disc = ({ x, y, pitchRadius }: Pulley): Disc => ({
    x: view.x(x),
    y: view.y(y),
    radius: pitchRadius * view.scale,
  });
  const discs = layout.pulleys.map(disc);
  for (const pulley of new Set([...overlaps.flatMap(({ first, second }) => [first, second]), ...namedIn(fault, layout.pulleys)])) {
    const { x, y, radius } = disc(pulley);
    group.append("circle").attr("class", "fault").attr("cx", px(x)).attr("cy", px(y)).attr("r", px(radius));
  }
  const boxes: Box[] = [];
  for (const { first, second, depth } of overlaps) {
    const shared = lens(disc(first), disc(second));
    group.append("path").attr("class", "fault-lens").attr("d", shared.path);
    const words = `■ ${reading(units, "length", depth)} into each other`;
    const size = { width: textWidth(words, { bold: true }), height: leading };
    const far = Math.max(disc(first).radius, disc(second).radius);
    const spot = clearSpot({ ...shared, radius: far }, size, Math.PI / 2, { discs, segments: [], boxes, bounds });
    // With no clear place it stands on the fault itself.
    const place = spot ?? { x: shared.x - size.width / 2, y: shared.y - leading / 2, ...size };
    boxes.push(place);
    if (spot) {
      const near = { x: Math.min(Math.max(shared.x, spot.x), spot.x + spot.width), y: Math.min(Math.max(shared.y, spot.y), spot.y + spot.height) };
      group.append("path").attr("class", "fault-thread").attr("d", `M${px(near.x)},${px(near.y)}L${px(shared.x)},${px(shared.y)}`);
    }
    write(group, words, { x: place.x + size.width / 2, y: place.y + 13, anchor: "middle", look: "past" });
  }
  return boxes;
}

/** What two discs share: a lens, or the smaller one where it lies in the larger. */
function lens(a: Disc, b: Disc): { readonly path: string; readonly x: number; readonly y: number } {
  const [dx, dy] = [b.x - a.x, b.y - a.y];
  const apart = Math.hypot(dx, dy);
  if (apart <= Math.abs(a.radius - b.radius)) {
    const { x, y, radius } = a.radius < b.radius ? a : b;
    const r = px(radius);
    return { path: `M${px(x - radius)},${px(y)}a${r},${r} 0 1 1 ${2 * r},0a${r},${r} 0 1 1 ${-2 * r},0Z`, x, y };
  }
  const along = (apart * apart + a.radius * a.radius - b.radius * b.radius) / (2 * apart);
  const half = Math.sqrt(Math.max(0, a.radius * a.radius - along * along));
  const [ux, uy] = [dx / apart, dy / apart];
  const [x, y] = [a.x + along * ux, a.y + along * uy];
  const ends = [
    [x - half * uy, y + half * ux],
    [x + half * uy, y - half * ux],
  ] as const;
  const [[x0, y0], [x1, y1]] = ends;
  // The chord lies beyond the axis of a small disc that is nearly swallowed: its part is then the larger arc.
  const arc = ({ radius }: Disc, reach: number) => `A${px(radius)},${px(radius)} 0 ${reach < 0 ? 1 : 0} 0 `;
  const path = `M${px(x0)},${px(y0)}${arc(a, along)}${px(x1)},${px(y1)}${arc(b, apart - along)}${px(x0)},${px(y0)}Z`;
  return { path, x, y };
}
