import type { Flow } from "./flows";

/** Radius of a bend's inner side, and room above a branch for its words beyond their lines, in CSS pixels. */
export const bend = 10;
const air = 9;

/** A branch of the stream, in CSS pixels. */
export interface BranchPlace {
  readonly flow: Flow;
  /** Its strip of the stream, from the stream's left edge. */
  readonly left: number;
  readonly right: number;
  /** Upper edge of its level part, and how wide it is; nothing for what comes in. */
  readonly upper: number;
  readonly thick: number;
  /** Its strip of the gathered sea water, from the water's left edge; undefined where it goes elsewhere. */
  readonly gathered: readonly [left: number, right: number] | undefined;
}

export interface FlowLayout {
  readonly branches: readonly BranchPlace[];
  /** Widths of the whole stream, of the fuel's part of it, of what stays to its foot, and of the gathered sea water. */
  readonly stream: number;
  readonly fuel: number;
  readonly work: number;
  readonly sea: number;
  /** Height at which stream and gathered water end. */
  readonly foot: number;
}

interface Room {
  /** Width of the stream. */
  readonly stream: number;
  /** Height at which the first branch's words begin, and height of the words of each. */
  readonly from: number;
  readonly line: number;
}

/**
 * Where the branches of a stream lie, each as wide as its power on the stream's own scale: the widths of branches and
 * foot make up the stream's, those of what goes to the sea the gathered water's.
 */
export function flowLayout(flows: readonly Flow[], { stream, from, line }: Room): FlowLayout {
  const into = (power: number) => Math.max(0, power);
  const whole = flows.reduce((sum, { power }) => sum + into(power), 0);
  const fuelPower = flows.reduce((sum, { power }) => sum + power, 0);
  const wide = (power: number) => (into(power) / whole) * stream;
  const sea = flows.reduce((sum, { power, goal }) => sum + (goal === "sea" ? wide(power) : 0), 0);
  let y = from;
  let edge = stream;
  let seaEdge = 0;
  let foot = from;
  const branches = flows
    .filter(({ goal }) => goal !== "work")
    .map((flow): BranchPlace => {
      const thick = wide(flow.power);
      const [upper, right] = [y + line + air, edge];
      y = upper + thick;
      edge -= thick;
      const gathered = flow.goal === "sea" ? ([sea - seaEdge - thick, sea - seaEdge] as const) : undefined;
      if (gathered) seaEdge += thick;
      foot = Math.max(foot, y + (gathered ? bend : 0));
      return { flow, left: edge, right, upper, thick, gathered };
    });
  return { branches, stream, fuel: (fuelPower / whole) * stream, work: edge, sea, foot: foot + 16 };
}
