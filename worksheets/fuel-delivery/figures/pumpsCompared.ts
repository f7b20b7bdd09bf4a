import { leading, narrow, plate, px, reading, share, spot, widest, write } from "../../drawing";
import { figure, type FigureUnits } from "../../sheet";
import { type PumpArrangement, pumpArrangements } from "../pumpChoice";

interface Measure {
  readonly name: string;
  readonly value: (of: PumpArrangement) => number;
  readonly text: (of: PumpArrangement, units: FigureUnits) => string;
  /** What it is held against, in the same measure. */
  readonly against?: (of: PumpArrangement) => number;
}

const measures: readonly Measure[] = [
  {
    name: "Delivery, and what the rail asks for",
    value: ({ delivered }) => delivered,
    text: ({ delivered }, units) => units.text("massFlow", delivered, "fuel"),
    against: ({ asked }) => asked,
  },
  {
    name: "Ratio that just keeps up, and the ratio fitted",
    value: ({ ratioNeeded }) => ratioNeeded,
    text: ({ ratioNeeded }, units) => reading(units, "ratio", ratioNeeded),
    against: ({ ratioFitted }) => ratioFitted,
  },
  {
    name: "Part of a full stroke metered",
    value: ({ metering }) => metering,
    text: ({ metering }, units) => share(units, metering),
    against: () => 1,
  },
  {
    name: "Mean torque of each pump",
    value: ({ meanTorque }) => meanTorque,
    text: ({ meanTorque }, units) => reading(units, "torque", meanTorque),
  },
  {
    name: "Highest torque of each pump",
    value: ({ peakTorque }) => peakTorque,
    text: ({ peakTorque }, units) => reading(units, "torque", peakTorque),
  },
  {
    name: "Belt pull of all pumps, mean",
    value: ({ meanPull }) => meanPull,
    text: ({ meanPull }, units) => reading(units, "force", meanPull),
  },
  {
    name: "Belt pull of one pump, highest",
    value: ({ peakPull }) => peakPull,
    text: ({ peakPull }, units) => reading(units, "force", peakPull),
  },
  {
    name: "Power of all pumps",
    value: ({ power }) => power,
    text: ({ power }, units) => reading(units, "power", power),
  },
];

const placesWords = ({ placesLeft }: PumpArrangement) => {
  if (placesLeft < 0) return `■ ${-placesLeft} place${placesLeft === -1 ? "" : "s"} too few`;
  if (placesLeft === 0) return "no place left";
  return `${placesLeft} place${placesLeft === 1 ? "" : "s"} left`;
};

export const pumpsCompared = figure({
  key: "pumpsCompared",
  title: "One high-pressure pump, or two",
  from: { pumpArrangements },
  describe: (at, units) =>
    at.pumpArrangements
      .map((each) => {
        const who = each.count === 1 ? "One pump" : "Two pumps";
        const spare = `${share(units, Math.abs(each.spare))} ${each.spare >= 0 ? "more than is asked" : "too little"}`;
        return `${who} can deliver ${units.text("massFlow", each.delivered, "fuel")}, ${spare}, with a mean torque of ${units.text("torque", each.meanTorque)} on each shaft and ${placesWords(each).replace("■ ", "")} for another accessory.`;
      })
      .join(" "),
  draw: (at, { width, units }) => {
    const stacked = width < narrow;
    const [one, two] = at.pumpArrangements as readonly [PumpArrangement, PumpArrangement];
    const pitch = stacked ? 92 : 62;
    const top = 16;
    const names = stacked ? 0 : widest(measures.map(({ name }) => name)) + 18;
    const label = widest(["Two", "One"], { bold: true }) + 14;
    const values = widest(
      measures.flatMap(({ text }) => [text(one, units), text(two, units)]),
      { bold: true },
    );
    const left = names + label;
    const right = width - values - 14;
    const { svg, ground } = plate(width, top + measures.length * pitch + pitch * 0.75);
    measures.forEach(({ name, value, text, against }, i) => {
      const y = top + i * pitch + (stacked ? 22 : 0);
      const most = Math.max(...[one, two].flatMap((each) => [value(each), against?.(each) ?? 0]), Number.MIN_VALUE);
      const at0 = (amount: number) => left + (Math.max(0, amount) / most) * (right - left);
      write(ground, name, { x: 2, y: stacked ? y - 4 : y + 26 });
      [one, two].forEach((each, k) => {
        const line = y + 2 + k * 24;
        write(ground, k === 0 ? "One" : "Two", { x: names, y: line + 14, look: "mute" });
        ground
          .append("rect")
          .attr("class", k === 0 ? "solid" : "dark")
          .attr("x", px(left))
          .attr("y", line + 3)
          .attr("width", px(Math.max(1, at0(value(each)) - left)))
          .attr("height", 14);
        if (against) {
          const mark = at0(against(each));
          // Paper below the dashes, so that they show on a dark bar.
          for (const look of ["seam", "limit"]) {
            ground.append("path").attr("class", look).attr("d", `M${px(mark)},${line - 1}v22`);
          }
        }
        write(ground, text(each, units), { x: width - 2, y: line + 14, anchor: "end", look: "strong" });
      });
      spot(ground, i, { x: 0, y, width, height: pitch - 8 });
    });
    const y = top + measures.length * pitch + (stacked ? 22 : 0);
    write(ground, "Places left on the front plate", { x: 2, y: stacked ? y - 4 : y + 16 });
    const middle = stacked ? 2 : left;
    [one, two].forEach((each, k) => {
      const words = placesWords(each);
      write(ground, `${k === 0 ? "One: " : "Two: "}${words}`, {
        x: middle,
        y: y + 16 + k * leading,
        look: words.startsWith("■") ? "past" : "strong",
      });
    });
    spot(ground, measures.length, { x: 0, y, width, height: 2 * leading });
    return svg;
  },
  table: (at, units) => {
    const [one, two] = at.pumpArrangements as readonly [PumpArrangement, PumpArrangement];
    const row = (name: string, unit: string, of: (each: PumpArrangement) => number) => [name, of(one), of(two), unit];
    const flow = (value: number) => units.number("massFlow", value, "fuel");
    return {
      columns: ["What", "One pump", "Two pumps", "Unit"],
      rows: [
        row("Delivery, to be held against the rail's demand", units.unit("massFlow", "fuel"), ({ delivered }) => flow(delivered)),
        row("Ratio that just keeps up", "–", ({ ratioNeeded }) => ratioNeeded),
        row("Part of a full stroke metered", units.unit("fraction"), ({ metering }) => units.number("fraction", metering)),
        row("Mean torque of each", units.unit("torque"), ({ meanTorque }) => units.number("torque", meanTorque)),
        row("Highest torque of each", units.unit("torque"), ({ peakTorque }) => units.number("torque", peakTorque)),
        row("Belt pull of all, mean", units.unit("force"), ({ meanPull }) => units.number("force", meanPull)),
        row("Belt pull of one, highest", units.unit("force"), ({ peakPull }) => units.number("force", peakPull)),
        row("Power of all", units.unit("power"), ({ power }) => units.number("power", power)),
        row("Places left", "–", ({ placesLeft }) => placesLeft),
      ],
    };
  },
});
