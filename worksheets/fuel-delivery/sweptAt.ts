import type { RotationalSpeed } from "../../lib/quantity";
import type { DeliveryPoint } from "./deliverySweep";

/** A value of the sweep at any engine speed: straight between its speeds, and beyond its ends as it is there. */
export function sweptAt(
  sweep: readonly DeliveryPoint[],
  speed: RotationalSpeed,
  read: (point: DeliveryPoint) => number,
): number {
  const after = sweep.findIndex(({ engineSpeed }) => engineSpeed >= speed);
  if (after < 0) return read(sweep.at(-1)!);
  if (after === 0) return read(sweep[0]!);
  const [from, to] = [sweep[after - 1]!, sweep[after]!];
  const share = (speed - from.engineSpeed) / (to.engineSpeed - from.engineSpeed);
  return read(from) + share * (read(to) - read(from));
}
