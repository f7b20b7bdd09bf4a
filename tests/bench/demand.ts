import { demandPoint, inventedBuild } from "../../lib/charge";
import type { Power, RotationalSpeed } from "../../lib/quantity";
import { type Measured, timed } from "./measure";

const ratedSpeed = 3200 / 60;
const ratedPower = 708e3;

/** The loop of fuel, air and charge by itself: one point, and 60 speeds at the rated torque. */
export function demandLines(runs: number): readonly Measured[] {
  const speeds = Array.from({ length: 60 }, (_, i) => ratedSpeed * (0.6 + (0.4 * i) / 59));
  return [
    { what: "One demand point", timing: timed((run) => at(ratedSpeed * (1 - (run % 10) / 1000)), runs) },
    { what: "Demand at 60 speeds", timing: timed(() => speeds.map(at), Math.ceil(runs / 10)), budget: 16 },
  ];
}

function at(engineSpeed: number): number {
  const brakePower = ((ratedPower * engineSpeed) / ratedSpeed) as Power;
  return demandPoint(inventedBuild, { engineSpeed: engineSpeed as RotationalSpeed, brakePower }).fuelFlow;
}
