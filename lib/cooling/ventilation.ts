import {
  type Area,
  type Count,
  type Density,
  type Fraction,
  type MassFlow,
  type Power,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type SpecificHeat,
  type Temperature,
  type TemperatureDifference,
  type Velocity,
  type VolumeFlow,
} from "../quantity";
import { volumeFlowForHeat } from "./flowForHeat";

/** State and factors that the standard lays down. */
export const shipVentilation = {
  /** outside air for design [K] (35 °C) */
  outsideTemperature: 308.15 as Temperature,
  /** rise from outside to the engine room [K] */
  temperatureRise: 12.5 as TemperatureDifference,
  /** density of that air [kg/m³] */
  density: 1.13 as Density,
  /** specific heat of air [J/(kg·K)] */
  specificHeat: 1010 as SpecificHeat,
  /** air for combustion per power [kg/J], four-stroke and two-stroke */
  combustionAir: { fourStroke: 2e-6, twoStroke: 2.3e-6 },
  /** share of the combustion air that helps to carry the heat off */
  combustionShare: 0.4 as Fraction,
  /** total flow over combustion flow, at least */
  leastMultiple: 1.5,
} as const;

export interface EngineRoomInputs {
  /** rated power of the propulsion engine [W], above 0 */
  readonly power: Power;
  /** strokes in a working cycle [–], 2 or 4 */
  readonly strokes: Count;
  /** heat from gensets, exhaust pipes, boilers and electrics in the same room [W], 0 or above; 0 if left out */
  readonly otherHeat?: Power | undefined;
  /** air that the engine breathes from the room [kg/s], 0 or above; by the standard's factor if left out */
  readonly combustionAir?: MassFlow | undefined;
}

export interface EngineRoomAir {
  /** air for combustion [m³/s] */
  readonly combustionFlow: VolumeFlow;
  /** heat that the engine gives to the room [W] */
  readonly engineHeat: Power;
  /** further air to carry heat off [m³/s]; below 0 where combustion air carries off all */
  readonly heatFlow: VolumeFlow;
  /** air to be led in [m³/s] */
  readonly totalFlow: VolumeFlow;
  /** which rule set it: the sum, or 1.5 times the combustion flow */
  readonly setBy: "sum" | "multiple";
}

/**
 * Air that a ship's engine room needs with 35 °C outside and 12.5 K of rise: q = max(q_c + q_h, 1.5 q_c),
 * q_c = m P/ρ with m 0.0020 (four-stroke) or 0.0023 (two-stroke) kg/(kW·s), q_h = Φ/(ρ c ΔT) − 0.4 q_c,
 * and the engine's own heat 0.141 P^0.76 kW for P in kW.
 * The standard is for ships; small craft have rules of their own. Heat of dry exhaust pipes must be added.
 *
 * @param room rated power [W], strokes, other heat [W], combustion air [kg/s]
 * @throws RangeError if an argument is outside its span
 * @source ISO 8861:1998 (formula and numbers from memory)
 * @example engineRoomAir({ power: 300000, strokes: 4 }).totalFlow // 1.072845
 */
export function engineRoomAir({ power, strokes, otherHeat, combustionAir }: EngineRoomInputs): EngineRoomAir {
  requirePositive("engineRoomAir: power", power, "W");
  if (strokes !== 2 && strokes !== 4) throw new RangeError(`engineRoomAir: strokes is ${strokes}; it must be 2 or 4`);
  requireNotNegative("engineRoomAir: otherHeat", otherHeat ?? 0, "W");
  requireNotNegative("engineRoomAir: combustionAir", combustionAir ?? 0, "kg/s");
  const { density, specificHeat, temperatureRise, combustionShare, leastMultiple } = shipVentilation;
  const perPower = shipVentilation.combustionAir[strokes === 4 ? "fourStroke" : "twoStroke"];
  const combustionFlow = (combustionAir ?? perPower * power) / density;
  const engineHeat = 141 * (power / 1000) ** 0.76; // the source gives kW of kW
  const heat = (engineHeat + (otherHeat ?? 0)) as Power;
  const heatFlow =
    volumeFlowForHeat({ heat, temperatureRise, specificHeat, density }) - combustionShare * combustionFlow;
  const sum = combustionFlow + heatFlow;
  const multiple = leastMultiple * combustionFlow;
  return {
    combustionFlow: combustionFlow as VolumeFlow,
    engineHeat: engineHeat as Power,
    heatFlow: heatFlow as VolumeFlow,
    totalFlow: Math.max(sum, multiple) as VolumeFlow,
    setBy: sum >= multiple ? "sum" : "multiple",
  };
}

export interface OpeningInputs {
  /** air through the opening [m³/s], 0 or above */
  readonly volumeFlow: VolumeFlow;
  /** mean velocity in the free area [m/s], above 0 */
  readonly velocity: Velocity;
  /** share of the opening that louvre, mesh or moisture eliminator leaves free [–], above 0 to 1 */
  readonly freeShare: Fraction;
}

/**
 * Opening that air needs [m²]: A = V̇/(v φ).
 * Natural openings on small craft are often laid out for 2–3 m/s in the free area, fan ducts for 8–10 m/s; mesh leaves
 * about 0.6–0.7 free (common practice, no source).
 *
 * @param opening flow [m³/s], velocity [m/s], free share [–]
 * @throws RangeError if an argument is outside its span
 * @source definition
 * @example openingArea({ volumeFlow: 1.2, velocity: 3, freeShare: 0.64 }) // 0.625
 */
export function openingArea({ volumeFlow, velocity, freeShare }: OpeningInputs): Area {
  requireNotNegative("openingArea: volumeFlow", volumeFlow, "m³/s");
  requirePositive("openingArea: velocity", velocity, "m/s");
  requirePositive("openingArea: freeShare", freeShare);
  requireWithin("openingArea: freeShare", freeShare, [0, 1]);
  return (volumeFlow / (velocity * freeShare)) as Area;
}

export interface RoomInputs {
  /** outside air [K], above 0 */
  readonly outsideTemperature: Temperature;
  /** heat given to the room [W], 0 or above */
  readonly heat: Power;
  /** air led in [m³/s], above 0 */
  readonly volumeFlow: VolumeFlow;
  /** density of the air led in [kg/m³], above 0 */
  readonly density: Density;
}

/**
 * Temperature of an engine room in the mean [K]: T = T_out + Q/(ρ c V̇), all the air warmed alike and leaving as warm
 * as the room. Air that the engine breathes straight from the opening stays cooler; corners over the engine are hotter.
 *
 * @param room outside air [K], heat [W], flow [m³/s], density [kg/m³]
 * @throws RangeError if an argument is outside its span
 * @source energy balance; specific heat as in ISO 8861 (from memory)
 * @example roomTemperature({ outsideTemperature: 308.15, heat: 14266.25, volumeFlow: 1, density: 1.13 }) // 320.65
 */
export function roomTemperature({ outsideTemperature, heat, volumeFlow, density }: RoomInputs): Temperature {
  requirePositive("roomTemperature: outsideTemperature", outsideTemperature, "K");
  requireNotNegative("roomTemperature: heat", heat, "W");
  requirePositive("roomTemperature: volumeFlow", volumeFlow, "m³/s");
  requirePositive("roomTemperature: density", density, "kg/m³");
  return (outsideTemperature + heat / (density * shipVentilation.specificHeat * volumeFlow)) as Temperature;
}
