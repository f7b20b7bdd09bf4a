import { type DriveSpeeds, isToothed } from "../../lib/drive";
import type { KindName } from "../../lib/quantity";
import type { FrontFit } from "./fitting";
import type { FrontBeltLoad } from "./frontBeltLoad";
import type { LaidFrontBelt } from "./frontBelts";
import type { UnitLoad } from "./unitLoads";

/** The front drives of one installation. */
export interface FrontOf {
  readonly label: string;
  readonly beltRuns: readonly LaidFrontBelt[];
  readonly beltFits: readonly FrontFit[];
  readonly beltLoads: readonly FrontBeltLoad[];
  readonly unitLoads: readonly UnitLoad[];
}

/** Something that is not the same in all installations. */
export interface Difference {
  /** belt, or unit, as the tables call it */
  readonly of: string;
  readonly what: string;
  /** kind of the numbers among the values; absent where all are words */
  readonly kind?: KindName;
  /** in the order of the installations; "–" where there is none */
  readonly values: readonly (string | number)[];
}

interface Trait<T> {
  readonly what: string;
  readonly kind?: KindName;
  readonly of: (each: T) => string | number | undefined;
}

interface WholeBelt {
  readonly laid: LaidFrontBelt;
  readonly fit: FrontFit | undefined;
  readonly load: FrontBeltLoad | undefined;
}

type Member = LaidFrontBelt["members"][number];

interface WholeUnit {
  readonly member: Member;
  readonly belt: string;
  readonly load: UnitLoad | undefined;
}

const beltTraits: readonly Trait<WholeBelt>[] = [
  { what: "runs over", of: ({ laid }) => laid.members.map(({ unit }) => unit).join(", ") },
  { what: "section", of: ({ laid }) => laid.section.name },
  { what: "width", kind: "length", of: ({ laid }) => laid.belt.width },
  { what: "length of the run", kind: "length", of: ({ laid }) => laid.run?.length ?? laid.fault },
  {
    what: "belt taken",
    of: ({ laid, fit }) =>
      fit?.chosen && (isToothed(laid.section) ? `${fit.chosen.teeth} teeth` : "ribbed, as long as the run"),
  },
  { what: "speed, highest", kind: "velocity", of: ({ laid }) => laid.beltSpeed.maximum },
  { what: "power, promised", kind: "power", of: ({ load }) => load?.power.rated },
  { what: "set tension", kind: "force", of: ({ laid }) => laid.belt.tension },
  { what: "set tension needed", kind: "force", of: ({ load }) => load?.neededTension },
  { what: "width needed", kind: "length", of: ({ load }) => load?.neededWidth },
];

const speedTrait = (what: string, speed: keyof DriveSpeeds): Trait<WholeUnit> => ({
  what,
  kind: "rotationalSpeed",
  of: ({ member }) => member.at[speed],
});

const unitTraits: readonly Trait<WholeUnit>[] = [
  { what: "on", of: ({ belt }) => belt },
  { what: "teeth", kind: "count", of: ({ member }) => (member.teeth > 0 ? member.teeth : undefined) },
  { what: "to the right of the crank", kind: "length", of: ({ member }) => member.x },
  { what: "above the crank", kind: "length", of: ({ member }) => member.y },
  { what: "ratio", kind: "ratio", of: ({ member }) => member.ratio },
  speedTrait("speed at idle", "idle"),
  speedTrait("speed, promised", "rated"),
  speedTrait("speed, highest", "maximum"),
  { what: "turns, seen on its shaft end", of: ({ member }) => member.turns },
  { what: "power, promised", kind: "power", of: ({ load }) => load?.power },
];

/**
 * What is not the same on the fronts of some installations, belt by belt and then unit by unit. Belts are matched by name,
 * units by role and, where several share it, by their order; what one has and another has not is said in one line.
 */
export function differencesOf(fronts: readonly FrontOf[]): readonly Difference[] {
  const belts = fronts.map(({ beltRuns, beltFits, beltLoads }) =>
    keyed(
      beltRuns.map((laid) => ({
        laid,
        fit: beltFits.find(({ mark }) => mark === laid.mark),
        load: beltLoads.find(({ mark }) => mark === laid.mark),
      })),
      ({ laid }) => laid.name,
    ),
  );
  const units = fronts.map(({ beltRuns, unitLoads }) =>
    keyed(
      beltRuns.flatMap(({ name, mark, members }) =>
        members
          .filter(({ role }) => role !== "crank" && role !== "idler")
          .map((member) => ({
            member,
            belt: name,
            load: unitLoads.find((load) => load.belt === mark && load.unit === member.unit),
          })),
      ),
      ({ member }) => member.role,
    ),
  );
  return [
    ...between(belts, beltTraits, ({ laid }) => laid.name),
    ...between(units, unitTraits, ({ member }) => member.unit),
  ];
}

function between<T>(
  all: readonly ReadonlyMap<string, T>[],
  traits: readonly Trait<T>[],
  nameOf: (each: T) => string,
): readonly Difference[] {
  const keys = [...new Set(all.flatMap((each) => [...each.keys()]))];
  return keys.flatMap((key): readonly Difference[] => {
    const here = all.map((each) => each.get(key));
    const of = nameOf(here.find((each) => each !== undefined)!);
    const missing = here.some((each) => each === undefined);
    const presence: Difference = { of, what: "there", values: here.map((each) => (each === undefined ? "–" : "yes")) };
    const traitRows = traits.flatMap((trait): readonly Difference[] => {
      const values = here.map((each) => (each === undefined ? "–" : (trait.of(each) ?? "–")));
      const present = values.filter((_, i) => here[i] !== undefined);
      if (present.every((value) => alike(value, present[0]!))) return [];
      return [{ of, what: trait.what, ...(trait.kind && { kind: trait.kind }), values }];
    });
    return [...(missing ? [presence] : []), ...traitRows];
  });
}

/** The same to nine figures: rounding on the way is no difference. */
function alike(a: string | number, b: string | number): boolean {
  if (typeof a === "string" || typeof b === "string") return a === b;
  return Math.abs(a - b) <= 1e-9 * Math.max(Math.abs(a), Math.abs(b));
}

/** By name, with a number behind the second and later ones of the same name. */
function keyed<T>(list: readonly T[], nameOf: (each: T) => string): ReadonlyMap<string, T> {
  const counts = new Map<string, number>();
  return new Map(
    list.map((each) => {
      const name = nameOf(each);
      const count = (counts.get(name) ?? 0) + 1;
      counts.set(name, count);
      return [count === 1 ? name : `${name} ${count}`, each];
    }),
  );
}
