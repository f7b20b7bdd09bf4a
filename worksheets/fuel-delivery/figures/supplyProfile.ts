import { scaleLinear } from "d3";
import { ambientPressure } from "../../brief/cells";
import { axisBelow, axisRoom, figures, plate, px, spot, textWidth, widest, write } from "../../drawing";
import { figure } from "../../sheet";
import { fuelState, supplyLine } from "../cells";
import { inletPressureNeeded, suctionLeast } from "../inputs";

/** Station behind which the lift pump draws. */
const suctionEnd = 2;

export const supplyProfile = figure({
  key: "supplyProfile",
  title: "Pressure along the supply line",
  from: { supplyLine, fuelState, suctionLeast, inletPressureNeeded, ambientPressure },
  describe: (at, units) => {
    const { stations } = at.supplyLine;
    const text = (pressure: number) => units.text("pressure", pressure, "boost");
    const lowest = stations.reduce((a, b) => (a.pressure <= b.pressure ? a : b));
    const needed = at.ambientPressure + at.inletPressureNeeded;
    return `The pressure is lowest behind the ${lowest.name.toLowerCase()}, ${text(lowest.pressure)}, ${units.text("pressureDifference", lowest.pressure - at.fuelState.vapourPressure, "boost")} above the fuel's vapour pressure. The high-pressure pump gets ${text(stations.at(-1)!.pressure)}, where ${text(needed)} is needed.`;
  },
  draw: (at, { width, units }) => {
    const { stations } = at.supplyLine;
    const bar = (pressure: number) => units.number("pressure", pressure, "boost");
    const needed = at.ambientPressure + at.inletPressureNeeded;
    const pitch = 38;
    const top = 40;
    const bottom = top + stations.length * pitch;
    const { svg, ground } = plate(width, bottom + axisRoom + 4);
    const left = widest(stations.map(({ name }) => name)) + 16;
    const texts = stations.map(({ pressure }) => figures(bar(pressure), 3));
    const right = width - widest(texts, { bold: true }) - 16;
    const shown = stations.map(({ pressure }) => bar(pressure));
    const x = scaleLinear([Math.min(0, ...shown), 1.04 * Math.max(bar(needed), ...shown)], [left, right]).nice(5);

    write(ground, "From the tank to the high-pressure pump", { x: 2, y: 16, look: "band" });
    axisBelow(ground, {
      at: x,
      ticks: x.ticks(Math.max(3, Math.floor((right - left) / 80))),
      ends: [left, right],
      across: bottom,
      grid: top,
      title: `Absolute pressure, ${units.unit("pressure", "boost")}`,
    });
    // Straight down where nothing happens, aslant across the part that takes or gives.
    let path = `M${px(x(shown[0]!))},${top + 4}`;
    stations.forEach((_, i) => {
      const row = top + i * pitch;
      spot(ground, i, { x: 0, y: row, width, height: pitch });
      if (i > 0) path += `L${px(x(shown[i]!))},${px(row + 0.42 * pitch)}`;
      path += `V${px(row + pitch - (i === stations.length - 1 ? 4 : 0))}`;
    });
    ground.append("path").attr("class", "line-1").attr("d", path);
    stations.forEach(({ name }, i) => {
      const row = top + i * pitch;
      const line = row + pitch / 2 + 5;
      write(ground, name, { x: 2, y: line });
      write(ground, texts[i]!, { x: width - 2, y: line, anchor: "end", look: "strong" });
    });
    const airless = x(bar(at.suctionLeast));
    const past = stations[suctionEnd]!.pressure < at.suctionLeast;
    const words = `${past ? "■ " : ""}air comes out below ${figures(bar(at.suctionLeast), 3)}`;
    const rows = [top + pitch, top + (suctionEnd + 1) * pitch] as const;
    ground.append("path").attr("class", "limit").attr("d", `M${px(airless)},${rows[0]}V${rows[1]}`);
    const suction = top + (suctionEnd + 1) * pitch - 4;
    const beside = Math.max(airless, x(shown[suctionEnd]!), x(shown[suctionEnd - 1]!)) + 9;
    const fits = beside + textWidth(words, { bold: past }) < right + 8;
    write(ground, fits ? words : words.replace("air comes out below", "air below"), {
      x: beside,
      y: suction,
      look: past ? "past" : "mute",
    });
    const wanted = x(bar(needed));
    const starved = stations.at(-1)!.pressure < needed;
    ground
      .append("path")
      .attr("class", "limit")
      .attr("d", `M${px(wanted)},${bottom - 2 * pitch}V${bottom}`);
    write(ground, `${starved ? "■ " : ""}needed ${figures(bar(needed), 3)}`, {
      x: wanted - 7,
      y: bottom - 6,
      anchor: "end",
      look: starved ? "past" : "mute",
    });
    return svg;
  },
  table: (at, units) => ({
    columns: [
      "Behind",
      ["Absolute pressure", units.unit("pressure", "boost")],
      ["Change", units.unit("pressureDifference", "boost")],
    ],
    rows: at.supplyLine.stations.map(({ name, pressure }, i, all) => [
      name,
      units.number("pressure", pressure, "boost"),
      units.number("pressureDifference", i === 0 ? 0 : pressure - all[i - 1]!.pressure, "boost"),
    ]),
  }),
});
