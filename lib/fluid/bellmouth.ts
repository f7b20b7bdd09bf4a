import { brentRoot } from "../numeric";
import {
  type Length,
  type MassFlow,
  type Pressure,
  type PressureDifference,
  type Ratio,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type Span,
  type Temperature,
  type Velocity,
} from "../quantity";
import { dryAir } from "./air";

/** A rounded inlet through which air is drawn out of still surroundings. */
export interface Bellmouth {
  /** air drawn in [kg/s], 0 up to choking */
  readonly massFlow: MassFlow;
  /** absolute pressure of the still air [Pa], above 0 */
  readonly pressure: Pressure;
  /** temperature of the still air [K], 200 to 1000 */
  readonly temperature: Temperature;
  /** diameter at the throat [m], above 0 */
  readonly throatDiameter: Length;
  /** flow over that of the ideal nozzle at the same depression [–], 0.5 to 1; well rounded 0.97 to 0.995 */
  readonly dischargeCoefficient: Ratio;
}

/** Air at the throat of a bellmouth. */
export interface BellmouthThroat {
  /** mean velocity [m/s] */
  readonly velocity: Velocity;
  /** velocity over the local speed of sound [–] */
  readonly machNumber: Ratio;
  /** still air's pressure less that at the throat's wall [Pa] */
  readonly staticDepression: PressureDifference;
  /** still air's pressure less the total pressure left at the throat [Pa] */
  readonly lossOfTotalPressure: PressureDifference;
}

/** Discharge coefficients for which bellmouthDepression answers [–]. */
export const dischargeCoefficientSpan: Span = [0.5, 1];

const airSpan: Span = [200, 1000];

/**
 * Velocity, static depression and loss in the throat of a bellmouth that draws still air:
 * ṁ = C A p₀ √(γ/(R T₀)) M (1 + (γ − 1)M²/2)^(−(γ+1)/(2(γ−1))), M the ideal Mach number of the depression.
 * The velocity follows from the flow and the density at the throat; what total pressure is then missing is the loss.
 * Dry air, its γ taken at the still air's temperature; heat and height are left out.
 *
 * @param bellmouth flow [kg/s], still air [Pa, K], throat [m] and discharge coefficient [–]
 * @throws RangeError if an input is outside its span, or the throat cannot pass so much: it then says how much it passes choked
 * @source one-dimensional isentropic flow, textbook; the coefficient as ISO 5167 uses it, with no approach velocity
 * @example bellmouthDepression({massFlow: 0.637252, pressure: 100000, temperature: 298.15, throatDiameter: 0.1, dischargeCoefficient: 0.985}).staticDepression // 3000.0
 */
export function bellmouthDepression(bellmouth: Bellmouth): BellmouthThroat {
  const { massFlow, pressure, temperature, throatDiameter, dischargeCoefficient } = bellmouth;
  requireNotNegative("bellmouthDepression: massFlow", massFlow, "kg/s");
  requirePositive("bellmouthDepression: pressure", pressure, "Pa");
  requireWithin("bellmouthDepression: temperature", temperature, airSpan, "K");
  requirePositive("bellmouthDepression: throatDiameter", throatDiameter, "m");
  requireWithin("bellmouthDepression: dischargeCoefficient", dischargeCoefficient, dischargeCoefficientSpan);

  const gamma = dryAir.ratioOfSpecificHeats(temperature);
  const gasConstant = dryAir.gasConstant;
  const area = (Math.PI * throatDiameter ** 2) / 4;
  const scale = dischargeCoefficient * area * pressure * Math.sqrt(gamma / (gasConstant * temperature));
  const idealFlow = (mach: number) => scale * mach * cooling(mach, gamma) ** (-(gamma + 1) / (2 * (gamma - 1)));
  const choked = idealFlow(1);
  if (massFlow > choked) {
    throw new RangeError(
      `bellmouthDepression: massFlow is ${Number(massFlow.toPrecision(6))} kg/s; this throat passes at most ${Number(choked.toPrecision(6))} kg/s, at the speed of sound`,
    );
  }
  const idealMach = brentRoot((mach) => idealFlow(mach) - massFlow, [0, 1], {
    name: "bellmouthDepression: Mach number",
    tolerance: 1e-14,
  }).root;
  const throatPressure = pressure * cooling(idealMach, gamma) ** (-gamma / (gamma - 1));

  // Mean velocity v from continuity and energy: ṁ R (T₀ − v²/2cp) = p A v, a quadratic in v.
  const cp = (gamma * gasConstant) / (gamma - 1);
  const slope = (throatPressure * area) / gasConstant;
  const velocity =
    massFlow === 0
      ? 0
      : (2 * massFlow * temperature) / (slope + Math.sqrt(slope ** 2 + (2 * massFlow ** 2 * temperature) / cp));
  const throatTemperature = temperature - velocity ** 2 / (2 * cp);
  const totalPressure = throatPressure * (temperature / throatTemperature) ** (gamma / (gamma - 1));
  return {
    velocity: velocity as Velocity,
    machNumber: (velocity / Math.sqrt(gamma * gasConstant * throatTemperature)) as Ratio,
    staticDepression: (pressure - throatPressure) as PressureDifference,
    lossOfTotalPressure: (pressure - totalPressure) as PressureDifference,
  };
}

/** T₀/T at a Mach number [–]. */
function cooling(mach: number, gamma: number): number {
  return 1 + ((gamma - 1) / 2) * mach ** 2;
}
