import { px } from "../../drawing";

/** One element of a line that runs down the page: its value where the stream comes in and where it goes out, as places across. */
export interface ProfileRow {
  /** Neighbours of one group lie beside each other in the stream. */
  readonly group: number;
  /** Part of the stream that passes it; what a group leaves over flows past. */
  readonly share: number;
  readonly begin: number;
  readonly end: number;
  /** The whole stream's, before its group and behind it. */
  readonly trunkBegin: number;
  readonly trunkEnd: number;
  /** Heights between which the stream passes it. */
  readonly top: number;
  readonly bottom: number;
}

export interface Profile {
  /** Path of the whole stream. */
  readonly trunk: string;
  /** Path of the parts of it that run beside each other; empty if there are none. */
  readonly branches: string;
  /** Where parts come together again. */
  readonly mixes: readonly { readonly x: number; readonly y: number }[];
}

/** Room below the last of a group, down to where its parts come together, in CSS pixels. */
export const mixDrop = 20;

/** Whether a group's parts come together behind it: it has several, or some of the stream flows past. */
export function mixes(group: readonly { readonly share: number }[]): boolean {
  return group.length > 1 || 1 - group.reduce((sum, { share }) => sum + share, 0) > 1e-6;
}

/** Rows in groups, each as long as its neighbours have one number. */
export function groupsOf<R extends { readonly group: number }>(rows: readonly R[]): readonly (readonly R[])[] {
  const groups: R[][] = [];
  for (const row of rows) {
    const last = groups.at(-1);
    if (last !== undefined && last[0]!.group === row.group) last.push(row);
    else groups.push([row]);
  }
  return groups;
}

/**
 * A stream down the page as a line whose place across is a value of it, such as its temperature: straight down between
 * elements, slanting within them.
 *
 * @param rows elements in the order in which they stand down the page
 * @param from height at which the line begins
 * @param to height at which it ends
 */
export function profile(rows: readonly ProfileRow[], from: number, to: number): Profile {
  const places: { x: number; y: number }[] = [];
  let trunk = `M${px(rows[0]!.trunkBegin)},${px(from)}`;
  let branches = "";
  for (const group of groupsOf(rows)) {
    const [first, last] = [group[0]!, group.at(-1)!];
    if (!mixes(group)) {
      trunk += `V${px(first.top)}L${px(first.end)},${px(first.bottom)}`;
      continue;
    }
    const past = 1 - group.reduce((sum, { share }) => sum + share, 0) > 1e-6;
    const mixed = last.bottom + mixDrop;
    const ends = [...group.map(({ end }) => end), first.trunkEnd, ...(past ? [first.trunkBegin] : [])];
    trunk += `V${px(first.top)}M${px(first.trunkEnd)},${px(mixed)}`;
    branches += `M${px(first.trunkBegin)},${px(first.top)}V${px(past ? mixed : last.top)}`;
    for (const { begin, end, top, bottom } of group)
      branches += `M${px(begin)},${px(top)}L${px(end)},${px(bottom)}V${px(mixed)}`;
    branches += `M${px(Math.min(...ends))},${px(mixed)}H${px(Math.max(...ends))}`;
    places.push({ x: first.trunkEnd, y: mixed });
  }
  return { trunk: `${trunk}V${px(to)}`, branches, mixes: places };
}
