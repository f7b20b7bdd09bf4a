import { pipePressureLoss, reynoldsNumber, transitionSpan, velocityInPipe } from "../fluid";
import {
  type Density,
  type DynamicViscosity,
  type KinematicViscosity,
  type Length,
  type MassFlow,
  type Pressure,
  type PressureDifference,
  type Ratio,
  requireNotNegative,
  requirePositive,
  type Velocity,
} from "../quantity";

/** Where the fuel that a lift pump sends forward ends up. */
export interface SupplyParts {
  /** burnt in the engine [kg/s], 0 or above */
  readonly injected: MassFlow;
  /** leakage and control flow of the injectors, back to the tank [kg/s], 0 or above */
  readonly injectorReturn: MassFlow;
  /** flow that cools and lubricates the high-pressure pump, back to the tank [kg/s], 0 or above */
  readonly pumpReturn: MassFlow;
}

/**
 * Flow that the lift pump must send forward [kg/s], and what of it comes back [kg/s]. Together two to four times the
 * injected flow is common practice, no source.
 *
 * @param parts flows injected and returned [kg/s]
 * @throws RangeError if a flow is negative
 * @source mass balance
 * @example supplyFlow({ injected: 0.04, injectorReturn: 0.005, pumpReturn: 0.06 }).supply // 0.105
 */
export function supplyFlow({ injected, injectorReturn, pumpReturn }: SupplyParts): {
  readonly supply: MassFlow;
  readonly returned: MassFlow;
} {
  requireNotNegative("supplyFlow: injected", injected, "kg/s");
  requireNotNegative("supplyFlow: injectorReturn", injectorReturn, "kg/s");
  requireNotNegative("supplyFlow: pumpReturn", pumpReturn, "kg/s");
  const returned = injectorReturn + pumpReturn;
  return { supply: (injected + returned) as MassFlow, returned: returned as MassFlow };
}

/** A fuel line. */
export interface FuelLine {
  /** flow through it [kg/s], 0 or above */
  readonly massFlow: MassFlow;
  /** density of the fuel [kg/m³], above 0 */
  readonly density: Density;
  /** kinematic viscosity of the fuel [m²/s], above 0 */
  readonly kinematicViscosity: KinematicViscosity;
  /** bore [m], above 0 */
  readonly diameter: Length;
  /** length of straight line [m], 0 or above */
  readonly length: Length;
  /** height of the wall's roughness [m], 0 or above; 0, drawn tube or hose, if left out */
  readonly roughness?: Length;
  /** loss coefficients of fittings and valves, added up [–], 0 or above; 0 if left out */
  readonly lossCoefficient?: Ratio;
}

/** How fuel runs through a line. */
export interface FuelLineFlow {
  /** mean velocity [m/s] */
  readonly velocity: Velocity;
  /** Reynolds number [–] */
  readonly reynoldsNumber: Ratio;
  /** true where the flow is neither surely laminar nor surely turbulent, so that the loss may be out by half */
  readonly uncertain: boolean;
  /** loss of pressure [Pa] */
  readonly loss: PressureDifference;
}

/**
 * Velocity [m/s] and loss of pressure [Pa] in a fuel line: (f L/d + K) ρ v²/2. Filters stand beside it with their own loss.
 *
 * @param line flow [kg/s], fuel, bore, length and roughness [m], fittings [–]
 * @throws RangeError if an argument lies outside its span
 * @source Darcy–Weisbach, see pipePressureLoss in lib/fluid
 * @example fuelLineFlow({ massFlow: 0.028, density: 840, kinematicViscosity: 4e-6, diameter: 0.008, length: 5 }).loss // 5570.42
 */
export function fuelLineFlow(line: FuelLine): FuelLineFlow {
  const { massFlow, density, kinematicViscosity, diameter, length, roughness, lossCoefficient } = line;
  requirePositive("fuelLineFlow: kinematicViscosity", kinematicViscosity, "m²/s");
  const velocity = velocityInPipe({ massFlow, density, diameter });
  const dynamicViscosity = (kinematicViscosity * density) as DynamicViscosity;
  const flow = { density, velocity, diameter, dynamicViscosity };
  const reynolds = reynoldsNumber(flow);
  return {
    velocity,
    reynoldsNumber: reynolds,
    uncertain: reynolds > transitionSpan[0] && reynolds < transitionSpan[1],
    loss: pipePressureLoss({
      ...flow,
      length,
      roughness: roughness ?? (0 as Length),
      lossCoefficient: lossCoefficient ?? (0 as Ratio),
    }),
  };
}

/** What stands between a source of fuel and a pump's inlet. */
export interface PumpInlet {
  /** absolute pressure at the source: of the tank, or behind the lift pump [Pa], above 0 */
  readonly sourcePressure: Pressure;
  /** height of the inlet above the source [m]; negative below it */
  readonly height: Length;
  /** density of the fuel [kg/m³], above 0 */
  readonly density: Density;
  /** loss in lines and fittings [Pa], 0 or above */
  readonly lineLoss: PressureDifference;
  /** loss across the filter in the state that is looked at [Pa], 0 or above */
  readonly filterLoss: PressureDifference;
  /** least absolute pressure that the pump's inlet must have [Pa], 0 or above */
  readonly leastPressure: Pressure;
}

/**
 * Pressure at a pump's inlet above the least that it must have [Pa]: p − ρ g h − losses − p_least. A negative margin is
 * an answer: the pump starves, or air comes out of the fuel.
 *
 * @param inlet pressures and losses [Pa], height [m] and density [kg/m³]
 * @throws RangeError if an argument lies outside its span
 * @source hydrostatics; g = 9.80665 m/s²
 * @example inletPressureMargin({ sourcePressure: 101325, height: 0.8, density: 835, lineLoss: 5000, filterLoss: 8000, leastPressure: 70000 }) // 11774.16
 */
export function inletPressureMargin(inlet: PumpInlet): PressureDifference {
  const { sourcePressure, height, density, lineLoss, filterLoss, leastPressure } = inlet;
  requirePositive("inletPressureMargin: sourcePressure", sourcePressure, "Pa");
  requirePositive("inletPressureMargin: density", density, "kg/m³");
  requireNotNegative("inletPressureMargin: lineLoss", lineLoss, "Pa");
  requireNotNegative("inletPressureMargin: filterLoss", filterLoss, "Pa");
  requireNotNegative("inletPressureMargin: leastPressure", leastPressure, "Pa");
  if (!Number.isFinite(height)) throw new RangeError(`inletPressureMargin: height is ${height} m; it must be finite`);
  const standing = density * 9.80665 * height;
  return (sourcePressure - standing - lineLoss - filterLoss - leastPressure) as PressureDifference;
}
