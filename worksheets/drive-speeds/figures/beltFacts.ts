import { figures, reading } from "../../drawing";
import type { FigureUnits } from "../../sheet";
import type { ShownBelt } from "./shownBelt";

/** What is said of a pulley in the drawing: size and arc of contact, speed, and that it turns backwards. */
export function factsOf({ members, run, layout }: ShownBelt, at: number, units: FigureUnits): readonly string[] {
  const { turnsRightly, at: speeds } = members[at]!;
  const wrap = run ? `, ${figures(units.number("angle", run.pulleys[at]!.wrap), 3)}°` : "";
  return [
    `${sizeOf({ members, layout }, at, units)}${wrap}`,
    reading(units, "rotationalSpeed", speeds.rated, { digits: 4 }),
    ...(turnsRightly ? [] : ["■ backwards"]),
  ];
}

/** Teeth, or the diameter of a pulley without. */
export function sizeOf({ members }: Pick<ShownBelt, "members" | "layout">, at: number, units: FigureUnits): string {
  const { teeth, diameter } = members[at]!;
  return teeth > 0 ? `${teeth} teeth` : `Ø ${reading(units, "length", diameter, { digits: 4 })}`;
}

/** Where a pulley stands, for the hand that moves it. */
export function placeOf({ x, y }: { readonly x: number; readonly y: number }, units: FigureUnits): readonly string[] {
  const text = (length: number) => reading(units, "length", Math.abs(length), { digits: 4 });
  return [`${text(x)} ${x < 0 ? "left" : "right"}`, `${text(y)} ${y < 0 ? "below" : "above"}`];
}
