import { type DemandBuild, type DemandPoint, demandAtTurbineArea, demandPoint } from "../../lib/charge";
import {
  exhaustMixWithoutEvaporation,
  exhaustVapourFraction,
  propellerPower,
  pumpOnSystem,
} from "../../lib/cooling";
import { burntGas, seaWater } from "../../lib/fluid";
import { structure } from "../../lib/graph";
import type {
  Fraction,
  MassFlow,
  Power,
  Ratio,
  RotationalSpeed,
  Temperature,
  VolumeFlow,
} from "../../lib/quantity";
import { demand, demandBuild } from "../boost/demand";
import { idleSpeed, ratedPower, ratedSpeed } from "../brief/cells";
import { rawWaterDriveRatio } from "../drive-speeds/ratios";
import { fuelPropellerExponent } from "../fuel-delivery/inputs";
import { Later } from "../later";
import { balanceSetup } from "./balance";
import { type BalanceInputs, balanceOf, type MarineBalance } from "./balanceOf";
import type { CircuitSetup, CircuitState } from "./circuitState";
import { circuitSetup, circuitState } from "./heats";
import { networkAt } from "./networkAt";
import { type RawWaterState, rawWaterState } from "./rawWater";
import { engineOfDemand } from "./solvedEngine";
import { type CylinderSetup, wallHeatOf } from "./wallHeatOf";
import { cylinderSetup, wallHeatCalibration } from "./wallHeat";

/** The engine on the propeller's curve at one speed, or why it cannot be there. */
export type CurvePoint = {
  readonly speed: RotationalSpeed;
  readonly brakePower: Power;
} & (
  | { readonly refused: string }
  | {
      readonly balance: MarineBalance;
      readonly fuelFlow: MassFlow;
      readonly excessAirRatio: Ratio;
      readonly turbineOutletTemperature: Temperature;
      /** part of the fuel's power that goes into the walls, by the correlation as calibrated */
      readonly wallShare: Fraction;
      readonly rawWaterFlow: VolumeFlow;
      /** temperatures of the line; undefined where it has no answer at this speed */
      readonly seaDischarge: Temperature | undefined;
      readonly jacket: Temperature | undefined;
      readonly oil: Temperature | undefined;
      readonly mixedExhaust: Temperature | undefined;
    }
);

export interface CurveFrom {
  readonly demandBuild: DemandBuild;
  readonly demand: DemandPoint;
  readonly balanceSetup: BalanceInputs;
  readonly cylinderSetup: CylinderSetup;
  readonly wallHeatCalibration: Ratio;
  readonly circuitSetup: CircuitSetup;
  readonly circuitState: CircuitState;
  readonly rawWaterState: RawWaterState;
  readonly rawWaterDriveRatio: Ratio;
  readonly idleSpeed: RotationalSpeed;
  readonly ratedSpeed: RotationalSpeed;
  readonly ratedPower: Power;
  readonly fuelPropellerExponent: Ratio;
}

const points = 9;

export const propellerCurve = structure("propellerCurve", {
  label: "The engine along the propeller's curve, from idle to the promised speed",
  from: {
    demandBuild,
    demand,
    balanceSetup,
    cylinderSetup,
    wallHeatCalibration,
    circuitSetup,
    circuitState,
    rawWaterState,
    rawWaterDriveRatio,
    idleSpeed,
    ratedSpeed,
    ratedPower,
    fuelPropellerExponent,
  },
  compute: (at): Later<readonly CurvePoint[], CurveFrom> => new Later("propellerCurve", at, curveOf),
  formula: "P(n) = P_b\\left(\\frac{n}{N}\\right)^{x}, \\qquad A_t = \\text{const}",
  source: "conservation of mass and first law at every point; the turbines keep the nozzle area of the promised power",
  assumptions: [
    "Of a propeller that takes all of the promised power: the heaviest that the cooling may meet, a foul bottom among it.",
    "Efficiencies of compressors and turbines stay as they are; at light load they fall, and the true mixture is a little richer.",
    "Accessories, returning fuel and blower clearances are those of the promised speed; gear loss is in proportion to power.",
    "Wall heat after the correlation chosen, scaled to your share at the promised power.",
  ],
});

function curveOf(at: CurveFrom): readonly CurvePoint[] {
  const { idleSpeed: from, ratedSpeed: to } = at;
  return Array.from({ length: points }, (_, i) =>
    curvePointAt(at, (from + ((to - from) * i) / (points - 1)) as RotationalSpeed),
  );
}

