import type { Fraction, Power, Ratio, Temperature, ThermalConductance } from "../quantity";
import type { ClosedCircuitInputs } from "./closedCircuit";
import type { RatedConductance } from "./conductanceAtFlow";
import type { StreamArrangement } from "./exchanger";

/** What an element does to the water; "rated": a stream of known heat becomes as hot as its exchanger makes it. */
export type ElementDuty =
  | { readonly kind: "none" }
  | {
      readonly kind: "rated";
      readonly heat: Power;
      readonly arrangement: StreamArrangement;
      readonly exchanger: RatedConductance;
      /** fouling resistance over the clean one [–], 0 or above */
      readonly fouling: Ratio;
      readonly hotCapacityRate: ThermalConductance;
      /** hot flow over the rated one [–], above 0 */
      readonly hotRatio: Ratio;
    }
  /** a closed circuit with thermostat and bypass */
  | {
      readonly kind: "circuit";
      readonly circuit: Omit<ClosedCircuitInputs, "coldInlet" | "coldCapacityRate" | "coldRatio">;
    }
  /** a stream of known heat and temperatures, whose exchanger follows: a charge cooler of known effectiveness */
  | {
      readonly kind: "given";
      readonly heat: Power;
      readonly arrangement: StreamArrangement;
      readonly hotInlet: Temperature;
      readonly hotCapacityRate: ThermalConductance;
    };

/** One element of the raw-water line, in the order in which the water meets them. */
export interface LineElement {
  /** as it shall stand in an error */
  readonly name: string;
  /** whether it lies beside the element before it, rather than behind it */
  readonly beside: boolean;
  /** share of the pump's flow that passes it; what its group leaves over flows past [–], 0 to 1; above 0 where it takes heat */
  readonly share: Fraction;
  readonly duty: ElementDuty;
}
