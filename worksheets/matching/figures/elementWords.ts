import type { PathStation } from "../../../lib/charge";
/** What the element before a station does to the pressure: "× 2.73"; a dash for the open air. */
export function elementWords({ number, pressureRatio }: PathStation): string {
  return number === 0 ? "–" : `× ${pressureRatio.toFixed(3)}`;
}

/** The element's own name, from its station's. */
export function elementName({ name }: PathStation): string {
  const bare = name.replace(/^After /, "");
  return bare[0]!.toUpperCase() + bare.slice(1);
}

/** Numbers of like digits, four of them in the largest, so that they stand in line. */
export function aligned(values: readonly number[]): readonly string[] {
  const largest = Math.max(...values.map(Math.abs));
  const decimals = Math.max(0, 3 - Math.floor(Math.log10(Math.max(largest, 1))));
  return values.map((value) => value.toFixed(decimals).replace(/^-(?=.*[1-9])/, "−").replace(/^-/, ""));
}
