import type { Pressure } from "../../lib/quantity";
import type { Locks, Session } from "../state";

/** What a control works with. */
export interface Controlled {
  readonly session: Session;
  readonly locks: Locks;
  /** The build's barometer, by which gauge and absolute pressures are told from each other; none while it has no value. */
  readonly ambient: () => Pressure | undefined;
  readonly zones: Zones;
}

/** A stretch of a slider's track, from 0 at its left end to 1, on which something is amiss. */
export interface Zone {
  readonly from: number;
  readonly to: number;
  /** What is amiss there. */
  readonly words: string;
}

/** Where along a slider lines would lose their answer, or leave the span of their model. */
export interface Zones {
  /** Tells of what is found for an input, and when it no longer holds. */
  watch(key: string, show: (zones: readonly Zone[]) => void): void;
  /** The eye is on an input: its zones are looked for when nothing moves. */
  ask(key: string): void;
}
