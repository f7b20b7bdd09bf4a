import { type Fraction, type PressureDifference, requireNotNegative, requireWithin } from "../quantity";

/** One of some branches that part and come together again. */
export interface Branch {
  /** as it shall stand in an error */
  readonly name: string;
  /** loss with the whole flow through it, its valve open [Pa], 0 or above */
  readonly loss: PressureDifference;
  /** area that its valve leaves open, over the whole [–], 0 (shut) to 1; the loss is divided by its square */
  readonly open: Fraction;
}

/** How branches share a flow. */
export interface BranchSplit {
  /** share of the flow in each [–]; 1 together */
  readonly shares: readonly Fraction[];
  /** loss of all of them side by side, with the whole flow [Pa] */
  readonly loss: PressureDifference;
}

/**
 * Flow through branches side by side [–, Pa]: between the same two points each loses the same pressure. Where every loss
 * grows with the square of its flow, Δp = Δp_i (s_i/o_i)², that has one answer at every flow,
 * s_i = (o_i/√Δp_i)/Σ(o_k/√Δp_k) and Δp = (Σ o_k/√Δp_k)^−2.
 * A branch that loses nothing takes the whole flow; several such share it by their openings. Heights play no part in a
 * full line.
 *
 * @param branches loss and valve of each [Pa, –]
 * @throws RangeError if an argument is outside its span, or all are shut
 * @source Darcy–Weisbach with constant friction factors; parallel pipes, F. M. White, Fluid Mechanics, chapter 6 (from memory)
 * @example branchSplit([{ name: "fuel cooler", loss: 72000, open: 1 }, { name: "gear oil cooler", loss: 8000, open: 1 }]).loss // 4500
 */
export function branchSplit(branches: readonly Branch[]): BranchSplit {
  for (const { name, loss, open } of branches) {
    requireNotNegative(`branchSplit: ${name}: loss`, loss, "Pa");
    requireWithin(`branchSplit: ${name}: open`, open, [0, 1]);
  }
  const isOpen = branches.filter(({ open }) => open > 0);
  if (isOpen.length === 0) {
    const names = branches.map(({ name }) => name).join(" and ");
    throw new RangeError(`branchSplit: the valves of ${names} are all shut, and no water passes the line; open one`);
  }
  const free = isOpen.some(({ loss }) => loss === 0);
  const ease = branches.map(({ loss, open }) => {
    if (free) return loss === 0 ? open : 0;
    return open === 0 ? 0 : open / Math.sqrt(loss);
  });
  const all = ease.reduce((sum, each) => sum + each, 0);
  return {
    shares: ease.map((each) => (each / all) as Fraction),
    loss: (free ? 0 : 1 / all ** 2) as PressureDifference,
  };
}
