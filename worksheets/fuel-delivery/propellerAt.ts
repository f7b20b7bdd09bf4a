import { propellerPower } from "../../lib/cooling";
import { type ConsumptionAnchor, fuelFlowAtLoad } from "../../lib/fuel";
import type { Fraction, MassFlow, Power, Ratio, RotationalSpeed } from "../../lib/quantity";

/** The propeller and the engine that turns it. */
export interface PropellerSetup {
  readonly fuelFlow: MassFlow;
  readonly ratedPower: Power;
  readonly indicatedPower: Power;
  readonly ratedSpeed: RotationalSpeed;
  /** what the propeller takes at the promised speed, of the promised power [–] */
  readonly propellerShare: Fraction;
  readonly fuelPropellerExponent: Ratio;
}

/** What the propeller takes at a speed of the engine [W], and the fuel for it [kg/s]; every sheet asks this one curve. */
export function propellerAt(
  at: PropellerSetup,
  speed: RotationalSpeed,
): { readonly power: Power; readonly fuelFlow: MassFlow } {
  const { ratedSpeed, ratedPower } = at;
  const power = propellerPower({
    ratedPower: (at.propellerShare * ratedPower) as Power,
    ratedSpeed,
    speed,
    exponent: at.fuelPropellerExponent,
  });
  const fuelFlow = fuelFlowAtLoad(anchorOf(at), {
    speedShare: (speed / ratedSpeed) as Fraction,
    powerShare: (power / ratedPower) as Fraction,
  });
  return { power, fuelFlow };
}

/** The promised point, from which fuel is carried to others. */
export function anchorOf(
  at: Pick<PropellerSetup, "fuelFlow" | "ratedPower" | "indicatedPower">,
): ConsumptionAnchor {
  return { fuelFlow: at.fuelFlow, brakePower: at.ratedPower, indicatedPower: at.indicatedPower };
}
