import { type AttainablePoint, attainable } from "../../lib/charge";
import { exhaustMixWithoutEvaporation, propellerPower, pumpOnSystem } from "../../lib/cooling";
import { structure } from "../../lib/graph";
import type { Power, Pressure, Ratio, RotationalSpeed, Temperature, VolumeFlow } from "../../lib/quantity";
import { ambientPressure, idleSpeed, ratedPower, ratedSpeed } from "../brief/cells";
import { rawWaterDriveRatio } from "../drive-speeds/ratios";
import { fuelPropellerExponent } from "../fuel-delivery/inputs";
import { Later } from "../later";
import { matchBuild } from "../matching/match";
import { attained } from "../matching/solved";
import { balanceSetup } from "./balance";
import { type CircuitSetup, heatsOf } from "./circuitState";
import { exhaustMixOf } from "./exhaustMix";
import type { BalancePoint } from "./fullLoad";
import { circuitSetup } from "./heats";
import { heatsFrom } from "./inputs";
import { networkAt } from "./networkAt";
import { type PartsAndShares, partsAt, type SolvedParts } from "./partsAt";
import { type RawWaterState, rawWaterInlet, rawWaterState } from "./rawWater";
import { cylinderSetup, wallHeatCalibration } from "./wallHeat";

/** The engine on the propeller's curve at one speed, or why it cannot be there. */
export type CurvePoint = BalancePoint & {
  /** what the line carries there; undefined where it has no answer at this speed */
  readonly circuits?: CurveCircuits | undefined;
};

/** Temperatures of line and circuits at one speed of the curve. */
export interface CurveCircuits {
  readonly rawWaterFlow: VolumeFlow;
  readonly seaDischarge: Temperature;
  readonly jacket: Temperature | undefined;
  readonly oil: Temperature | undefined;
  readonly mixedExhaust: Temperature | undefined;
}

export interface CurveFrom extends PartsAndShares {
  readonly heatsFrom: "parts" | "promise";
  readonly attained: AttainablePoint;
  readonly circuitSetup: CircuitSetup;
  readonly rawWaterInlet: Temperature;
  readonly rawWaterState: RawWaterState;
  readonly rawWaterDriveRatio: Ratio;
  readonly ambientPressure: Pressure;
  readonly idleSpeed: RotationalSpeed;
  readonly ratedSpeed: RotationalSpeed;
  readonly ratedPower: Power;
  readonly fuelPropellerExponent: Ratio;
}

const points = 9;

export const propellerCurve = structure("propellerCurve", {
  label: "The engine along the propeller's curve, from idle to the promised speed",
  from: {
    heatsFrom,
    matchBuild,
    attained,
    balanceSetup,
    cylinderSetup,
    wallHeatCalibration,
    circuitSetup,
    rawWaterInlet,
    rawWaterState,
    rawWaterDriveRatio,
    ambientPressure,
    idleSpeed,
    ratedSpeed,
    ratedPower,
    fuelPropellerExponent,
  },
  compute: (at): Later<readonly CurvePoint[], CurveFrom> => new Later("propellerCurve", at, curveOf),
  formula: "P(n) = P_b\\left(\\frac{n}{N}\\right)^{x}",
  source: "conservation of mass and first law at every point: the match at the power that the propeller takes",
  assumptions: [
    "Of a propeller that takes all of the promised power: the heaviest that the cooling may meet, a foul bottom among it.",
    "Limits of the match do not stop it: a point past one of them is told, and one at which the parts have no balance has no answer.",
    "Accessories go with the speed as in the match, the heat of returning fuel with the pump's power; gear loss is in proportion to power.",
    "Wall heat after the correlation chosen, scaled to your share at the promised power: the match takes that share at every speed.",
  ],
});

function curveOf(at: CurveFrom): readonly CurvePoint[] {
  const { idleSpeed: from, ratedSpeed: to } = at;
  requireParts(at);
  return Array.from({ length: points }, (_, i) =>
    curvePointAt(at, (i === points - 1 ? to : from + ((to - from) * i) / (points - 1)) as RotationalSpeed),
  );
}

/** The engine on the propeller's curve at a speed, or under a part of the propeller's load. */
export function curvePointAt(at: CurveFrom, speed: RotationalSpeed, load = 1): CurvePoint {
  const { ratedPower, ratedSpeed, fuelPropellerExponent: exponent } = at;
  const brakePower = (load * propellerPower({ ratedPower, ratedSpeed, speed, exponent })) as Power;
  try {
    requireParts(at);
    const most = speed === ratedSpeed ? at.attained : attainable(at.matchBuild, speed);
    const parts = reached(at, most, brakePower);
    const { balance, wallShare, passed } = parts;
    const { excessAirRatio } = parts.engine;
    return {
      speed,
      brakePower,
      balance,
      wallShare,
      excessAirRatio,
      passed,
      circuits: answered(() => circuitsAt(at, parts)),
    };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { speed, brakePower, refused: error.message };
  }
}

function requireParts({ heatsFrom }: CurveFrom): void {
  if (heatsFrom === "parts") return;
  throw new RangeError(
    "propellerCurve: heat and exhaust are set to those of the promise, which has no other speed or load; take those of the chosen parts",
  );
}

/** The parts under the propeller's power; by name what they reach where that is too much for them. */
function reached(at: CurveFrom, most: AttainablePoint, brakePower: Power): SolvedParts {
  try {
    return partsAt(at, most.point, brakePower);
  } catch (error) {
    const { binding, engineSpeed } = most;
    if (!(error instanceof RangeError) || brakePower <= binding.brakePower) throw error;
    const kilowatts = (power: Power) => `${(power / 1000).toFixed(1)} kW`;
    throw new RangeError(
      `at ${(60 * engineSpeed).toFixed(0)} rev/min the propeller takes ${kilowatts(brakePower)}, and the chosen parts reach ${kilowatts(binding.brakePower)}, where ${binding.name.toLowerCase()} stops them`,
    );
  }
}

function circuitsAt(at: CurveFrom, { engine, balance }: SolvedParts): CurveCircuits {
  const { pump, system } = at.rawWaterState;
  const { volumeFlow } = pumpOnSystem(pump, (engine.speed * at.rawWaterDriveRatio) as RotationalSpeed, system);
  const { aftercooler, intercooler, ...heats } = heatsOf(engine, balance);
  const seaTemperature = at.rawWaterInlet;
  const network = networkAt(at.circuitSetup, {
    ...heats,
    // charge that arrives colder than the water asks nothing of the line
    aftercooler: { ...aftercooler, heat: Math.max(aftercooler.heat, 0) as Power },
    intercooler: { ...intercooler, heat: Math.max(intercooler.heat, 0) as Power },
    seaTemperature,
    rawWaterFlow: volumeFlow,
    speedRatio: (engine.speed / at.ratedSpeed) as Ratio,
  });
  const { discharge } = network;
  const water = { rawWaterFlow: volumeFlow, seaTemperature, salinity: at.circuitSetup.salinity, discharge };
  return {
    rawWaterFlow: volumeFlow,
    seaDischarge: discharge,
    jacket: network.jacket?.hot,
    oil: network.nodes.find(({ key }) => key === "oilCooler")?.station?.hotInlet,
    mixedExhaust: answered(
      () =>
        exhaustMixWithoutEvaporation(exhaustMixOf(engine, water, at.balanceSetup.fuel, at.ambientPressure)).temperature,
    ),
  };
}

function answered<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
