import {
  type Density,
  type DynamicViscosity,
  type Length,
  type MassFlow,
  type PressureDifference,
  type Ratio,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type Span,
  type Velocity,
} from "../quantity";

/** A flow through a round pipe. */
export interface PipeFlow {
  /** density of the fluid [kg/m³], above 0 */
  readonly density: Density;
  /** mean velocity [m/s], 0 or above */
  readonly velocity: Velocity;
  /** inner diameter [m], above 0 */
  readonly diameter: Length;
  /** dynamic viscosity of the fluid [Pa·s], above 0 */
  readonly dynamicViscosity: DynamicViscosity;
}

/** A flow through a run of round pipe with its bends and fittings. */
export interface PipeRun extends PipeFlow {
  /** length of straight pipe [m], 0 or above */
  readonly length: Length;
  /** height of the wall's roughness [m], 0 to 0.05 of the diameter; drawn tube 1.5e-6, steel pipe 45e-6 */
  readonly roughness: Length;
  /** losses of entrance, bends and fittings together, in velocity heads [–], 0 or above */
  readonly lossCoefficient: Ratio;
}

/** What sets the friction in a pipe. */
export interface PipeFriction {
  /** Reynolds number on the diameter [–], above 0 to 1e8 */
  readonly reynoldsNumber: Ratio;
  /** roughness over diameter [–], 0 to 0.05 */
  readonly relativeRoughness: Ratio;
}

/** Relative roughnesses of the Colebrook equation [–]. */
export const relativeRoughnessSpan: Span = [0, 0.05];

/** Reynolds numbers between which a flow is neither surely laminar nor surely turbulent [–]. */
export const transitionSpan: Span = [2300, 4000];

const reynoldsSpan: Span = [Number.MIN_VALUE, 1e8];

/**
 * Reynolds number of a flow in a round pipe [–]: ρ v d/μ.
 *
 * @param flow density [kg/m³], velocity [m/s], diameter [m] and dynamic viscosity [Pa·s]
 * @throws RangeError if velocity is negative, or another is not above 0
 * @source definition
 * @example reynoldsNumber({density: 1000, velocity: 2, diameter: 0.05, dynamicViscosity: 1e-3}) // 100000
 */
export function reynoldsNumber({ density, velocity, diameter, dynamicViscosity }: PipeFlow): Ratio {
  requirePositive("reynoldsNumber: density", density, "kg/m³");
  requireNotNegative("reynoldsNumber: velocity", velocity, "m/s");
  requirePositive("reynoldsNumber: diameter", diameter, "m");
  requirePositive("reynoldsNumber: dynamicViscosity", dynamicViscosity, "Pa·s");
  return ((density * velocity * diameter) / dynamicViscosity) as Ratio;
}

/**
 * Darcy friction factor of a round pipe [–]: 64/Re up to 2300, from 4000 the Colebrook equation solved to the last digits,
 * 1/√f = −2 lg(ε/3.7 + 2.51/(Re √f)). Between, both values are taken at the same Reynolds number and mixed by the
 * weight w = x²(3 − 2x), x = (Re − 2300)/1700, so that the curve has no step or kink; real flow there is unsteady.
 *
 * @param friction Reynolds number [–] and relative roughness [–]
 * @throws RangeError if the Reynolds number is not above 0 to 1e8 or the roughness outside relativeRoughnessSpan
 * @source C. F. Colebrook, J. Institution of Civil Engineers 11 (1939) 133 (from memory); the mixing is our own choice
 * @example frictionFactor({reynoldsNumber: 1e5, relativeRoughness: 1e-3}) // 0.0221745
 */
