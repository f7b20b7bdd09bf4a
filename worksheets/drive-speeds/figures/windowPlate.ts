import { scaleLog } from "d3";
import type { DriveSpeeds } from "../../../lib/drive";
import { axisBelow, axisRoom, figures, narrow, plate, px, spot, spread, textWidth, widest, write } from "../../drawing";
import type { FigureFrame } from "../../sheet";

/** A driven unit: the speeds that it allows, and those that it runs at. */
export interface UnitSpeeds {
  readonly unit: string;
  /** 0 where there is none. */
  readonly lowest: number;
  readonly highest: number;
  readonly at: DriveSpeeds;
}

/** Heights inside a row, in CSS pixels: bounds above the band, speeds below it. */
const row = { bounds: 13, band: 19, thick: 16, speeds: 50, pitch: 68 };

/** One row for each unit on a common log scale of speed: what it allows as a band, what it runs at as a line on it. */
export function drawWindows(all: readonly UnitSpeeds[], { width, units }: FigureFrame): SVGSVGElement {
  const stacked = width < narrow + 60;
  const shown = (speed: number) => units.number("rotationalSpeed", speed);
  const text = (speed: number) => figures(shown(speed), 4);
  const head = stacked ? 20 : 0;
  const pitch = row.pitch + head;
  const left = stacked
    ? 26
    : Math.max(
        widest(
          all.map(({ unit }) => unit),
          { bold: true },
        ),
        textWidth("■ too slow, too fast", { bold: true }),
      ) + 20;
  const right = width - 30;
  const speeds = all.flatMap(({ lowest, highest, at }) => [
    at.idle,
    at.maximum,
    highest,
    ...(lowest > 0 ? [lowest] : []),
  ]);
  const scale = scaleLog([shown(Math.min(...speeds)) / 1.12, shown(Math.max(...speeds)) * 1.06], [left, right]);
  const at = (speed: number) => scale(shown(speed));
  const top = stacked ? 28 : 36;
  const bottom = top + all.length * pitch;

  const { svg, ground } = plate(width, bottom + axisRoom);
  write(ground, "Shaft speeds", { x: 2, y: 16, look: "band" });
  const ticks = roundSpeeds(scale.domain() as [number, number]);
  axisBelow(ground, {
    at: scale,
    ticks,
    ends: [left, right],
    across: bottom,
    grid: top,
    title: `Shaft speed, ${units.unit("rotationalSpeed")}`,
  });

  all.forEach((each, i) => {
    const y = top + i * pitch + head;
    const [low, high] = [each.lowest > 0 ? at(each.lowest) : left, at(each.highest)];
    spot(ground, i, { x: 0, y: top + i * pitch, width, height: pitch });
    ground
      .append("rect")
      .attr("class", "wash-1")
      .attr("data-row", i)
      .attr("x", px(low))
      .attr("y", y + row.band)
      .attr("width", px(Math.max(0, high - low)))
      .attr("height", row.thick);
    const ends = `M${px(high)},${y + row.band - 3}v${row.thick + 6}${each.lowest > 0 ? `M${px(low)},${y + row.band - 3}v${row.thick + 6}` : ""}`;
    ground.append("path").attr("class", "outline").attr("d", ends);

    const middle = y + row.band + row.thick / 2;
    const slow = each.at.idle < each.lowest;
    const fast = each.at.maximum > each.highest;
    ground
      .append("path")
      .attr("class", "outline thick")
      .attr("d", `M${px(at(each.at.idle))},${middle}H${px(at(each.at.maximum))}`);
    const square = (x: number) =>
      ground
        .append("rect")
        .attr("class", "mark-past")
        .attr("x", px(x - 5))
        .attr("y", middle - 5)
        .attr("width", 10)
        .attr("height", 10);
    if (slow) square(at(each.at.idle));
    else
      ground
        .append("circle")
        .attr("class", "ring")
        .attr("cx", px(at(each.at.idle)))
        .attr("cy", middle)
        .attr("r", 4.5);
    ground
      .append("circle")
      .attr("class", "dark")
      .attr("cx", px(at(each.at.rated)))
      .attr("cy", middle)
      .attr("r", 4.5);
    if (fast) square(at(each.at.maximum));
    else
      ground
        .append("path")
        .attr("class", "outline thick")
        .attr("d", `M${px(at(each.at.maximum))},${middle - 6}v12`);

    if (each.lowest > 0)
      write(ground, text(each.lowest), { x: low, y: y + row.bounds, anchor: "middle", look: "mute" });
    write(ground, text(each.highest), { x: high, y: y + row.bounds, anchor: "middle", look: "mute" });
    const words = i === 0 ? (["idle ", "", "highest "] as const) : (["", "", ""] as const);
    const labels = [
      { text: `${words[0]}${text(each.at.idle)}`, x: at(each.at.idle), past: slow },
      { text: `${words[1]}${text(each.at.rated)}`, x: at(each.at.rated), past: false },
      { text: `${words[2]}${text(each.at.maximum)}`, x: at(each.at.maximum), past: fast },
    ];
    const middles = spread(
      labels.map((label) => ({ at: label.x, size: textWidth(label.text, { bold: true }) })),
      [2, width - 2],
      8,
    );
    labels.forEach((label, j) => {
      write(ground, label.text, {
        x: middles[j]!,
        y: y + row.speeds,
        anchor: "middle",
        ...(label.past ? { look: "past" } : { look: j === 1 ? "strong" : "" }),
      });
    });
    const verdict = slow && fast ? "■ too slow, too fast" : slow ? "■ too slow at idle" : fast ? "■ too fast" : "";
    write(ground, each.unit, { x: 2, y: stacked ? y - 6 : middle - 3, look: "strong" });
    if (verdict)
      write(
        ground,
        verdict,
        stacked ? { x: width - 2, y: y - 6, anchor: "end", look: "past" } : { x: 2, y: middle + 14, look: "past" },
      );
  });
  return svg;
}

/** Speeds of one, two or five with zeros inside a span. */
function roundSpeeds([low, high]: readonly [number, number]): readonly number[] {
  const ticks: number[] = [];
  for (let ten = 10 ** Math.floor(Math.log10(low)); ten <= high; ten *= 10) {
    for (const lead of [1, 2, 5]) if (lead * ten >= low && lead * ten <= high) ticks.push(lead * ten);
  }
  return ticks;
}
