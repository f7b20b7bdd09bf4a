import {
  type Fraction,
  type Pressure,
  type RotationalSpeed,
  requireNotNegative,
  requirePositive,
  type VolumePerStroke,
} from "../quantity";

/** A row of a full-load map: what is asked of the injectors at one engine speed. */
export interface FuelMapPoint {
  /** crankshaft speed [rev/s], 0 or above */
  readonly speed: RotationalSpeed;
  /** fuel of one stroke, over that at the promised speed [–], 0 or above */
  readonly quantity: Fraction;
  /** rail pressure, over that at the promised speed [–], above 0 */
  readonly pressure: Fraction;
}

/** A full-load map, and the point that its shares are counted from. */
export interface FuelMap {
  /** rows in any order, two at least, no speed twice */
  readonly points: readonly FuelMapPoint[];
  /** fuel of one stroke where the share is 1 [m³], 0 or above */
  readonly volumePerStroke: VolumePerStroke;
  /** rail pressure where the share is 1 [Pa], above 0 */
  readonly railPressure: Pressure;
}

/** What a map asks for at one speed. */
export interface MappedDemand {
  /** fuel of one stroke [m³] */
  readonly volumePerStroke: VolumePerStroke;
  /** rail pressure [Pa] */
  readonly railPressure: Pressure;
}

/**
 * Fuel of one stroke [m³] and rail pressure [Pa] at an engine speed: straight lines between the rows of the map, its
 * ends held beyond them. Smoke limits, overshoot and the steps of a controller's own table are left out.
 *
 * @param map rows of speed [rev/s] and shares [–]; fuel [m³] and pressure [Pa] where they are 1
 * @param engineSpeed crankshaft speed [rev/s], 0 or above
 * @throws RangeError if there are fewer than two rows, a speed stands twice or an argument lies outside its span
 * @source linear interpolation
 * @example mappedDemand({ points: [{ speed: 20, quantity: 1.1, pressure: 0.8 }, { speed: 40, quantity: 1, pressure: 1 }], volumePerStroke: 250e-9, railPressure: 1800e5 }, 30).volumePerStroke // 2.625e-7
 */
export function mappedDemand(map: FuelMap, engineSpeed: RotationalSpeed): MappedDemand {
  requireNotNegative("mappedDemand: engineSpeed", engineSpeed, "rev/s");
  requireNotNegative("mappedDemand: volumePerStroke", map.volumePerStroke, "m³");
  requirePositive("mappedDemand: railPressure", map.railPressure, "Pa");
  const rows = inOrder(map.points);
  const above = rows.findIndex(({ speed }) => speed >= engineSpeed);
  const high = rows[above === -1 ? rows.length - 1 : above]!;
  const low = rows[above === -1 ? rows.length - 1 : Math.max(0, above - 1)]!;
  const way = high.speed === low.speed ? 0 : (engineSpeed - low.speed) / (high.speed - low.speed);
  const between = (from: number, to: number) => from + way * (to - from);
  return {
    volumePerStroke: (map.volumePerStroke * between(low.quantity, high.quantity)) as VolumePerStroke,
    railPressure: (map.railPressure * between(low.pressure, high.pressure)) as Pressure,
  };
}

function inOrder(points: readonly FuelMapPoint[]): readonly FuelMapPoint[] {
  if (points.length < 2) throw new RangeError(`mappedDemand: points has ${points.length} row; it must have at least 2`);
  const rows = points.slice().sort((a, b) => a.speed - b.speed);
  rows.forEach(({ speed, quantity, pressure }, i) => {
    requireNotNegative("mappedDemand: speed", speed, "rev/s");
    requireNotNegative("mappedDemand: quantity", quantity);
    requirePositive("mappedDemand: pressure", pressure);
    if (i > 0 && speed === rows[i - 1]!.speed) {
      throw new RangeError(
        `mappedDemand: speed is ${Number((60 * speed).toPrecision(6))} rev/min in two rows; give each speed one row`,
      );
    }
  });
  return rows;
}
