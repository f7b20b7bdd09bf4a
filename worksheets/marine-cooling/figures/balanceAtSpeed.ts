import type { CurvePoint } from "../curve";
import type { Flow } from "./flows";

/** The fuel's power and its parts at one engine speed [W]. */
export interface SpeedBalance {
  readonly speed: number;
  readonly fuel: number;
  readonly lines: readonly Flow[];
  /** Heat that the exhaust's vapour would give up by condensing, outside the balance. */
  readonly latent: number;
}

/**
 * The balance at a speed between two solved points of the propeller's curve, each of its powers on the straight line
 * between theirs, so that it closes as they do. Undefined where no two solved neighbours lie about the speed.
 *
 * @param curve points in ascending order of speed
 * @param speed engine speed [rev/s]
 */
export function balanceAtSpeed(curve: readonly CurvePoint[], speed: number): SpeedBalance | undefined {
  const after = curve.findIndex((point) => point.speed >= speed);
  const [high, low] = [curve[after], curve[Math.max(0, after - 1)]];
  if (!high || !low || !("balance" in high) || !("balance" in low)) return undefined;
  if (speed < low.speed) return undefined;
  const part = high === low ? 1 : (speed - low.speed) / (high.speed - low.speed);
  const between = (from: number, to: number) => from + part * (to - from);
  const powers = new Map(low.balance.lines.map(({ key, power }) => [key, power]));
  return {
    speed,
    fuel: between(low.balance.fuel, high.balance.fuel),
    lines: high.balance.lines.map(({ key, name, power, goal }) => ({
      key,
      name,
      goal,
      power: between(powers.get(key) ?? 0, power),
    })),
    latent: between(low.balance.latent, high.balance.latent),
  };
}
