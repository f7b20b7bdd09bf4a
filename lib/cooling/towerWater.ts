import {
  type Fraction,
  type MassFlow,
  type Power,
  type Ratio,
  requireNotNegative,
  requirePositive,
  requireWithin,
  type SpecificHeat,
  type Temperature,
  type TemperatureDifference,
} from "../quantity";

/** Heat of evaporation of water near 30 °C [J/kg]. @source IAPWS steam tables (from memory: 2430 kJ/kg) */
export const evaporationHeat = 2.43e6;

export interface TowerInputs {
  /** heat that the tower must give to the air [W], 0 or above */
  readonly heat: Power;
  /** water round the tower [kg/s], above 0 */
  readonly waterFlow: MassFlow;
  /** specific heat of that water [J/(kg·K)], above 0 */
  readonly waterSpecificHeat: SpecificHeat;
  /** wet bulb of the air [K], above 0 */
  readonly wetBulb: Temperature;
  /** cold water above the wet bulb at the rated load [K], above 0 */
  readonly ratedApproach: TemperatureDifference;
  /** heat for which that approach was stated [W], above 0 */
  readonly ratedHeat: Power;
  /** share of the heat that leaves by evaporation [–], 0 to 1; 0.75 to 0.9 is usual */
  readonly evaporatingShare: Fraction;
  /** salt in the water over that of what is filled in, held by bleeding [–], above 1 */
  readonly concentration: Ratio;
}

export interface TowerState {
  /** water coming back to the cell [K] */
  readonly coldWater: Temperature;
  /** water leaving the cell [K] */
  readonly hotWater: Temperature;
  /** water that evaporates [kg/s] */
  readonly evaporated: MassFlow;
  /** water to be filled in: evaporated and bled off [kg/s] */
  readonly makeUp: MassFlow;
}

/**
 * Water of a cooling tower at a test cell [K, kg/s]: cold water at the wet bulb and an approach that grows with the
 * heat, T_c = T_wb + ΔT_r Q/Q_r; warm water Q/(ṁ c) above it; evaporation s Q/h_v, and bleed for a concentration z,
 * make-up = evaporation z/(z − 1). Drift is left out. The approach in proportion to the heat is a straight line through
 * the rated point and rest: common practice, no source; the tower's own curve goes before it.
 * Warm spray breeds legionella: towers are dosed, cleaned and registered by local rules.
 *
 * @param tower heat, flow, wet bulb and rated approach [W, kg/s, K]
 * @throws RangeError if an argument is outside its span
 * @source energy balance; balance of salt
 * @example towerWater({ heat: 500000, waterFlow: 12, waterSpecificHeat: 4180, wetBulb: 293.15, ratedApproach: 5, ratedHeat: 1000000, evaporatingShare: 0.8, concentration: 3 }).makeUp // 0.246914
 */
export function towerWater(tower: TowerInputs): TowerState {
  const { heat, waterFlow, waterSpecificHeat, wetBulb, ratedApproach, ratedHeat, concentration } = tower;
  requireNotNegative("towerWater: heat", heat, "W");
  requirePositive("towerWater: waterFlow", waterFlow, "kg/s");
  requirePositive("towerWater: waterSpecificHeat", waterSpecificHeat, "J/(kg·K)");
  requirePositive("towerWater: wetBulb", wetBulb, "K");
  requirePositive("towerWater: ratedApproach", ratedApproach, "K");
  requirePositive("towerWater: ratedHeat", ratedHeat, "W");
  requireWithin("towerWater: evaporatingShare", tower.evaporatingShare, [0, 1]);
  requirePositive("towerWater: concentration less 1", concentration - 1);
  const coldWater = wetBulb + (ratedApproach * heat) / ratedHeat;
  const evaporated = (tower.evaporatingShare * heat) / evaporationHeat;
  return {
    coldWater: coldWater as Temperature,
    hotWater: (coldWater + heat / (waterFlow * waterSpecificHeat)) as Temperature,
    evaporated: evaporated as MassFlow,
    makeUp: ((evaporated * concentration) / (concentration - 1)) as MassFlow,
  };
}

export interface ColumnInputs {
  /** heat that the engine's coolant brings to the column [W], 0 or above */
  readonly heat: Power;
  /** coolant leaving the engine, held by the column's valve [K] */
  readonly engineOutlet: Temperature;
  /** supply water [K], above 0, below engineOutlet */
  readonly supply: Temperature;
  /** specific heat of supply and coolant, which mix [J/(kg·K)], above 0 */
  readonly specificHeat: SpecificHeat;
}

/**
 * Supply water that an open mixing column lets in [kg/s]: ṁ = Q/[c (T_out − T_supply)]. The column takes hot coolant
 * off at its overflow and cold water in at its foot, so that the engine's outlet stays where its valve holds it.
 * Open to the air, it cannot run above boiling, and glycol would run away over its edge: for a brake, not a vehicle.
 *
 * @param column heat, temperatures and specific heat [W, K, J/(kg·K)]
 * @throws RangeError if an argument is outside its span
 * @source energy balance
 * @example columnWater({ heat: 200000, engineOutlet: 355, supply: 300, specificHeat: 4186 }) // 0.868697
 */
export function columnWater({ heat, engineOutlet, supply, specificHeat }: ColumnInputs): MassFlow {
  requireNotNegative("columnWater: heat", heat, "W");
  requirePositive("columnWater: supply", supply, "K");
  requirePositive("columnWater: specificHeat", specificHeat, "J/(kg·K)");
  if (!(engineOutlet > supply)) {
    throw new RangeError(
      `columnWater: engineOutlet is ${Number(engineOutlet.toPrecision(5))} K; it must be above the supply's ${Number(supply.toPrecision(5))} K`,
    );
  }
  return (heat / (specificHeat * (engineOutlet - supply))) as MassFlow;
}
