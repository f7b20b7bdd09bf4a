import type { AttainablePoint } from "../../../lib/charge";

/** Who makes the rise of pressure, by logarithms of pressure ratios: what is gained less what is lost is 1. */
export interface Shares {
  readonly turbochargers: number;
  readonly blower: number;
  readonly lost: number;
}

/** Losses that take more than this of the rise leave nothing to share. */
const mostLost = 1;

export const noRise = "The manifold holds no more than the open air: there is no rise to share.";

/** Shares of a point; undefined where nothing rises, or next to nothing. */
export function sharesOf({ point }: AttainablePoint): Shares | undefined {
  let [turbochargers, blower, lost] = [0, 0, 0];
  for (const { after, share } of point.stations.slice(1)) {
    if (share === undefined) return undefined;
    if (share > 0 && after === "compressorBank") turbochargers += share;
    else if (share > 0 && after === "blower") blower += share;
    else lost -= share;
  }
  const rises = point.manifoldPressure > point.stations[0]!.pressure;
  return rises && lost < mostLost ? { turbochargers, blower, lost } : undefined;
}