export function frictionFactor({ reynoldsNumber, relativeRoughness }: PipeFriction): Ratio {
  requireWithin("frictionFactor: reynoldsNumber", reynoldsNumber, reynoldsSpan);
  requireWithin("frictionFactor: relativeRoughness", relativeRoughness, relativeRoughnessSpan);
  const [laminarEnd, turbulentStart] = transitionSpan;
  if (reynoldsNumber <= laminarEnd) return (64 / reynoldsNumber) as Ratio;
  const turbulent = colebrook(reynoldsNumber, relativeRoughness);
  if (reynoldsNumber >= turbulentStart) return turbulent as Ratio;
  const x = (reynoldsNumber - laminarEnd) / (turbulentStart - laminarEnd);
  const weight = x * x * (3 - 2 * x);
  return (weight * turbulent + ((1 - weight) * 64) / reynoldsNumber) as Ratio;
}

/**
 * Loss of pressure along a run of pipe [Pa]: (f L/d + K) ρ v²/2.
 * Constant density: for a gas, take the mean and keep the loss below a tenth of the pressure. Height is left out.
 *
 * @param run the pipe, its fittings and its flow [SI units]
 * @throws RangeError if a measure is out of its span
 * @source Darcy–Weisbach equation (textbook, from memory)
 * @example pipePressureLoss({density: 1000, velocity: 2, diameter: 0.05, dynamicViscosity: 1e-3, length: 10, roughness: 5e-5, lossCoefficient: 1}) // 10869.8
 */
export function pipePressureLoss(run: PipeRun): PressureDifference {
  requireNotNegative("pipePressureLoss: length", run.length, "m");
  requireNotNegative("pipePressureLoss: lossCoefficient", run.lossCoefficient);
  requireNotNegative("pipePressureLoss: roughness", run.roughness, "m");
  const reynolds = reynoldsNumber(run);
  if (reynolds === 0) return 0 as PressureDifference;
  const relativeRoughness = (run.roughness / run.diameter) as Ratio;
  const friction = frictionFactor({ reynoldsNumber: reynolds, relativeRoughness });
  const heads = (friction * run.length) / run.diameter + run.lossCoefficient;
  return ((heads * run.density * run.velocity ** 2) / 2) as PressureDifference;
}

/**
 * Mean velocity in a round pipe [m/s]: v = ṁ/(ρ π d²/4).
 *
 * @param flow mass flow [kg/s], density [kg/m³] and diameter [m]
 * @throws RangeError if the flow is negative, or density or diameter not above 0
 * @source definition
 * @example velocityInPipe({massFlow: 0.5, density: 1.2, diameter: 0.15}) // 23.5785
 */
export function velocityInPipe(flow: {
  /** mass flow [kg/s], 0 or above */
  readonly massFlow: MassFlow;
  /** density of the fluid [kg/m³], above 0 */
  readonly density: Density;
  /** inner diameter [m], above 0 */
  readonly diameter: Length;
}): Velocity {
  requireNotNegative("velocityInPipe: massFlow", flow.massFlow, "kg/s");
  requirePositive("velocityInPipe: density", flow.density, "kg/m³");
  requirePositive("velocityInPipe: diameter", flow.diameter, "m");
  return ((4 * flow.massFlow) / (flow.density * Math.PI * flow.diameter ** 2)) as Velocity;
}

/** Newton's method for x = 1/√f, whose equation is nearly straight; Haaland's explicit formula is within 2 % of the start. */
function colebrook(reynolds: number, roughness: number): number {
  const wall = roughness / 3.7;
  let x = -1.8 * Math.log10(wall ** 1.11 + 6.9 / reynolds);
  for (let i = 0; i < 20; i++) {
    const inside = wall + (2.51 * x) / reynolds;
    const step = (x + 2 * Math.log10(inside)) / (1 + 5.02 / (reynolds * inside * Math.LN10));
    x -= step;
    if (Math.abs(step) < 1e-12 * x) return 1 / (x * x);
  }
  throw new RangeError(
    `frictionFactor: not settled after 20 steps at a Reynolds number of ${reynolds}; last ${1 / (x * x)}`,
  );
}
