import { brentRoot } from "../numeric";
import { type Count, type Force, type Length, requireNotNegative, requirePositive } from "../quantity";
import { type RatedBelt, teethInMeshFactor, widthFactor } from "./beltRating";
import { type BeltSection, isToothed } from "./beltSection";

/** What a belt must carry, and as its maker rates it. */
export interface PullToCarry extends Omit<RatedBelt, "width"> {
  /** pull that it shall carry, all factors included [N], 0 or above */
  readonly pull: Force;
  readonly section: BeltSection;
}

/**
 * Width at which a belt carries a pull [m]: k_z k_w T_a − (b/b₀) m′ v² = F, with k_w = (b/b₀)^1.14 for a toothed belt
 * and b/b₀ for a ribbed one, whose ribs share alike.
 *
 * @param carried pull [N], the maker's numbers, belt speed [m/s] and teeth in mesh [–]; those a ribbed belt does not read
 * @throws RangeError if an argument lies outside its span, or no width of up to 1000 base widths carries the pull
 * @source ISO 5295 (from memory) for toothed belts; shared load, common practice, for ribbed ones
 * @example beltWidthNeeded({ section: curvilinear8, pull: 1815.133, allowablePull: 1200, baseWidth: 0.02, baseMassPerLength: 0.15, beltSpeed: 20, teethInMesh: 9 }) // 0.03
 */
export function beltWidthNeeded(carried: PullToCarry): Length {
  const { section, pull, allowablePull, baseWidth, baseMassPerLength, beltSpeed, teethInMesh } = carried;
  requireNotNegative("beltWidthNeeded: pull", pull, "N");
  requirePositive("beltWidthNeeded: allowablePull", allowablePull, "N");
  requirePositive("beltWidthNeeded: baseWidth", baseWidth, "m");
  requireNotNegative("beltWidthNeeded: baseMassPerLength", baseMassPerLength, "kg/m");
  requireNotNegative("beltWidthNeeded: beltSpeed", beltSpeed, "m/s");
  const inertia = baseMassPerLength * beltSpeed ** 2;
  const mesh = isToothed(section) ? teethInMeshFactor(teethInMesh) : 1;
  const spare = (widths: number): number => {
    const width = (widths * baseWidth) as Length;
    const shape = isToothed(section) ? widthFactor(width, baseWidth) : widths;
    return mesh * shape * allowablePull - widths * inertia - pull;
  };
  if (pull === 0) return 0 as Length;
  let most = 1;
  while (spare(most) < 0 && most < 1000) most *= 2;
  if (spare(most) < 0) {
    throw new RangeError(
      `beltWidthNeeded: pull is ${Number(pull.toPrecision(4))} N; with ${Number(inertia.toPrecision(4))} N of centrifugal tension on ${Number((mesh * allowablePull).toPrecision(4))} N allowed at the base width no belt carries it: take a smaller crank pulley, or more teeth in mesh`,
    );
  }
  const { root } = brentRoot(spare, [most === 1 ? 1e-6 : most / 2, most], { name: "beltWidthNeeded: width" });
  return (root * baseWidth) as Length;
}

/**
 * The narrowest width that is sold and at least so wide [m]; undefined where none is. Ribbed belts go by whole ribs.
 *
 * @param section the belt in section
 * @param width width needed [m], 0 or above
 * @throws RangeError if the width is negative
 * @source widths of ISO 13050; rib pitch of ISO 9981 (from memory)
 * @example standardWidth(curvilinear8, 0.024) // 0.03
 */
export function standardWidth(section: BeltSection, width: Length): Length | undefined {
  requireNotNegative("standardWidth: width", width, "m");
  if (!isToothed(section)) return (Math.max(1, Math.ceil(width / section.ribPitch - 1e-9)) * section.ribPitch) as Length;
  return section.standardWidths.find((each) => each >= width);
}

/** One toothed pulley in a running belt. */
export interface LoadedTeeth {
  /** tension of one side less that of the other [N], either sign */
  readonly pull: Force;
  /** whole teeth in mesh [–], at least 1 */
  readonly teethInMesh: Count;
}

/**
 * Load of a tooth, shared alike by the teeth in mesh [N]: |F| / z. The first teeth on the tight side carry more than that.
 *
 * @param teeth pull at the pulley [N] and teeth in mesh [–]
 * @throws RangeError if there is less than one tooth in mesh
 * @source equal sharing, common practice, no source
 * @example toothLoad({ pull: 1200, teethInMesh: 10 }) // 120
 */
export function toothLoad({ pull, teethInMesh }: LoadedTeeth): Force {
  if (!(teethInMesh >= 1)) throw new RangeError(`toothLoad: teethInMesh is ${teethInMesh}; it must be at least 1`);
  return (Math.abs(pull) / teethInMesh) as Force;
}
