import type { KindName, Power, Temperature } from "../../lib/quantity";

/** Power at one value of what is worse, by the solved engine and by the standard. */
export interface DeratedValue {
  readonly at: number;
  readonly solved: Power | undefined;
  /** why there is no solved power */
  readonly refused?: string;
  /** power by the standard, where it speaks of this */
  readonly standard: Power | undefined;
}

export interface DeratingSeries {
  readonly key: "sea" | "room" | "depression" | "backPressure";
  readonly name: string;
  readonly kind: KindName;
  /** value at which the power is promised */
  readonly design: number;
  readonly values: readonly DeratedValue[];
}

export interface Derating {
  readonly promised: Power;
  readonly turbineInletTemperature: Temperature;
  readonly series: readonly DeratingSeries[];
}
