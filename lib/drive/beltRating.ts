import {
  type Count,
  type Force,
  type Length,
  type MassPerLength,
  type Power,
  type Ratio,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type Velocity,
} from "../quantity";

/** A synchronous belt as its maker rates it, and as it is used. */
export interface RatedBelt {
  /** pull that the belt of the base width may carry, from its maker [N], above 0 */
  readonly allowablePull: Force;
  /** width to which the maker's pull belongs [m], above 0 */
  readonly baseWidth: Length;
  /** width of the belt in use [m], above 0 */
  readonly width: Length;
  /** mass of a metre of belt of the base width [kg/m], 0 or above */
  readonly baseMassPerLength: MassPerLength;
  /** speed of the belt [m/s], 0 or above */
  readonly beltSpeed: Velocity;
  /** whole teeth in mesh on the pulley with the fewest [–], at least 2 */
  readonly teethInMesh: Count;
}

/**
 * Share of its pull that a belt may carry with few teeth in mesh [–]: 1 from six on, else 1 − 0.2 (6 − z).
 *
 * @param teethInMesh whole teeth in mesh [–], at least 2
 * @throws RangeError if there are fewer than 2, or a part of a tooth
 * @source ISO 5295 (from memory)
 * @example teethInMeshFactor(4) // 0.6
 */
export function teethInMeshFactor(teethInMesh: Count): Ratio {
  requireWithin("teethInMeshFactor: teethInMesh", teethInMesh, [2, Number.POSITIVE_INFINITY]);
  if (!Number.isInteger(teethInMesh)) {
    throw new RangeError(`teethInMeshFactor: teethInMesh is ${teethInMesh}; it must be a whole number`);
  }
  return (teethInMesh >= 6 ? 1 : 1 - 0.2 * (6 - teethInMesh)) as Ratio;
}

/**
 * How much more a belt of one width carries than one of the base width [–]: (b / b₀)^1.14, more than in proportion.
 *
 * @param width width in use [m], above 0
 * @param baseWidth width to which the rating belongs [m], above 0
 * @throws RangeError if a width is not above 0
 * @source ISO 5295 (from memory)
 * @example widthFactor(0.03, 0.02) // 1.58761
 */
export function widthFactor(width: Length, baseWidth: Length): Ratio {
  requirePositive("widthFactor: width", width, "m");
  requirePositive("widthFactor: baseWidth", baseWidth, "m");
  return ((width / baseWidth) ** 1.14) as Ratio;
}

/**
 * Power that a synchronous belt may carry [W]: P = (k_z k_w T_a − (b/b₀) m′ v²) v.
 * The allowable pull is the maker's and carries the rating; this is only the shape around it. Service factors, heat,
 * shock of a blower when fuel is cut, and speeds above the maker's limit are left out.
 *
 * @param belt the maker's pull and base width, width in use, mass, speed and teeth in mesh
 * @throws RangeError if an argument lies outside its span, or the belt's own inertia takes up all of its pull
 * @source ISO 5295 (from memory)
 * @example beltPowerRating({ allowablePull: 1200, baseWidth: 0.02, width: 0.03, baseMassPerLength: 0.15, beltSpeed: 20, teethInMesh: 9 }) // 36302.7
 */
export function beltPowerRating(belt: RatedBelt): Power {
  const { allowablePull, baseWidth, width, baseMassPerLength, beltSpeed, teethInMesh } = belt;
  requirePositive("beltPowerRating: allowablePull", allowablePull, "N");
  requireNotNegative("beltPowerRating: baseMassPerLength", baseMassPerLength, "kg/m");
  requireNotNegative("beltPowerRating: beltSpeed", beltSpeed, "m/s");
  const carried = teethInMeshFactor(teethInMesh) * widthFactor(width, baseWidth) * allowablePull;
  const inertia = (width / baseWidth) * baseMassPerLength * beltSpeed ** 2;
  if (inertia >= carried) {
    throw new RangeError(
      `beltPowerRating: beltSpeed is ${Number(beltSpeed.toPrecision(4))} m/s; centrifugal tension takes ${Number(inertia.toPrecision(4))} N of the ${Number(carried.toPrecision(4))} N that the belt may carry: take a wider belt or a smaller crank pulley`,
    );
  }
  return ((carried - inertia) * beltSpeed) as Power;
}
