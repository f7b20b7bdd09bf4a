import type { RatedRestriction } from "../../engine";
import type { DieselFuel } from "../../fluid";
import type {
  Fraction,
  KindName,
  MassFlow,
  Power,
  Pressure,
  Ratio,
  RotationalSpeed,
  SpecificEnergy,
  Temperature,
} from "../../quantity/kinds";
import type { Surroundings } from "../chargePathBuild";
import type { DemandEngine } from "../demandBuild";
import type { ChargeElement } from "../path/elements";

/** What a limit from outside may look at. */
export interface ExternalState {
  /** crankshaft speed [rev/s] */
  readonly engineSpeed: RotationalSpeed;
  /** fuel flow of all cylinders [kg/s] */
  readonly fuelFlow: MassFlow;
  /** absolute pressure in the manifold [Pa] */
  readonly manifoldPressure: Pressure;
  /** estimated highest pressure in the cylinder [Pa] */
  readonly peakPressure: Pressure;
}

/** A limit that another sheet knows: what the fuel pump delivers, how many degrees there are to inject in. */
export interface ExternalLimit {
  /** short name for programs, as "fuelPump" or "injectionWindow" */
  readonly key: string;
  /** name for readers */
  readonly name: string;
  /** kind of quantity of value and limit */
  readonly kind: KindName;
  /** what is used, and the most that may be; smooth, and the more fuel the more used */
  readonly use: (state: ExternalState) => { readonly value: number; readonly limit: number };
}

/** What must not be passed. */
export interface OperatingLimits {
  /** least air over the air for complete combustion; below it the engine smokes [–], 1 to 5 */
  readonly leastExcessAirRatio: Ratio;
  /** highest temperature before the turbines [K]; no limit if left out */
  readonly highestExhaustTemperature?: Temperature;
  /** highest absolute pressure before the turbines [Pa]; no limit if left out */
  readonly highestBackPressure?: Pressure;
  /** highest estimated pressure in the cylinders [Pa]; no limit if left out */
  readonly highestPeakPressure?: Pressure;
  /** limits that other sheets know; none if left out */
  readonly external?: readonly ExternalLimit[];
}

/** What of a build goes with the engine's speed; everything else is the same at all speeds. */
export interface OverSpeed {
  /** crankshaft speed for which the build states what it states [rev/s], above 0 */
  readonly statedAt: RotationalSpeed;
  /** parts of accessoryPower that go with the speed and with its cube, together at most 1; the rest stays; none if left out [–] */
  readonly accessories?: { readonly withSpeed: Fraction; readonly withCube: Fraction };
  /** whether a pump on the crank moves what cools the charge, so that its flow goes with the speed; false if left out */
  readonly coolingStreams?: boolean;
  /** least excess air of a slow engine, below that of the limits; the same at all speeds if left out */
  readonly slowExcessAir?: SlowExcessAir;
}

/** Least air of a slow engine: level up to one speed, and from there on a straight line to that of the limits at another. */
export interface SlowExcessAir {
  /** least air over the air for complete combustion [–], 1 to 5 */
  readonly leastExcessAirRatio: Ratio;
  /** crankshaft speed up to which it holds [rev/s], above 0 */
  readonly upTo: RotationalSpeed;
  /** crankshaft speed from which that of the limits holds [rev/s], not below upTo */
  readonly fullFrom: RotationalSpeed;
}

/** An engine with chosen parts: everything from the open air to the exhaust pipe, and what must not be passed. */
export interface OperatingBuild {
  /** the open air */
  readonly surroundings: Surroundings;
  /** the charge path in the order of flow, from the open air to the manifold */
  readonly path: readonly ChargeElement[];
  readonly engine: DemandEngine;
  /** the fuel, which enters at 298.15 K */
  readonly fuel: DieselFuel;
  /** power of alternator, pumps and fan at the crank [W], 0 or above */
  readonly accessoryPower: Power;
  /** work of the high-pressure pump for each kilogram injected [J/kg], 0 or above */
  readonly fuelPumpWork: SpecificEnergy;
  /** a measured pressure loss of everything after the turbines, at the density there */
  readonly exhaustPipe: RatedRestriction;
  /** whether an exhaust pressure below the manifold's pushes the pistons (true) or is lost in the valves (false) */
  readonly pumpingGainCounts: boolean;
  readonly limits: OperatingLimits;
  /** what of all this goes with the engine's speed; nothing if left out */
  readonly overSpeed?: OverSpeed;
}

/** What the engine is asked for: as much fuel as its air allows, or a power at the flywheel, or a flow of fuel. */
export type Load =
  | { readonly kind: "excessAir"; readonly excessAirRatio: Ratio }
  | { readonly kind: "brakePower"; readonly brakePower: Power }
  | { readonly kind: "fuelFlow"; readonly fuelFlow: MassFlow };
