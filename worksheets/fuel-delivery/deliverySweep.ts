import { fuelBulkModulus } from "../../lib/fluid";
import {
  crankAngleOf,
  injectionDuration,
  mappedDemand,
  meteredTorque,
  nozzleFlow as nozzleFlowOf,
  pumpAtSpeed,
  sharedInjections,
} from "../../lib/fuel";
import { cell, type StatedCheck, structure } from "../../lib/graph";
import type {
  CrankAngle,
  DynamicViscosity,
  Fraction,
  MassFlow,
  Pressure,
  PressureDifference,
  Ratio,
  RotationalSpeed,
  Torque,
  VolumePerStroke,
} from "../../lib/quantity";
import { cylinders, idleSpeed, maximumSpeed, ratedSpeed } from "../brief/cells";
import { cylinderPressure, dischargeMet, fuelState, injectedVolume, nozzleArea, pumpBuild } from "./cells";
import { drivenPumps } from "./drivenPumps";
import { fullLoadMap } from "./fullLoadMap";
import {
  afterShare,
  cylinderImbalance,
  efficientBand,
  fuelCurve,
  fuelTemperature,
  injectorReturn,
  meteringLeast,
  needleClosing,
  needleOpening,
  pilotShare,
  railPressure,
} from "./inputs";
import { fuelInUse } from "./pumpWork";

/** Fuel asked for and given at one engine speed. */
export interface DeliveryPoint {
  readonly engineSpeed: RotationalSpeed;
  readonly railPressure: Pressure;
  readonly perStroke: VolumePerStroke;
  readonly pilot: VolumePerStroke;
  readonly main: VolumePerStroke;
  readonly after: VolumePerStroke;
  /** of the fullest cylinder */
  readonly fullest: VolumePerStroke;
  /** burnt in a second */
  readonly burnt: MassFlow;
  /** asked for by the rail, with what injectors leak and return */
  readonly asked: MassFlow;
  /** what the pumps can deliver */
  readonly delivered: MassFlow;
  /** efficiency of the first pump at full filling */
  readonly efficiency: Ratio;
  /** mean torque at the shaft of each pump, metered to what the rail asks for */
  readonly torques: readonly Torque[];
  /** crank angle of all fuel at one go */
  readonly angle: CrankAngle;
}

/** Steps between idle and the highest speed. */
const steps = 14;

export const deliverySweep = structure("deliverySweep", {
  label: "Fuel asked for and given over engine speed",
  from: {
    fuelCurve,
    injectedVolume,
    railPressure,
    idleSpeed,
    ratedSpeed,
    maximumSpeed,
    cylinders,
    pilotShare,
    afterShare,
    cylinderImbalance,
    injectorReturn,
    fuelInUse,
    fuelTemperature,
    fuelState,
    pumpBuild,
    drivenPumps,
    nozzleArea,
    dischargeMet,
    cylinderPressure,
    needleOpening,
    needleClosing,
  },
  compute: (at): readonly DeliveryPoint[] => {
    const map = fullLoadMap(at);
    return speedsBetween(at.idleSpeed, at.ratedSpeed, at.maximumSpeed).map((engineSpeed) => {
      const wanted = mappedDemand(map, engineSpeed);
      const { density } = at.fuelState;
      const perSecond = (engineSpeed * at.cylinders * density) / 2;
      const burnt = wanted.volumePerStroke * perSecond;
      // What an injector leaks and steers with follows the rail's pressure from stroke to stroke.
      const returned = at.injectorReturn * at.injectedVolume * perSecond * (wanted.railPressure / at.railPressure);
      const modulus = fuelBulkModulus(at.fuelInUse, {
        temperature: at.fuelTemperature,
        pressure: (wanted.railPressure / 2) as Pressure,
      });
      const pumpSpeeds = at.drivenPumps.pumps.map(({ ratio }) => (engineSpeed * ratio) as RotationalSpeed);
      const pumps = pumpSpeeds.map((pumpSpeed) =>
        pumpAtSpeed(at.pumpBuild, {
          pumpSpeed,
          pressureRise: wanted.railPressure as number as PressureDifference,
          bulkModulus: modulus,
          inletDensity: density,
          dynamicViscosity: at.fuelState.dynamicViscosity as DynamicViscosity,
        }),
      );
      const delivered = pumps.reduce((sum, { delivery }) => sum + delivery, 0);
      const asked = burnt + returned;
      const open = nozzleFlowOf({
        area: at.nozzleArea,
        dischargeCoefficient: at.dischargeMet,
        railPressure: wanted.railPressure,
        cylinderPressure: (at.cylinderPressure * (wanted.volumePerStroke / at.injectedVolume || 1)) as Pressure,
        density,
      });
      const duration = injectionDuration({
        volumePerStroke: wanted.volumePerStroke,
        nozzleFlow: open,
        openingTime: at.needleOpening,
        closingTime: at.needleClosing,
      });
      return {
        engineSpeed,
        railPressure: wanted.railPressure,
        perStroke: wanted.volumePerStroke,
        ...sharedInjections({ ...wanted, pilotShare: at.pilotShare, afterShare: at.afterShare }),
        fullest: (wanted.volumePerStroke * (at.cylinders === 1 ? 1 : 1 + at.cylinderImbalance)) as VolumePerStroke,
        burnt: burnt as MassFlow,
        asked: asked as MassFlow,
        delivered: delivered as MassFlow,
        efficiency: pumps[0]!.efficiency,
        torques: pumps.map((full, i) =>
          asked > delivered
            ? full.meanTorque
            : meteredTorque({ demand: ((asked * full.delivery) / (delivered || 1)) as MassFlow, full, pumpSpeed: pumpSpeeds[i]! }),
        ),
        angle: crankAngleOf(duration, engineSpeed),
      };
    });
  },
  formula:
    "\\dot m_{rail}(N) = \\rho_f\\,\\frac{N\\,z_c}{2}\\left(V_f(N) + \\lambda_i\\,V_f\\,\\frac{p_r(N)}{p_r}\\right)",
  source: "mass balance along the full-load map; pump as at the promised speed",
  assumptions: [
    "Full load at every speed, as the map has it; pilot and after-injection keep their shares.",
    "What an injector leaks and steers with follows the rail's pressure from stroke to stroke; the cylinder's pressure follows the fuel.",
  ],
  checks: (sweep): readonly StatedCheck[] => {
    const worst = sweep.reduce((a, b) => (a.delivered / a.asked < b.delivered / b.asked ? a : b));
    return [
      {
        component: "high-pressure pump",
        label: "Fuel asked for at the tightest speed of full load",
        kind: "massFlow",
        hint: "fuel",
        side: "most",
        value: worst.asked,
        bound: worst.delivered,
      },
    ];
  },
});

