import {
  type Fraction,
  type Length,
  type PressureDifference,
  type Ratio,
  type RotationalSpeed,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type VolumeFlow,
  type VolumePerTurn,
} from "../quantity";

/** A displacement pump whose vanes slip in proportion to the pressure. */
export interface ImpellerPump {
  readonly kind: "impeller";
  /** volume carried in each turn [m³/rev], above 0 */
  readonly displacement: VolumePerTurn;
  /** delivered over carried volume against no pressure [–], above 0 to 1 */
  readonly filling: Fraction;
  /** rise at which nothing is delivered at the rated speed [Pa], above 0 */
  readonly shutOffPressure: PressureDifference;
  /** speed for which that was stated [rev/s], above 0 */
  readonly ratedSpeed: RotationalSpeed;
}

/** A pump whose flow and pressure follow the affinity laws. */
export interface CentrifugalPump {
  readonly kind: "centrifugal";
  /** rise at no flow and rated speed [Pa], above 0 */
  readonly shutOffPressure: PressureDifference;
  /** flow at no rise and rated speed [m³/s], above 0 */
  readonly openFlow: VolumeFlow;
  /** speed for which these were stated [rev/s], above 0 */
  readonly ratedSpeed: RotationalSpeed;
}

export type WaterPump = ImpellerPump | CentrifugalPump;

/** What a line asks of its pump. */
export interface PumpSystem {
  /** rise that is asked for without any flow: height of the outlet over the water drawn from, and gas pressure there [Pa] */
  readonly staticPressure: PressureDifference;
  /** loss at the reference flow, all of it growing with the square of the flow [Pa], above 0 */
  readonly lossAtReference: PressureDifference;
  /** reference flow [m³/s], above 0 */
  readonly referenceFlow: VolumeFlow;
}

/** Where pump and line agree. */
export interface PumpOperatingPoint {
  readonly speed: RotationalSpeed;
  readonly volumeFlow: VolumeFlow;
  readonly pressureRise: PressureDifference;
}

/**
 * Rise of pressure that a pump makes at a speed and a flow [Pa]; below 0 past its open flow.
 * Displacement pump with a slip in proportion to the pressure: Δp = Δp_0 (n/n_r)(1 − q/(η V n)) at any speed, so that a
 * slow pump can make less pressure. Centrifugal pump: Δp = Δp_0 [(n/n_r)² − (q/q_0)²], the affinity laws.
 * Cavitation and wear with the speed are left out.
 *
 * @param pump the pump and its rated speed
 * @param speed shaft speed [rev/s], above 0
 * @param volumeFlow delivery [m³/s], 0 or above
 * @throws RangeError if an argument is outside its span
 * @source affinity laws, any textbook on pumps; slip in proportion to pressure as for laminar gaps, a straight line through two points of a vane pump's curve
 * @example pumpPressureRise({ kind: "centrifugal", shutOffPressure: 90000, openFlow: 0.01, ratedSpeed: 30 }, 30, 0.005) // 67500
 */
export function pumpPressureRise(pump: WaterPump, speed: RotationalSpeed, volumeFlow: VolumeFlow): PressureDifference {
  requirePump("pumpPressureRise", pump);
  requirePositive("pumpPressureRise: speed", speed, "rev/s");
  requireNotNegative("pumpPressureRise: volumeFlow", volumeFlow, "m³/s");
  const ratio = speed / pump.ratedSpeed;
  if (pump.kind === "centrifugal") {
    return (pump.shutOffPressure * (ratio ** 2 - (volumeFlow / pump.openFlow) ** 2)) as PressureDifference;
  }
  const carried = pump.filling * pump.displacement * speed;
  return (pump.shutOffPressure * ratio * (1 - volumeFlow / carried)) as PressureDifference;
}

/**
 * Pressure that a line asks for at a flow [Pa]: Δp = Δp_static + Δp_r (q/q_r)².
 *
 * @param system static pressure and a reference point of the loss
 * @param volumeFlow flow [m³/s], 0 or above
 * @throws RangeError if an argument is outside its span
 * @source turbulent losses grow with the square of the flow (Darcy–Weisbach)
 * @example systemPressure({ staticPressure: 10000, lossAtReference: 40000, referenceFlow: 0.005 }, 0.0025) // 20000
 */
export function systemPressure(system: PumpSystem, volumeFlow: VolumeFlow): PressureDifference {
  requireSystem("systemPressure", system);
  requireNotNegative("systemPressure: volumeFlow", volumeFlow, "m³/s");
  const loss = system.lossAtReference * (volumeFlow / system.referenceFlow) ** 2;
  return (system.staticPressure + loss) as PressureDifference;
}

