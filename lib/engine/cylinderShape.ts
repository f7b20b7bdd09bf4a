import { requirePositive, requireWithin } from "../quantity/guard";
import type { CrankAngle, Length, Mass, Pressure, Ratio, Temperature, Volume } from "../quantity/kinds";
import { wallGasConstant } from "./wallCoefficient";

/** What encloses the gas of one cylinder. */
export interface CylinderGeometry {
  /** cylinder diameter [m], above 0 */
  readonly bore: Length;
  /** piston travel [m], above 0 */
  readonly stroke: Length;
  /** centre to centre of the connecting rod [m], above half the stroke */
  readonly rodLength: Length;
  /** volume at intake closing over clearance volume [–], above 1 to 30 */
  readonly effectiveCompressionRatio: Ratio;
  /** crank angle after firing dead centre at which the intake closes [rad], −π to below 0 */
  readonly intakeCloses: CrankAngle;
  /** surface of the piston's crown over its circle, with bowl and top land [–], 1 to 3; 1, a flat crown, if left out */
  readonly crownSurface?: Ratio;
}

/** Volume and walls of one cylinder by crank angle. */
export interface CylinderShape {
  /** [m³] */
  readonly volume: (angle: number) => Volume;
  /** [m³/rad] */
  readonly volumeSlope: (angle: number) => number;
  /** of head, crown and liner about a volume [m²] */
  readonly wallArea: (volume: number) => number;
  /** [m³] */
  readonly swept: number;
}

/**
 * Volume of a cylinder [m³] and its walls over the crank angle, with a centred crank drive: V = V_c + π/4 B² x, and
 * A = (1 + s)·π/4 B² + π B x, the crown's surface s times that of its circle.
 *
 * @param cylinder geometry [m, –, rad]
 * @throws RangeError if an argument is outside its span
 * @source J. B. Heywood, Internal Combustion Engine Fundamentals (1988), §2.2 (section from memory)
 * @example cylinderShape({ bore: 0.1, stroke: 0.12, rodLength: 0.2, effectiveCompressionRatio: 13, intakeCloses: -Math.PI }).volume(0) // 7.854e-5
 */
export function cylinderShape(cylinder: CylinderGeometry): CylinderShape {
  requireCylinder("cylinderShape", cylinder);
  const { bore, stroke, rodLength, crownSurface = 1 } = cylinder;
  const a = stroke / 2;
  const pistonArea = (Math.PI / 4) * bore ** 2;
  const travel = (angle: number) => {
    const reach = Math.sqrt(rodLength ** 2 - (a * Math.sin(angle)) ** 2);
    return rodLength + a - a * Math.cos(angle) - reach;
  };
  const clearance = (pistonArea * travel(cylinder.intakeCloses)) / (cylinder.effectiveCompressionRatio - 1);
  return {
    volume: (angle) => (clearance + pistonArea * travel(angle)) as Volume,
    volumeSlope: (angle) => {
      const sine = a * Math.sin(angle);
      return pistonArea * sine * (1 + (a * Math.cos(angle)) / Math.sqrt(rodLength ** 2 - sine ** 2));
    },
    wallArea: (volume) => (1 + crownSurface) * pistonArea + (Math.PI * bore * (volume - clearance)) / pistonArea,
    swept: pistonArea * stroke,
  };
}

/**
 * Mean temperature of a charge of known mass when the intake closes [K]: T = p V/(m R), so that the gas that is compressed is
 * the gas that was drawn in. It lies above the manifold's by what walls and residual gas gave it.
 *
 * @param cylinder geometry [m, –, rad]
 * @param pressure in the cylinder, about that of the manifold [Pa], above 0
 * @param mass of the charge of one cylinder and cycle [kg], above 0
 * @throws RangeError if an argument is outside its span
 * @source equation of state
 * @example temperatureAtClosing({ bore: 0.1, stroke: 0.12, rodLength: 0.2, effectiveCompressionRatio: 13, intakeCloses: -Math.PI }, 2e5, 0.0021) // 338.756
 */
export function temperatureAtClosing(cylinder: CylinderGeometry, pressure: Pressure, mass: Mass): Temperature {
  requirePositive("temperatureAtClosing: pressure", pressure, "Pa");
  requirePositive("temperatureAtClosing: mass", mass, "kg");
  const volume = cylinderShape(cylinder).volume(cylinder.intakeCloses);
  return ((pressure * volume) / (mass * wallGasConstant)) as Temperature;
}

/** Passes a cylinder whose measures are within their spans. */
export function requireCylinder(caller: string, cylinder: CylinderGeometry): void {
  requirePositive(`${caller}: bore`, cylinder.bore, "m");
  requirePositive(`${caller}: stroke`, cylinder.stroke, "m");
  requirePositive(`${caller}: rodLength less half the stroke`, cylinder.rodLength - cylinder.stroke / 2, "m");
  requirePositive(`${caller}: effectiveCompressionRatio less 1`, cylinder.effectiveCompressionRatio - 1);
  requireWithin(`${caller}: effectiveCompressionRatio`, cylinder.effectiveCompressionRatio, [1, 30]);
  requireWithin(`${caller}: intakeCloses`, cylinder.intakeCloses, [-Math.PI, -0.1], "rad");
  requireWithin(`${caller}: crownSurface`, cylinder.crownSurface ?? 1, [1, 3]);
}