/** Part of full strokes where least and most are metered. */
export const meteringAtIdle = cell("meteringAtIdle", {
  label: "Part of a full stroke metered at idle, without load",
  kind: "fraction",
  symbol: "\\mu_0",
  from: { deliverySweep },
  compute: ({ deliverySweep }) => {
    const { asked, delivered, burnt } = deliverySweep[0]!;
    if (delivered === 0) {
      throw new RangeError(
        "meteringAtIdle: the plungers leak all that they press at idle; a faster pump or a narrower gap is needed",
      );
    }
    // A quarter of full load's fuel keeps an engine turning; what injectors return stays.
    return ((asked - burnt + burnt * idleFuelShare) / delivered) as Fraction;
  },
  formula: "\\mu_0 = \\frac{\\dot m_{rail,0} - \\tfrac{3}{4}\\,\\dot m_{f,0}}{\\dot m_{p,0}}",
  source: "mass balance; idle burns a quarter of its full-load fuel: common practice, no source",
  limits: [{ component: "high-pressure pump", side: "least", bound: meteringLeast }],
});

const idleFuelShare = 0.25;

/** Engine speeds between which the pump works near its best. */
export const efficientRange = structure("efficientRange", {
  label: "Engine speeds at which the pump works near its best",
  from: { deliverySweep, efficientBand },
  compute: ({ deliverySweep, efficientBand }) => {
    const best = Math.max(...deliverySweep.map(({ efficiency }) => efficiency));
    const good = deliverySweep.filter(({ efficiency }) => efficiency >= best - efficientBand);
    return {
      best: best as Fraction,
      from: good[0]!.engineSpeed,
      to: good.at(-1)!.engineSpeed,
    };
  },
  formula: "\\eta_{fp} \\ge \\eta_{fp,max} - \\Delta\\eta_e",
  source: "definition; at the steps of the sweep",
});

export const bestEfficiency = cell("pumpBestEfficiency", {
  label: "Best efficiency of the high-pressure pump along full load",
  kind: "fraction",
  symbol: "\\eta_{fp,max}",
  from: { efficientRange },
  compute: ({ efficientRange }) => efficientRange.best,
  formula: "\\eta_{fp,max} = \\max_N \\frac{\\dot m_p\\,w_{least}}{P_{fp}}",
  source: "least work of what is delivered over the work at the shaft, strokes full",
});

/** Even steps from the lowest to the highest of three speeds, and these themselves. */
function speedsBetween(...own: readonly RotationalSpeed[]): readonly RotationalSpeed[] {
  const [low, high] = [Math.min(...own), Math.max(...own)];
  const step = (high - low) / steps;
  const even = Array.from({ length: steps - 1 }, (_, i) => low + (i + 1) * step).filter((speed) =>
    own.every((other) => Math.abs(speed - other) > 0.35 * step),
  );
  return [...new Set([...own, ...even])].sort((a, b) => a - b) as RotationalSpeed[];
}
