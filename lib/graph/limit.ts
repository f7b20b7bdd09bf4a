import type { DisplayHint, KindName, Quantity } from "../quantity";
import type { Ref } from "./reference";

/** The value must stay at or below its bound ("most"), or at or above it ("least"). */
export type Side = "most" | "least";

/** A limit on a scalar cell: which part sets it, and where it stands. */
export interface Limit<K extends KindName = KindName> {
  /** The part that would suffer: "air meters", "blower", "jacket exchanger". */
  readonly component: string;
  readonly side: Side;
  readonly bound: Quantity<K> | Ref<Quantity<K>>;
  /** Where the bound comes from, if not from the input that holds it. */
  readonly source?: string;
}

/** A limit found inside a cell that holds more than one number, such as each driven unit's speed. */
export interface StatedCheck {
  readonly component: string;
  readonly label: string;
  readonly kind: KindName;
  readonly hint?: DisplayHint;
  readonly side: Side;
  readonly value: number;
  readonly bound: number;
  readonly source?: string;
}

export type Standing = "inside" | "near" | "past";

/** Room below which a margin counts as near, as a share of the bound. */
export const nearShare = 0.05;

/** Room temperature, against which the share of a temperature margin is taken: a kelvin scale would flatter it. */
const referenceTemperature = 293.15;

/**
 * Room left to a bound as a share of it; negative when past.
 * A temperature's share is taken of its height above 20 °C (of 10 K at least), since a share of an absolute temperature
 * would call 20 K of room "5 %".
 *
 * @param check value, bound and side, in SI
 * @example marginShare({ kind: "power", side: "most", value: 90, bound: 100 }) // 0.1
 */
export function marginShare(check: Pick<StatedCheck, "kind" | "side" | "value" | "bound">): number {
  const room = check.side === "most" ? check.bound - check.value : check.value - check.bound;
  const scale =
    check.kind === "temperature" ? Math.max(Math.abs(check.bound - referenceTemperature), 10) : Math.abs(check.bound);
  if (scale > 0) return room / scale;
  // A bound of zero has no share: any room is enough, any lack is past.
  return room >= 0 ? Number.POSITIVE_INFINITY : Number.NEGATIVE_INFINITY;
}

/** Whether a margin is inside, near (under 5 % left) or past its bound. */
export function standing(share: number): Standing {
  if (share >= nearShare) return "inside";
  return share >= 0 ? "near" : "past";
}
