import type { FigureUnits, } from "../../worksheets/sheet";
import type { Piece } from "../../worksheets/board";

/** A piece's name and where it stands: "Alternator, 95 mm to the left, 440 mm above". */
export function placeWords({ name, x, y, fixed }: Pick<Piece, "name" | "x" | "y" | "fixed">, units: FigureUnits): string {
  const text = (length: number) => units.text("length", Math.abs(length));
  const across = x === 0 ? "straight" : `${text(x)} to the ${x > 0 ? "right" : "left"}`;
  const up = y === 0 ? "level with the crank" : `${text(y)} ${y > 0 ? "above" : "below"}`;
  return fixed ? `${name}, stays at the crank's place` : `${name}, ${across}, ${up}`;
}
