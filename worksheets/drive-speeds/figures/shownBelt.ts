import type { DriveMember, LaidBelt, Point } from "../../../lib/drive";

/** A pulley as its table has it, with what a drawing asks of it. */
export interface ShownMember extends DriveMember {
  /** Row of the table of pulleys, from 0. */
  readonly row: number;
  readonly mount: "fixed" | "sliding" | "pivoting";
  /** The pivot of its arm, or a point toward which it slides. */
  readonly guide: Point;
}

/** A belt of the front, laid on its pulleys or not. */
export type ShownBelt = LaidBelt<ShownMember> & {
  /** Letter by which the tables know it. */
  readonly mark: string;
};

/** What a belt and its pulleys take up, in metres right of and above the crank. */
export interface Extent {
  readonly left: number;
  readonly high: number;
  readonly width: number;
  readonly height: number;
}

export function extentOf(belts: readonly Pick<ShownBelt, "layout">[]): Extent {
  const pulleys = belts.flatMap(({ layout }) => layout.pulleys);
  const left = Math.min(...pulleys.map(({ x, pitchRadius }) => x - pitchRadius));
  const right = Math.max(...pulleys.map(({ x, pitchRadius }) => x + pitchRadius));
  const low = Math.min(...pulleys.map(({ y, pitchRadius }) => y - pitchRadius));
  const high = Math.max(...pulleys.map(({ y, pitchRadius }) => y + pitchRadius));
  return { left, high, width: right - left, height: high - low };
}
