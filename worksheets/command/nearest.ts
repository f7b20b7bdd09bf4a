import { lettersApart } from "../../lib/quantity/spelling";

/** Words that suggest the known name nearest to one that is not known, or list the known ones where none is near. */
export function nearestName(name: string, known: readonly string[]): string {
  const slips = (other: string) => lettersApart(name.toLowerCase(), other.toLowerCase());
  const within = known.find((other) => name.length >= 4 && other.toLowerCase().includes(name.toLowerCase()));
  const ranked = known.map((other) => ({ other, apart: slips(other) })).sort((a, b) => a.apart - b.apart);
  const best = ranked[0];
  if (best && best.apart <= Math.max(2, Math.floor(name.length / 3))) return `did you mean "${best.other}"?`;
  if (within) return `did you mean "${within}"?`;
  return known.length <= 8
    ? `there is ${known.map((other) => `"${other}"`).join(", ")}`
    : "the file's inputs name them all";
}
