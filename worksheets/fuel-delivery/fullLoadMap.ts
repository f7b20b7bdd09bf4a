import type { FuelMap } from "../../lib/fuel";
import type { Fraction, Pressure, RotationalSpeed, VolumePerStroke } from "../../lib/quantity";

/** What the sheet states of full load at other speeds, and the promised point to which it is held. */
export interface FullLoadStated {
  readonly fuelCurve: readonly { readonly speed: Fraction; readonly quantity: Fraction; readonly pressure: Fraction }[];
  readonly injectedVolume: VolumePerStroke;
  readonly railPressure: Pressure;
  readonly ratedSpeed: RotationalSpeed;
}

/**
 * The table of full load as a map over engine speed.
 *
 * @throws RangeError if two rows are at the same speed, by their numbers
 */
export function fullLoadMap({ fuelCurve, injectedVolume, railPressure, ratedSpeed }: FullLoadStated): FuelMap {
  fuelCurve.forEach(({ speed }, i) => {
    const before = fuelCurve.findIndex((other) => other.speed === speed);
    if (before === i) return;
    throw new RangeError(
      `full load over speed: rows ${before + 1} and ${i + 1} are both at ${Number((100 * speed).toPrecision(4))} % of the promised speed; give each speed one row`,
    );
  });
  return {
    points: fuelCurve.map(({ speed, quantity, pressure }) => ({
      speed: (speed * ratedSpeed) as RotationalSpeed,
      quantity,
      pressure,
    })),
    volumePerStroke: injectedVolume,
    railPressure,
  };
}
