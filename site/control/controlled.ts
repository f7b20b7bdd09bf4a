import type { Pressure, Span } from "../../lib/quantity";
import type { Locks, Session } from "../state";

/** What a control works with. */
export interface Controlled {
  readonly session: Session;
  readonly locks: Locks;
  /** The build's barometer, by which gauge and absolute pressures are told from each other; none while it has no value. */
  readonly ambient: () => Pressure | undefined;
  /** By input: the span in which every model that it feeds is trusted, and what the models say of it. */
  readonly trusted: ReadonlyMap<string, Trusted>;
}

export interface Trusted {
  readonly span: Span;
  readonly notes: readonly string[];
}