/**
 * Flow and pressure at which a pump and its line agree [m³/s, Pa]: where the pump's curve crosses the line's, in closed
 * form, since both are of second order.
 *
 * @param pump the pump and its rated speed
 * @param speed shaft speed [rev/s], above 0
 * @param system what the line asks for
 * @throws RangeError if an argument is outside its span, or the pump cannot lift the water at this speed
 * @source as pumpPressureRise and systemPressure
 * @example pumpOnSystem({ kind: "centrifugal", shutOffPressure: 90000, openFlow: 0.01, ratedSpeed: 30 }, 30, { staticPressure: 10000, lossAtReference: 57500, referenceFlow: 0.005 }).volumeFlow // 0.005
 */
export function pumpOnSystem(pump: WaterPump, speed: RotationalSpeed, system: PumpSystem): PumpOperatingPoint {
  requirePump("pumpOnSystem", pump);
  requirePositive("pumpOnSystem: speed", speed, "rev/s");
  requireSystem("pumpOnSystem", system);
  const ratio = speed / pump.ratedSpeed;
  const perSquare = system.lossAtReference / system.referenceFlow ** 2;
  const shutOff = pump.shutOffPressure * (pump.kind === "centrifugal" ? ratio ** 2 : ratio);
  const free = shutOff - system.staticPressure;
  if (!(free > 0)) {
    throw new RangeError(
      `pumpOnSystem: at ${Number((60 * speed).toPrecision(4))} rev/min the pump makes at most ${(shutOff / 1000).toPrecision(3)} kPa, ` +
        `and the line asks for ${(system.staticPressure / 1000).toPrecision(3)} kPa before any water flows: a faster or tighter pump, or less lift`,
    );
  }
  let volumeFlow: number;
  if (pump.kind === "centrifugal") {
    volumeFlow = Math.sqrt(free / (perSquare + pump.shutOffPressure / pump.openFlow ** 2));
  } else {
    // K q² + b q − free = 0, with the root written so that a small K does no harm
    const slope = shutOff / (pump.filling * pump.displacement * speed);
    volumeFlow = (2 * free) / (slope + Math.sqrt(slope ** 2 + 4 * perSquare * free));
  }
  const flow = volumeFlow as VolumeFlow;
  return { speed, volumeFlow: flow, pressureRise: systemPressure(system, flow) };
}

/**
 * Loss of a strainer whose basket is partly blocked [Pa]: Δp = Δp_clean/(1 − b)², the same flow through less area.
 *
 * @param cleanLoss loss with a clean basket at this flow [Pa], 0 or above
 * @param blocked share of the free area that is blocked [–], 0 to 0.99
 * @throws RangeError if an argument is outside its span
 * @source orifice flow: the loss goes with the square of the velocity in what is left open
 * @example blockedStrainerLoss(2000, 0.5) // 8000
 */
export function blockedStrainerLoss(cleanLoss: PressureDifference, blocked: Fraction): PressureDifference {
  requireNotNegative("blockedStrainerLoss: cleanLoss", cleanLoss, "Pa");
  requireWithin("blockedStrainerLoss: blocked", blocked, [0, 0.99]);
  return (cleanLoss / (1 - blocked) ** 2) as PressureDifference;
}

/**
 * Suction head that a pump needs at another speed [m]: NPSH = NPSH_r (n/n_r)², by similar flow.
 *
 * @param rated suction head needed at the rated speed [m], 0 or above
 * @param speedRatio speed over the rated speed [–], 0 or above
 * @throws RangeError if an argument is outside its span
 * @source affinity laws, any textbook on pumps
 * @example suctionHeadNeeded(3, 0.5) // 0.75
 */
export function suctionHeadNeeded(rated: Length, speedRatio: Ratio): Length {
  requireNotNegative("suctionHeadNeeded: rated", rated, "m");
  requireNotNegative("suctionHeadNeeded: speedRatio", speedRatio);
  return (rated * speedRatio ** 2) as Length;
}

function requirePump(caller: string, pump: WaterPump): void {
  requirePositive(`${caller}: shutOffPressure`, pump.shutOffPressure, "Pa");
  requirePositive(`${caller}: ratedSpeed`, pump.ratedSpeed, "rev/s");
  if (pump.kind === "centrifugal") {
    requirePositive(`${caller}: openFlow`, pump.openFlow, "m³/s");
    return;
  }
  requirePositive(`${caller}: displacement`, pump.displacement, "m³/rev");
  requirePositive(`${caller}: filling`, pump.filling);
  requireWithin(`${caller}: filling`, pump.filling, [0, 1]);
}

function requireSystem(caller: string, system: PumpSystem): void {
  requireNotNegative(`${caller}: staticPressure`, system.staticPressure, "Pa");
  requirePositive(`${caller}: lossAtReference`, system.lossAtReference, "Pa");
  requirePositive(`${caller}: referenceFlow`, system.referenceFlow, "m³/s");
}
