import { scaleLinear } from "d3";
import { axisBelow, axisRoom, type Group, hatching, px, share, spot, widest, write } from "../../drawing";
import type { FigureUnits } from "../../sheet";

interface DeliveryBand {
  readonly demand: number;
  readonly capacity: number;
  readonly units: FigureUnits;
  readonly width: number;
  readonly top: number;
  /** Names and values above the bars. */
  readonly stacked: boolean;
  readonly pitch: number;
  /** Row of the demand in the figure's numbers; the capacity follows it. */
  readonly row: number;
}

const thickness = 14;

/** What the pump can deliver and what the rail asks for, to one scale; the difference is hatched. */
export function deliveryBand(
  group: Group,
  { demand, capacity, units, width, top, stacked, pitch, row: firstRow }: DeliveryBand,
): void {
  const rows = [
    { name: "The rail asks for", flow: demand, look: "solid" },
    { name: "The pump can deliver", flow: capacity, look: "dark" },
  ] as const;
  const text = (flow: number) => units.text("massFlow", flow, "fuel");
  const left = stacked ? 8 : widest(rows.map(({ name }) => name)) + 16;
  const right = stacked
    ? width - 14
    : width -
      widest(
        rows.map(({ flow }) => text(flow)),
        { bold: true },
      ) -
      18;
  const shown = (flow: number) => units.number("massFlow", flow, "fuel");
  const scale = scaleLinear([0, shown(Math.max(demand, capacity))], [left, right]);
  const at = (flow: number) => scale(shown(flow));
  const bottom = top + 2 * pitch + 2;
  const short = demand > capacity;

  write(group, "Fuel at rail pressure", { x: 2, y: top - 14, look: "band" });
  axisBelow(group, {
    at: scale,
    ticks: scale.ticks(Math.max(3, Math.floor((right - left) / 90))),
    ends: [left, right],
    across: bottom,
    title: `Fuel flow, ${units.unit("massFlow", "fuel")}`,
  });
  rows.forEach(({ name, flow, look }, row) => {
    const y = top + row * pitch + (stacked ? 22 : (pitch - thickness) / 2);
    const words = top + row * pitch + (stacked ? 15 : pitch / 2 + 4.5);
    spot(group, firstRow + row, { x: 0, y: top + row * pitch, width, height: pitch });
    group
      .append("rect")
      .attr("class", look)
      .attr("data-row", firstRow + row)
      .attr("x", px(left))
      .attr("y", y)
      .attr("width", px(at(flow) - left))
      .attr("height", thickness);
    const greater = flow === Math.max(demand, capacity) && demand !== capacity;
    if (greater) {
      const box = {
        x: at(Math.min(demand, capacity)),
        y,
        width: Math.abs(at(demand) - at(capacity)),
        height: thickness,
      };
      group
        .append("rect")
        .attr("class", "paper")
        .attr("x", px(box.x))
        .attr("y", y)
        .attr("width", px(box.width))
        .attr("height", thickness);
      group
        .append("path")
        .attr("class", short ? "hatch-past" : "hatch")
        .attr("d", hatching(box, 5));
      group
        .append("path")
        .attr("class", "outline")
        .attr("d", `M${px(box.x)},${y}h${px(box.width)}v${thickness}h${px(-box.width)}z`);
    }
    write(group, name, { x: 2, y: words });
    write(group, text(flow), { x: width, y: words, anchor: "end", look: "strong" });
  });
  const gap = `${text(Math.abs(capacity - demand))}, ${share(units, Math.abs(capacity - demand) / demand)}`;
  write(group, short ? `■ ${gap} too little` : `${gap} to spare`, {
    x: stacked ? 2 : left,
    y: bottom + axisRoom + 17,
    look: short ? "past" : "mute",
  });
}
