import type { ChargePath } from "../../../lib/charge";
import { type Group, hatching, px, share, textWidth, write } from "../../drawing";
import type { FigureUnits } from "../../sheet";

export const shareBarHeight = 62;
const thickness = 16;

interface Frame {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly units: FigureUnits;
}

/** Who makes the pressure: gains side by side, by the logarithm of their ratios, and below them what the losses take back. */
export function shareBar(group: Group, { pressureShares }: ChargePath, { left, right, top, units }: Frame): void {
  write(group, "Shares of the pressure rise", { x: left, y: top - 8, look: "band" });
  const known = pressureShares.flatMap(({ key, name, share: part }) =>
    part === undefined ? [] : [{ key, name, part }],
  );
  const gains = known.filter(({ key, part }) => (key === "turbochargers" || key === "blower") && part > 0);
  const gained = gains.reduce((sum, { part }) => sum + part, 0);
  if (!(gained > 0)) {
    write(group, "The manifold holds no more than the open air: there is no rise to share.", {
      x: left,
      y: top + 13,
      look: "mute",
    });
    return;
  }
  const at = (part: number) => left + (right - left) * Math.min(1, Math.max(0, part / gained));
  let reached = 0;
  let wordsEnd = left;
  gains.forEach(({ key, name, part }) => {
    const [from, to] = [at(reached), at(reached + part)];
    group
      .append("rect")
      .attr("class", key === "blower" ? "dark" : "solid")
      .attr("x", px(from))
      .attr("y", top)
      .attr("width", px(to - from))
      .attr("height", thickness);
    const text = `${name} ${share(units, part)}`;
    const size = textWidth(text, { bold: true });
    const x = Math.max(wordsEnd, Math.min(from, right - size));
    write(group, text, { x, y: top + thickness + 17, look: "strong" });
    wordsEnd = x + size + 10;
    reached += part;
  });
  group
    .append("path")
    .attr("class", "seam")
    .attr("d", `M${px(at(gains[0]!.part))},${top}v${thickness}`);
  const lost = gained - 1;
  if (lost > 0.0005 && lost < gained) {
    const box = { x: at(1), y: top, width: right - at(1), height: thickness };
    group
      .append("rect")
      .attr("class", "paper")
      .attr("x", px(box.x))
      .attr("y", top)
      .attr("width", px(box.width))
      .attr("height", thickness);
    group.append("path").attr("class", "hatch").attr("d", hatching(box, 5));
    group
      .append("path")
      .attr("class", "outline")
      .attr("d", `M${px(box.x)},${top}h${px(box.width)}v${thickness}h${px(-box.width)}z`);
    write(group, `lost on the way ${share(units, lost)}`, { x: right, y: top - 6, anchor: "end", look: "mute" });
  }
}