/** The engine on the propeller's curve at a speed, or under a part of the propeller's load. */
export function curvePointAt(at: CurveFrom, speed: RotationalSpeed, load = 1): CurvePoint {
  const { ratedPower, ratedSpeed, fuelPropellerExponent: exponent } = at;
  const brakePower = (load * propellerPower({ ratedPower, ratedSpeed, speed, exponent })) as Power;
  try {
    return { speed, brakePower, ...stateAt(at, speed, brakePower) };
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { speed, brakePower, refused: error.message };
  }
}

/** Wall heat feels the load, and the balance the wall heat: a second round moves it by less than a hundredth. */
function engineAt(at: CurveFrom, engineSpeed: RotationalSpeed, brakePower: Power) {
  const area = at.demand.exhaust.turbineAreaEach;
  const wanted = { engineSpeed, brakePower };
  const solved = (build: DemandBuild) => {
    const point = area === undefined ? demandPoint(build, wanted) : demandAtTurbineArea(build, wanted, area);
    return engineOfDemand(point, engineSpeed, build.surroundings.humidityRatio);
  };
  const first = solved(at.demandBuild);
  const wallShare = (at.wallHeatCalibration * wallHeatOf(at.cylinderSetup, first).share) as Fraction;
  const { excessAirRatio } = first;
  const withShare = { ...at.demandBuild.engine, heatToWallsShare: wallShare };
  return { engine: solved({ ...at.demandBuild, excessAirRatio, engine: withShare }), wallShare };
}

function stateAt(at: CurveFrom, speed: RotationalSpeed, brakePower: Power) {
  const { engine, wallShare } = engineAt(at, speed, brakePower);
  const { path, exhaust, fuelFlow } = engine.point as DemandPoint;
  const balance = balanceOf(engine, at.balanceSetup);
  const line = (key: string) => balance.lines.find((each) => each.key === key)!.power;
  const { pump, system } = at.rawWaterState;
  const { volumeFlow } = pumpOnSystem(pump, (speed * at.rawWaterDriveRatio) as RotationalSpeed, system);
  const [t2, t3, t4] = (["compressorOutlet", "blowerInlet", "blowerOutlet"] as const).map(
    (key) => path.stations.find((station) => station.key === key)!.temperature,
  ) as [Temperature, Temperature, Temperature];
  const network = answered(() =>
    networkAt(at.circuitSetup, {
      ...at.circuitState,
      rawWaterFlow: volumeFlow,
      speedRatio: (speed / at.ratedSpeed) as Ratio,
      jacketHeat: line("jacket"),
      oilHeat: line("oil"),
      gearHeat: line("gear"),
      intercooler: warmest(path.coolerBeforeBlower.heat, t2, t3),
      aftercooler: warmest(path.coolerAfterBlower.heat, t4, path.manifoldTemperature),
    }),
  );
  const sea = seaWater(at.circuitSetup.salinity);
  const { seaTemperature } = at.circuitState;
  const { excessAirRatio, humidityRatio } = engine;
  const mix = { excessAirRatio, humidityRatio, fuel: at.balanceSetup.fuel };
  return {
    balance,
    fuelFlow,
    excessAirRatio,
    turbineOutletTemperature: exhaust.turbineOutletTemperature,
    wallShare,
    rawWaterFlow: volumeFlow,
    seaDischarge: network?.discharge,
    jacket: network?.jacket?.hot,
    oil: network?.stations.find(({ name }) => name === "Oil cooler")?.hotInlet,
    mixedExhaust:
      network &&
      answered(
        () =>
          exhaustMixWithoutEvaporation({
            gas: burntGas(mix),
            gasFlow: exhaust.flow,
            gasTemperature: exhaust.turbineOutletTemperature,
            waterFlow: (volumeFlow * sea.density(seaTemperature)) as MassFlow,
            waterTemperature: network.discharge,
            waterSpecificHeat: sea.specificHeat(seaTemperature),
            pressure: exhaust.turbineOutletPressure,
            vapourFraction: exhaustVapourFraction(mix),
          }).temperature,
      ),
  };
}

/** A charge cooler at light load; charge that arrives colder than the water asks nothing of the line. */
function warmest(heat: Power, hotInlet: Temperature, hotOutlet: Temperature) {
  return { heat: Math.max(heat, 0) as Power, hotInlet, hotOutlet };
}

function answered<T>(work: () => T): T | undefined {
  try {
    return work();
  } catch (error) {
    if (error instanceof RangeError) return undefined;
    throw error;
  }
}
