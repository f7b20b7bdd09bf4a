import { meteredTorque, type PumpAtSpeed } from "../../lib/fuel";
import { structure } from "../../lib/graph";
import type { Count, Force, Fraction, MassFlow, Power, Ratio, RotationalSpeed, Torque } from "../../lib/quantity";
import { ratedSpeed } from "../brief/cells";
import { pumpDemand, pumpRun } from "./cells";
import { drivenPumps } from "./drivenPumps";
import { pumpPlaces } from "./inputs";

/** What one pump, or two alike, would give and take. */
export interface PumpArrangement {
  readonly count: Count;
  readonly delivered: MassFlow;
  readonly asked: MassFlow;
  /** what is delivered above what is asked, over that [–]; below zero where it falls short */
  readonly spare: Ratio;
  readonly ratioNeeded: Ratio;
  readonly ratioFitted: Ratio;
  readonly metering: Fraction;
  readonly meanTorque: Torque;
  readonly peakTorque: Torque;
  /** pull of one pump in the belt at its peak, and of all pumps on average */
  readonly peakPull: Force;
  readonly meanPull: Force;
  readonly power: Power;
  readonly placesLeft: Count;
}

export const pumpArrangements = structure("pumpArrangements", {
  label: "One high-pressure pump or two",
  from: { drivenPumps, ratedSpeed, pumpDemand, pumpRun, pumpPlaces },
  compute: (at): readonly PumpArrangement[] =>
    [1, 2].map((count) => arrangement(count as Count, { ...at, full: at.pumpRun[0]! })),
  formula: "\\dot m_p(z_{fp}) = z_{fp}\\,\\dot m_{p,1}, \\qquad F_{fp} = \\frac{M_{fp}}{r_{fp}}",
  source: "mass balance; torque over the pulley's pitch radius",
  assumptions: [
    "Both pumps alike, at the ratio of the first pump on the drive sheet, sharing the fuel.",
    "Two pumps timed half a stroke apart would level the belt's pull; their peaks are taken one at a time.",
    "Every pump takes a place on the front plate.",
  ],
});

interface ArrangementInputs {
  readonly full: PumpAtSpeed;
  readonly drivenPumps: { readonly pumps: readonly { ratio: Ratio; pitchRadius: number }[]; readonly otherUnits: number };
  readonly ratedSpeed: RotationalSpeed;
  readonly pumpDemand: MassFlow;
  readonly pumpPlaces: Count;
}

function arrangement(count: Count, { full, drivenPumps, ratedSpeed, pumpDemand, pumpPlaces }: ArrangementInputs): PumpArrangement {
  const { ratio, pitchRadius } = drivenPumps.pumps[0]!;
  const pumpSpeed = (ratedSpeed * ratio) as RotationalSpeed;
  const delivered = count * full.delivery;
  const each = Math.min(pumpDemand / count, full.delivery) as MassFlow;
  const meanTorque = meteredTorque({ demand: each, full, pumpSpeed });
  return {
    count,
    delivered: delivered as MassFlow,
    asked: pumpDemand,
    spare: (delivered / pumpDemand - 1) as Ratio,
    // Leakage stays; what is pressed goes with speed.
    ratioNeeded: ((ratio * (pumpDemand / count + full.leakage)) / (full.delivery + full.leakage)) as Ratio,
    ratioFitted: ratio,
    metering: (pumpDemand / delivered) as Fraction,
    meanTorque,
    peakTorque: full.peakTorque,
    peakPull: (full.peakTorque / pitchRadius) as Force,
    meanPull: ((count * meanTorque) / pitchRadius) as Force,
    power: (count * meanTorque * 2 * Math.PI * pumpSpeed) as Power,
    placesLeft: (pumpPlaces - drivenPumps.otherUnits - count) as Count,
  };
}
