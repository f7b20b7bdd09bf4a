import { figures, type Group, leading, reading, share, wrapped, write } from "../../drawing";
import type { FigureUnits } from "../../sheet";
import { isUnsure, speedsOf, unknownSpeeds } from "./fieldSpan";
import type { FieldShown } from "./fieldView";

/** Words above a field: what is drawn, and the state to which it is referred. Gives back where its scales begin. */
export function fieldWords(group: Group, shown: FieldShown, top: number, width: number, units: FigureUnits): number {
  const { bank, run, measured } = shown;
  const { reference, speedSpan } = bank.compressor;
  const margin = bank.leastSurgeMargin ?? 0;
  const known = unknownSpeeds(speedSpan, speedsOf(bank, run, measured.length > 0)).length === 0;
  const words = [
    `Flow and wheel speed of each as they would be with air at ${reading(units, "temperature", reference.temperature, { digits: 4 })} and ${reading(units, "pressure", reference.pressure, { digits: 4 })} before it.`,
    run.length > 0
      ? "Rings: the most that each speed of the engine gives. Diamond: promised speed and power."
      : "No speed of the engine is found to run here.",
    ...(margin > 0 ? [`Dotted: ${share(units, margin)} away from surge.`] : []),
    ...(run.some(isUnsure) ? ["Broken line: outside the field, or nothing is given."] : []),
    ...(known ? [] : ["Hatched: beyond the speeds that the field knows."]),
    ...(measured.length > 0 ? ["Crosses: measured."] : []),
  ];
  const count = bank.count === 1 ? "one turbocharger" : `${figures(bank.count)} turbochargers side by side`;
  write(group, `${capital(bank.name)}: ${count}`, { x: 2, y: top + 13, look: "strong" });
  const lines = wrapped(words.join(" "), width - 4);
  lines.forEach((text, i) => {
    write(group, text, { x: 2, y: top + 13 + (i + 1) * leading, look: "mute" });
  });
  const titles = top + 13 + (lines.length + 1) * leading + 8;
  write(group, "Pressure ratio", { x: 2, y: titles, look: "band" });
  write(group, `Wheel speed, ${units.unit("rotationalSpeed")}`, {
    x: width - 2,
    y: titles,
    anchor: "end",
    look: "band",
  });
  return titles + 12;
}

function capital(name: string): string {
  return name === "" ? name : name[0]!.toUpperCase() + name.slice(1);
}
