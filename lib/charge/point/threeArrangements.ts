import type { ChargeElement } from "../path/elements";
import type { OperatingBuild } from "./operatingBuild";

/** One engine in three ways of charging. */
export interface ThreeArrangements {
  readonly turbochargersOnly: OperatingBuild;
  readonly blowerOnly: OperatingBuild;
  readonly both: OperatingBuild;
}

/**
 * The same engine with turbochargers only, with the blower only, and with both [–]. What is taken out leaves its place empty;
 * coolers and sprays that then have no machine before them go too. Nothing is matched anew: turbines that were chosen for
 * two stages may be too large or too small for one, which is part of the comparison.
 *
 * @param build an engine with banks of compressors and blowers in its path
 * @throws RangeError if the path lacks either
 * @source definition
 * @example threeArrangements(inventedOperatingBuild).blowerOnly.path.length // 4
 */
export function threeArrangements(build: OperatingBuild): ThreeArrangements {
  const without = (kind: ChargeElement["kind"], what: string): OperatingBuild => {
    if (!build.path.some((element) => element.kind === kind)) {
      throw new RangeError(`threeArrangements: the path has no ${what}; there is nothing to compare`);
    }
    return { ...build, path: withSomethingToCool(build.path.filter((element) => element.kind !== kind)) };
  };
  return {
    turbochargersOnly: without("blower", "blower"),
    blowerOnly: without("compressorBank", "compressor bank"),
    both: build,
  };
}

function withSomethingToCool(path: readonly ChargeElement[]): readonly ChargeElement[] {
  const first = path.findIndex(({ kind }) => kind === "compressorBank" || kind === "blower");
  return path.filter(({ kind }, i) => i > first || (kind !== "cooler" && kind !== "spray"));
}
