import { displayUnit } from "./display";
import { type KindName, kinds, type Quantity } from "./kinds";
import { foldedSpelling, lettersApart } from "./spelling";
import { spellingsOf } from "./unitSpellings";
import { toSI, type Unit, type UnitSymbol, unitNamed, unitsOf } from "./units";
import { writeQuantity } from "./write";

export interface Refusal {
  readonly ok: false;
  readonly message: string;
}

/** The kinds whose everyday name is shorter than their full one. */
const everydayNames: { readonly [K in KindName]?: string } = { pressure: "pressure", count: "whole number" };

/** What to write instead, where one kind is often typed for the other. */
const advice: { readonly [wanted in KindName]?: { readonly [typed in KindName]?: string } } = {
  pressure: { gaugePressure: 'add the ambient pressure and write it as "bar a" or "psi a"' },
  gaugePressure: { pressure: 'take off the ambient pressure and write it as "bar g" or "psi g"' },
};

/**
 * The ways in which a typed text is refused, each in words that name what was typed.
 *
 * @param kind kind of quantity that the field takes
 * @param text text as typed
 */
export function refusals(kind: KindName, text: string) {
  const typed = `"${shortened(text)}"`;
  const refused = (words: string): Refusal => ({ ok: false, message: words });
  return {
    because: (reason: string) => refused(`${typed} ${reason}`),

    empty: (unit: Unit) =>
      refused(`nothing is typed here; write a number${unit.symbol && `, in ${unit.symbol} or with its unit`}`),

    otherKind: (other: KindName) => {
      const hint = advice[kind]?.[other];
      if (!hint) return refused(`${typed} is ${withArticle(other)}, not ${withArticle(kind)}`);
      return refused(`${typed} is ${withArticle(other, "full")}, not ${withArticle(kind, "full")}: ${hint}`);
    },

    unknownUnit: (reading: number, typedUnit: string, fieldUnit: Unit) => {
      const symbols = unitsOf(kind).map((unit) => unit.symbol);
      if (symbols.every((symbol) => symbol === "")) {
        return refused(
          `${typed} is not ${withArticle(kind)}: it takes a plain number, without "${shortened(typedUnit)}"`,
        );
      }
      const near = nearestUnit(kind, typedUnit);
      const known = near ? suggestions(kind, reading, near) : `one of ${symbols.filter((each) => each).join(", ")}`;
      const plain = near || fieldUnit.symbol !== "" ? "" : ", or no unit";
      return refused(
        `${typed} is not ${withArticle(kind)}: the unit "${shortened(typedUnit)}" is not known here; try ${known}${plain}`,
      );
    },

    prefix: (reading: number, typedUnit: string, unit: Unit) =>
      refused(
        `${typed} is not read: "${shortened(typedUnit)}" is not ${unit.symbol}, small m is a thousandth and large M a million; ` +
          `write ${reading} ${unit.symbol} if that is meant`,
      ),

    belowVacuum: (unit: Unit) =>
      refused(
        `${typed} is below a perfect vacuum: an absolute pressure is never negative; against ambient it is a gauge pressure, ${unit.symbol} g`,
      ),
  };
}

/** The unit whose spelling is one slip away (two, in long ones), if there is one. */
function nearestUnit(kind: KindName, typedUnit: string): Unit | undefined {
  const folded = foldedSpelling(typedUnit);
  const allowed = folded.length >= 6 ? 2 : 1;
  if (folded.length < 2 || folded.length > 20) return undefined;
  let nearest: { readonly unit: Unit; readonly slips: number } | undefined;
  for (const [spelling, unit] of spellingsOf(kind)) {
    if (spelling.length < 2 || Math.abs(spelling.length - folded.length) > allowed) continue;
    const slips = lettersApart(folded, spelling);
    if (slips <= allowed && slips < (nearest?.slips ?? Number.POSITIVE_INFINITY)) nearest = { unit, slips };
  }
  return nearest?.unit;
}

/** "30 psi or 207 kPa": the reading in the unit probably meant, and in what the other system reads. */
function suggestions<K extends KindName>(kind: K, reading: number, unit: Unit): string {
  const other = unitNamed(kind, displayUnit(kind, unit.system === "US" ? "SI" : "US") as UnitSymbol<K>);
  const value = toSI(unit, reading) as Quantity<K>;
  const first = `${reading} ${unit.symbol}`;
  if (other.symbol === unit.symbol || other.symbol === "" || !Number.isFinite(value)) return first;
  const { number } = writeQuantity(kind, value, { unit: other.symbol as UnitSymbol<K>, digits: 3 });
  return `${first} or ${number} ${other.symbol}`;
}

function withArticle(kind: KindName, name: "everyday" | "full" = "everyday"): string {
  const noun = (name === "everyday" && everydayNames[kind]) || kinds[kind].name;
  return `${/^[aeiou]/.test(noun) ? "an" : "a"} ${noun}`;
}

function shortened(text: string): string {
  const line = text.trim().replace(/\s+/g, " ");
  return line.length > 40 ? `${line.slice(0, 39)}…` : line;
}
