import { structure } from "../../../lib/graph";
import type { Fraction, RotationalSpeed, Temperature, Velocity, VolumeFlow } from "../../../lib/quantity";
import { ratedSpeed } from "../../brief/cells";
import { Later } from "../../later";
import { jacketTemperature } from "../../marine-cooling/inputs";
import { vehicleSpeed } from "../inputs";
import { airAt, circuitAt, limitingAirOf, type RadiatorCircuit } from "../radiatorAt";
import { circuitFrom } from "./radiator";
import { radiatorFrom } from "./radiatorFrom";

/** Hottest day over the vehicle's speed, the engine at the promised power and speed. */
export interface LandCurvePoint {
  readonly speed: Velocity;
  readonly limitingAir: Temperature;
  readonly coolant: Temperature;
  readonly airFlow: VolumeFlow;
}

/** Vehicle speeds of the curve [m/s]: 0 to 120 km/h, or as fast as the vehicle is driven. */
const curveSpeeds = (driven: Velocity) => {
  const fastest = Math.max(120 / 3.6, driven);
  return Array.from({ length: 7 }, (_, i) => ((i * fastest) / 6) as Velocity);
};

export const landCurve = structure("landCurve", {
  label: "Radiator over the vehicle's speed",
  from: { ...radiatorFrom, ...circuitFrom, ratedSpeed, jacketTemperature, vehicleSpeed },
  compute: (at) => new Later("landCurve", at, landCurveOf),
  formula: "T_{0,lim}(v)",
  source: "energy balance; affinity laws",
  assumptions: ["Worked out when the hand rests."],
});

function landCurveOf(
  at: RadiatorCircuit & {
    readonly ratedSpeed: RotationalSpeed;
    readonly jacketTemperature: Temperature;
    readonly vehicleSpeed: Velocity;
  },
): readonly LandCurvePoint[] {
  return curveSpeeds(at.vehicleSpeed).map((speed) => {
    const air = airAt(at, at.ratedSpeed, speed);
    const open = circuitAt(at, air, 1 as Fraction);
    return {
      speed,
      limitingAir: limitingAirOf(at, air, at.jacketTemperature, open),
      // a thermostat that stands fully open changes nothing
      coolant: open.hot >= at.thermostatOpens + at.thermostatSpan ? open.hot : circuitAt(at, air).hot,
      airFlow: air.volumeFlow,
    };
  });
}
