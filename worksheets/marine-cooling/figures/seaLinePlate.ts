import { scaleLinear } from "d3";
import type { CircuitStation } from "../../../lib/cooling";
import {
  arrowHead,
  axisBelow,
  axisRoom,
  dimension,
  leading,
  plate,
  px,
  reading,
  spot,
  spotAt,
  textWidth,
  widest,
  write,
  writeLines,
} from "../../drawing";
import type { FigureUnits } from "../../sheet";

interface SeaLine {
  /** In the order in which the sea water passes them, all in counterflow. */
  readonly exchangers: readonly (CircuitStation & { readonly limit: number | undefined })[];
  readonly discharge: number;
  readonly dischargeLimit: number;
  readonly exhaust: {
    readonly gas: number;
    readonly mixed: number;
    readonly saturated: number;
    readonly limit: number;
  };
  readonly units: FigureUnits;
  readonly width: number;
  /** Words above the rows instead of beside them. */
  readonly stacked: boolean;
}

/** Height in which the streams pass an exchanger, and room between rows, in CSS pixels. */
const passage = 36;
const between = 24;

/**
 * The sea water runs down the page and grows warmer to the right; each hot side runs up beside it, dashed, and the
 * distance between the two is the difference that drives the heat.
 */
export function drawSeaLine({
  exchangers,
  discharge,
  dischargeLimit,
  exhaust,
  units,
  width,
  stacked,
}: SeaLine): SVGSVGElement {
  const text = (temperature: number) => reading(units, "temperature", temperature);
  const shown = (temperature: number) => units.number("temperature", temperature);
  const rows = exchangers.map(({ name, pinch, limit }) => ({
    name,
    remarks: [
      `closest ${reading(units, "temperatureDifference", pinch, { digits: 2 })}`,
      ...(limit === undefined ? [] : [`at most ${text(limit)}`]),
    ],
  }));
  const exhaustWords = {
    name: "Wet exhaust",
    remarks: [`gas in at ${text(exhaust.gas)}`, `at most ${text(exhaust.limit)}`],
  };
  const words = [...rows, exhaustWords];
  const head = stacked ? 2 * leading + 12 : 0;
  const pitch = head + passage + between;
  const top = 66;
  const begin = top - 12;
  const bottom = top + words.length * pitch - between + 18;

  const temperatures = [
    ...exchangers.flatMap(({ seaInlet, hotInlet, hotOutlet, limit }) => [
      seaInlet,
      hotInlet,
      hotOutlet,
      limit ?? seaInlet,
    ]),
    ...[dischargeLimit, exhaust.limit, exhaust.mixed, exhaust.saturated, discharge],
  ];
  const all = temperatures.map(shown);
  const valueRoom = widest(
    temperatures.map((temperature) => `■ ${text(temperature)}`),
    { bold: true },
  );
  const names = stacked
    ? 0
    : widest(
        words.flatMap(({ name, remarks }) => [name, ...remarks]),
        { bold: true },
      );
  const left = names + valueRoom + 4;
  const right = width - valueRoom - 4;
  const scale = scaleLinear([Math.min(...all), Math.max(...all)], [left, right]);
  const at = (temperature: number) => scale(shown(temperature));
  const rowTop = (i: number) => top + i * pitch + head;

  const { svg, ground } = plate(width, bottom + axisRoom);
  write(ground, "Temperatures along the sea water", { x: 2, y: 16, look: "band" });
  const ticks = scale.ticks(Math.max(3, Math.floor((right - left) / 70)));
  axisBelow(ground, {
    at: scale,
    ticks,
    ends: [left, right],
    across: bottom,
    grid: begin,
    title: `Temperature, ${units.unit("temperature")}`,
  });

  const limitEnd = rowTop(exchangers.length - 1) + passage + between / 2;
  const limitText = `discharge at most ${text(dischargeLimit)}`;
  const half = textWidth(limitText) / 2;
  ground
    .append("path")
    .attr("class", "limit")
    .attr("d", `M${px(at(dischargeLimit))},${begin - 6}V${px(limitEnd)}`);
  write(ground, limitText, {
    x: Math.max(half + 2, Math.min(at(dischargeLimit), width - half)),
    y: begin - 12,
    anchor: "middle",
    look: "mute",
  });

  let sea = `M${px(at(exchangers[0]!.seaInlet))},${begin}`;
  exchangers.forEach(({ seaInlet, seaOutlet, hotInlet, hotOutlet, limit }, i) => {
    const [y0, y1] = [rowTop(i), rowTop(i) + passage];
    sea += `V${y0}L${px(at(seaOutlet))},${y1}`;
    if (limit !== undefined) {
      ground
        .append("path")
        .attr("class", "limit")
        .attr("d", `M${px(at(limit))},${y0 - 2}V${y1 + 6}`);
    }
    spot(ground, i, { x: 0, y: y0 - head - 9, width, height: head + passage + 22 });
    const [hx0, hx1] = [at(hotOutlet), at(hotInlet)];
    ground
      .append("path")
      .attr("class", "line-2")
      .attr("d", `M${px(hx1)},${y1}L${px(hx0)},${y0}`);
    ground
      .append("path")
      .attr("class", "arrow-2")
      .attr("d", arrowHead(hx0, y0, Math.atan2(y0 - y1, hx0 - hx1), 9));
    const atOutlet = hotInlet - seaOutlet <= hotOutlet - seaInlet;
    dimension(ground, at(atOutlet ? seaOutlet : seaInlet), atOutlet ? hx1 : hx0, atOutlet ? y1 : y0);
    const past = limit !== undefined && hotInlet > limit;
    write(ground, `${past ? "■ " : ""}${text(hotInlet)}`, { x: hx1 + 8, y: y1 + 5, look: past ? "past" : "two" });
    write(ground, text(hotOutlet), { x: hx0 + 8, y: y0 - 3, look: "two" });
  });
  const last = rowTop(exchangers.length);
  sea += `V${last}L${px(at(exhaust.mixed))},${last + passage}`;
  ground
    .append("path")
    .attr("class", "limit")
    .attr("d", `M${px(at(exhaust.limit))},${last - 6}V${last + passage + 8}`);
  ground.append("path").attr("class", "line-1").attr("d", sea);
  const after = exchangers.length;
  spotAt(ground, after, at(discharge), rowTop(after - 1) + passage + between / 2);
  spotAt(ground, after + 1, at(exhaust.mixed), last + passage);

  exchangers.forEach(({ seaOutlet }, i) => {
    const past = i === exchangers.length - 1 && discharge > dischargeLimit;
    write(ground, `${past ? "■ " : ""}${text(seaOutlet)}`, {
      x: at(seaOutlet) - 8,
      y: rowTop(i) + passage + 5,
      anchor: "end",
      look: past ? "past" : "one",
    });
  });
  write(ground, text(exchangers[0]!.seaInlet), {
    x: at(exchangers[0]!.seaInlet) - 8,
    y: begin + 6,
    anchor: "end",
    look: "one",
  });
  const hosePast = exhaust.mixed > exhaust.limit;
  write(ground, `${hosePast ? "■ " : ""}${text(exhaust.mixed)}`, {
    x: at(exhaust.mixed) + 10,
    y: last + passage + 5,
    look: hosePast ? "past" : "one",
  });
  ground
    .append("circle")
    .attr("class", "ring")
    .attr("data-row", after + 2)
    .attr("cx", px(at(exhaust.saturated)))
    .attr("cy", last + passage)
    .attr("r", 4);
  write(ground, "saturated", { x: at(exhaust.saturated) - 10, y: last + passage + 5, anchor: "end", look: "mute" });

  words.forEach(({ name, remarks }, i) => {
    const y = rowTop(i);
    if (!stacked) {
      writeLines(ground, [name, ...remarks], { x: 2, y: y + 8, look: ["strong", "mute"] });
      return;
    }
    // At the right, clear of the line, which keeps to the left.
    writeLines(ground, [name, remarks.join(", ")], {
      x: width,
      y: y - head + 4,
      anchor: "end",
      look: ["strong", "mute"],
    });
  });
  return svg;
}
