import type { KindName, Power } from "../../lib/quantity";

/** The most power at one value of what is worse, by the chosen parts and by the standard. */
export interface DeratedValue {
  readonly at: number;
  readonly solved: Power | undefined;
  /** limit that is met first there */
  readonly binding?: string;
  /** why there is no power */
  readonly refused?: string;
  /** power by the standard, where it speaks of this */
  readonly standard: Power | undefined;
}

export interface DeratingSeries {
  readonly key: "sea" | "room" | "depression" | "backPressure";
  readonly name: string;
  readonly kind: KindName;
  /** value of this installation */
  readonly design: number;
  readonly values: readonly DeratedValue[];
}

export interface Derating {
  /** the most that the parts give in this installation, and the limit that is met first */
  readonly most: Power;
  readonly binding: string;
  readonly promised: Power;
  readonly series: readonly DeratingSeries[];
}
