/** The same type with every branded number bare, so that a test may write literals. */
export type Plain<T> = T extends number
  ? number
  : T extends string | boolean | undefined | null
    ? T
    : T extends (...args: never[]) => unknown
      ? T
      : { readonly [K in keyof T]: Plain<T[K]> };

/** A library function that takes bare numbers. Kinds exist for the compiler only, so nothing else changes. */
export function plain<A extends unknown[], R>(f: (...args: A) => R): (...args: { [K in keyof A]: Plain<A[K]> }) => R {
  return f as unknown as (...args: { [K in keyof A]: Plain<A[K]> }) => R;
}

export const mm = (value: number) => value / 1000;
export const degrees = (radians: number) => (radians * 180) / Math.PI;
export const radians = (degrees: number) => (degrees * Math.PI) / 180;

/** Relative distance of a value from what is expected. */
export const gap = (value: number, expected: number) =>
  Math.abs(value - expected) / Math.max(Math.abs(expected), 1e-300);
