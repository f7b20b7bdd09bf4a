import { type KindName, kinds } from "./kinds";
import { foldedSpelling, plainSpelling } from "./spelling";
import { type Unit, unitsOf } from "./units";

/** Endings that may stand behind any symbol of a kind; for pressures they say against what it is measured. */
const endings: { readonly [K in KindName]?: readonly string[] } = {
  pressure: ["a", "abs"],
  gaugePressure: ["g", "gauge"],
  pressureDifference: ["d", "diff"],
  crankAngle: ["crank", "of crank", "crank angle"],
  volumePerStroke: ["per stroke", "/stroke", "/st"],
};

const kindNames = Object.keys(kinds) as readonly KindName[];
const symbolOwners = new Map<string, KindName>();
const lexicons = new Map<KindName, ReadonlyMap<string, Unit>>();

/**
 * Every spelling of a unit of this kind, folded as by foldedSpelling, with the unit it means.
 *
 * @param kind kind of quantity
 * @throws TypeError if one spelling would mean two different units
 */
export function spellingsOf(kind: KindName): ReadonlyMap<string, Unit> {
  const known = lexicons.get(kind);
  if (known) return known;
  const lexicon = new Map<string, Unit>();
  for (const unit of unitsOf(kind)) {
    const bare = [unit.symbol, ...unit.aliases];
    const ended = (endings[kind] ?? []).flatMap((ending) => bare.map((each) => `${each} ${ending}`));
    for (const spelling of [...bare, unit.written, ...ended]) addSpelling(lexicon, foldedSpelling(spelling), unit);
  }
  lexicons.set(kind, lexicon);
  return lexicon;
}

/** The unit of this kind that is spelled so, or undefined. */
export function unitSpelled(kind: KindName, typed: string): Unit | undefined {
  return spellingsOf(kind).get(foldedSpelling(typed));
}

/**
 * The kind to which a typed unit belongs when it is not this one. A symbol typed letter for letter in its own case
 * belongs to its kind even where another kind knows the same letters in other case: kN is a force, kn are knots.
 *
 * @param kind the kind that was expected
 * @param typed unit as typed
 */
export function otherKindSpelled(kind: KindName, typed: string): KindName | undefined {
  const plain = plainSpelling(typed);
  if (spelledExactly(kind, plain)) return undefined;
  const exact = kindsBySymbol().get(plain);
  if (exact) return exact;
  if (unitSpelled(kind, typed)) return undefined;
  return kindNames.find((other) => unitSpelled(other, typed));
}

function addSpelling(lexicon: Map<string, Unit>, spelling: string, unit: Unit): void {
  const owner = lexicon.get(spelling) ?? unit;
  if (owner.factor !== unit.factor || owner.offset !== unit.offset) {
    throw new TypeError(
      `spellingsOf: "${spelling}" means both ${owner.symbol} and ${unit.symbol}; it must mean one unit`,
    );
  }
  lexicon.set(spelling, owner);
}

function spelledExactly(kind: KindName, plain: string): boolean {
  const unit = spellingsOf(kind).get(plain.toLowerCase());
  return !!unit && [unit.symbol, unit.written, ...unit.aliases].some((each) => plainSpelling(each) === plain);
}

/** The first kind that has a unit of this symbol, in its plain spelling with case. */
function kindsBySymbol(): ReadonlyMap<string, KindName> {
  if (symbolOwners.size > 0) return symbolOwners;
  for (const kind of kindNames) {
    for (const { symbol } of unitsOf(kind)) {
      const plain = plainSpelling(symbol);
      if (plain !== "" && !symbolOwners.has(plain)) symbolOwners.set(plain, kind);
    }
  }
  return symbolOwners;
}
