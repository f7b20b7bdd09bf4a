import { countingGases, inventedOperatingBuild, operatingPoint, sweep } from "../../lib/charge";
import type { RotationalSpeed } from "../../lib/quantity";
import { type Measured, timed } from "./measure";

const ratedSpeed = 3200 / 60;

/** Chosen wheels, blower and coolers solved as a whole: one point at full load, and 60 speeds with what binds. */
export function matchedLines(runs: number): readonly Measured[] {
  const speeds = Array.from({ length: 60 }, (_, i) => (ratedSpeed * (0.4 + (0.6 * i) / 59)) as RotationalSpeed);
  return [
    {
      what: "One operating point, cold",
      timing: timed((run) => pointAt(ratedSpeed * (1 - (run % 10) / 1000)), runs),
      budget: 1,
      note: `${properties((gases) => operatingPoint(inventedOperatingBuild, { engineSpeed: speeds.at(-1)! }, gases))} properties`,
    },
    {
      what: "Operating points and limits at 60 speeds",
      timing: timed(() => sweep(inventedOperatingBuild, speeds), Math.ceil(runs / 10)),
      budget: 16,
      note: `${properties((gases) => sweep(inventedOperatingBuild, speeds, gases))} properties`,
    },
  ];
}

function pointAt(engineSpeed: number): unknown {
  return operatingPoint(inventedOperatingBuild, { engineSpeed: engineSpeed as RotationalSpeed });
}

/** How often some work asks for a property of a gas. */
function properties(work: (gases: ReturnType<typeof countingGases>["gases"]) => unknown): number {
  const { gases, count } = countingGases();
  work(gases);
  return count().properties;
}
