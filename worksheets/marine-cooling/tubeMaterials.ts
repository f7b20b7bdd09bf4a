import { seaWaterVelocityGuides } from "../../lib/cooling";
import type { Velocity } from "../../lib/quantity";

/** Highest velocity of sea water in tubes of each material [m/s]; undefined where the build's own limit holds. */
export const tubeVelocityLimits: Readonly<Record<string, Velocity | undefined>> = {
  copperNickel90: guide("90/10 copper–nickel exchanger tube"),
  copperNickel70: guide("70/30 copper–nickel exchanger tube"),
  aluminiumBrass: guide("aluminium-brass exchanger tube"),
  titanium: guide("titanium exchanger tube or plate"),
  other: undefined,
};

function guide(item: string): Velocity {
  return seaWaterVelocityGuides.find((each) => each.item === item)!.highestVelocity;
}
