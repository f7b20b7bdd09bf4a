import { memberPitchRadius } from "../../lib/drive";
import { structure } from "../../lib/graph";
import type { Length, Ratio, RotationalSpeed } from "../../lib/quantity";
import { frontBelts } from "../drive-speeds/beltRuns";

/** A high-pressure pump on the engine's front, as the drive sheet has it. */
export interface DrivenPump {
  readonly unit: string;
  /** its turns in one turn of the crank [–] */
  readonly ratio: Ratio;
  /** pitch radius of its pulley [m] */
  readonly pitchRadius: Length;
  readonly lowestSpeed: RotationalSpeed;
  readonly highestSpeed: RotationalSpeed;
}

export const drivenPumps = structure("drivenPumps", {
  label: "High-pressure pumps on the front, and what else is driven there",
  from: { frontBelts },
  compute: ({ frontBelts }) => {
    const driven = frontBelts.flatMap(({ section, members }) =>
      members.filter(({ role }) => role !== "crank" && role !== "idler").map((member) => ({ section, member })),
    );
    const pumps = driven
      .filter(({ member }) => member.role === "fuelPump")
      .map(
        ({ section, member }): DrivenPump => ({
          unit: member.unit,
          ratio: member.ratio,
          pitchRadius: memberPitchRadius(section, member),
          lowestSpeed: member.lowestSpeed,
          highestSpeed: member.highestSpeed,
        }),
      );
    if (pumps.length === 0) {
      throw new RangeError(
        "drivenPumps: no pulley on the drive sheet belongs to a high-pressure fuel pump; give one that role",
      );
    }
    return { pumps, otherUnits: driven.length - pumps.length };
  },
  formula: "i_f = \\frac{z_{crank}}{z_{pump}}",
  source: "the drive sheet; ISO 5294 and ISO 13050 (from memory)",
  assumptions: ["All pumps are alike; each runs at the ratio of its own pulley."],
});
