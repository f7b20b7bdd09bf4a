import type { Fraction } from "../../lib/quantity";

/** What a rating allows an engine to do. */
export interface RatingClass {
  /** mean power over the rated one, at most [–] */
  readonly loadFactor: Fraction;
  /** part of the hours at full power, at most [–] */
  readonly fullPower: Fraction;
}

/**
 * Load factor and hours at full power by rating: common practice, no source. Makers draw these lines differently, and a
 * rating is theirs to give.
 */
export const ratings = {
  continuous: { loadFactor: 1 as Fraction, fullPower: 1 as Fraction },
  medium: { loadFactor: 0.8 as Fraction, fullPower: (16 / 24) as Fraction },
  intermittent: { loadFactor: 0.6 as Fraction, fullPower: (2 / 12) as Fraction },
  highPerformance: { loadFactor: 0.35 as Fraction, fullPower: (1 / 12) as Fraction },
} as const satisfies Readonly<Record<string, RatingClass>>;
