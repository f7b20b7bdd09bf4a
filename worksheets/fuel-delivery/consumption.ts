import { fuelDensity } from "../../lib/fluid";
import { fuelEndurance, fuelFlowAtLoad, mappedDemand, meanDuty, powerOfFuel } from "../../lib/fuel";
import { cell, type StatedCheck, structure } from "../../lib/graph";
import type {
  Fraction,
  Length,
  Mass,
  MassFlow,
  Power,
  Pressure,
  RotationalSpeed,
  Time,
  Velocity,
} from "../../lib/quantity";
import { fuelFlow, indicatedPower } from "../air-demand/cells";
import { propellerShare } from "../boat-duty/inputs";
import { ratedPower, ratedSpeed } from "../brief/cells";
import { injectedVolume } from "./cells";
import { fullLoadMap } from "./fullLoadMap";
import {
  boatSpeed,
  cruiseShare,
  dutyCycle,
  fuelCurve,
  fuelPropellerExponent,
  hullExponent,
  railPressure,
  tankReserve,
  tankStart,
  tankVolume,
} from "./inputs";
import { anchorOf, propellerAt } from "./propellerAt";
import { fuelInUse } from "./pumpWork";

export const usableFuel = cell("usableFuel", {
  label: "Fuel that may be used",
  kind: "mass",
  symbol: "m_t",
  from: { tankVolume, tankReserve, fuelInUse, tankStart },
  compute: ({ tankVolume, tankReserve, fuelInUse, tankStart }) =>
    (tankVolume *
      (1 - tankReserve) *
      fuelDensity(fuelInUse, { temperature: tankStart, pressure: 101325 as Pressure })) as Mass,
  formula: "m_t = V_t\\,(1 - \\sigma_t)\\,\\rho(T_{t,0})",
  source: "definition",
});

export const duty = structure("duty", {
  label: "Fuel of each phase of the duty cycle",
  from: { dutyCycle, fuelFlow, ratedPower, indicatedPower, ratedSpeed, fuelCurve, injectedVolume, railPressure },
  compute: ({ dutyCycle, ...at }) => {
    const anchor = anchorOf(at);
    const map = fullLoadMap(at);
    const fullLoad = (speed: Fraction) => {
      const { volumePerStroke } = mappedDemand(map, (speed * at.ratedSpeed) as RotationalSpeed);
      const fuelFlow = at.fuelFlow * speed * (volumePerStroke / at.injectedVolume);
      return powerOfFuel(anchor, { speedShare: speed, fuelFlow: fuelFlow as MassFlow });
    };
    const whole = dutyCycle.reduce((sum, { time }) => sum + time, 0);
    if (whole <= 0) throw new RangeError("duty: no phase of the duty cycle has a share of the time; give one a share");
    const phases = dutyCycle.map(({ phase, time, speed, power, way }) => ({
      phase,
      timeShare: (time / whole) as Fraction,
      power: (power * at.ratedPower) as Power,
      fullLoad: fullLoad(speed),
      fuelFlow: fuelFlowAtLoad(anchor, { speedShare: speed, powerShare: power }),
      way,
    }));
    const mean = meanDuty(phases);
    return {
      ...mean,
      phases: phases.map((phase) => ({
        ...phase,
        fuelShare: (mean.fuelFlow > 0 ? (phase.timeShare * phase.fuelFlow) / mean.fuelFlow : 0) as Fraction,
      })),
    };
  },
  formula: "\\dot m_{day} = \\sum \\tau\\,\\dot m_f\\,\\frac{P + (P_i - P_b)\\,\\nu^2}{P_i}",
  source: "Willans's line (from memory): one gross indicated efficiency, losses with the square of speed",
  assumptions: [
    "τ are the shares of time, ν the shares of the promised speed; P is the phase's power.",
    "Full load at a phase's speed is what the fuel of the full-load map gives there.",
  ],
  checks: ({ phases }): readonly StatedCheck[] => {
    const [hardest, ...others] = phases;
    if (!hardest) return [];
    const spare = ({ power, fullLoad }: typeof hardest) => fullLoad - power;
    const { phase, power, fullLoad } = others.reduce((worst, each) => (spare(each) < spare(worst) ? each : worst), hardest);
    return [
      {
        component: "duty cycle",
        label: `Power in the phase nearest to full load, “${phase || "unnamed"}”`,
        kind: "power",
        side: "most",
        value: power,
        bound: (fullLoad * (1 + roundingOfFullLoad)) as Power,
        source: "the full-load map",
      },
    ];
  },
});

/** A phase of just the promised power at the promised speed is at full load, not past it. */
const roundingOfFullLoad = 1e-9;

export const meanFuelFlow = cell("meanFuelFlow", {
  label: "Mean fuel flow over the duty cycle",
  kind: "massFlow",
  hint: "fuel",
  symbol: "\\dot m_{day}",
  from: { duty },
  compute: ({ duty }) => duty.fuelFlow,
  formula: "\\dot m_{day} = \\sum \\tau\\,\\dot m_\\tau",
  source: "weighted mean",
});

export const runTime = cell("runTime", {
  label: "Running time from full tank to reserve",
  kind: "time",
  hint: "running hours",
  symbol: "t_{run}",
  from: { usableFuel, meanFuelFlow },
  compute: ({ usableFuel, meanFuelFlow }) => fuelEndurance(usableFuel, meanFuelFlow),
  formula: "t_{run} = \\frac{m_t}{\\dot m_{day}}",
  source: "mass balance",
});

export const runDistance = cell("runDistance", {
  label: "Way covered in that time",
  kind: "length",
  hint: "distance",
  symbol: "s_{run}",
  from: { duty, runTime },
  compute: ({ duty, runTime }) => (duty.way * runTime) as Length,
  formula: "s_{run} = t_{run}\\sum \\tau\\,v_\\tau",
  source: "definition",
});

/** A boat on its propeller curve. */
export interface RangePoint {
  readonly engineSpeed: RotationalSpeed;
  readonly power: Power;
  readonly way: Velocity;
  readonly fuelFlow: MassFlow;
  readonly time: Time;
  readonly range: Length;
}

/** Shares of the promised speed at which the boat is looked at. */
const boatShares = Array.from({ length: 15 }, (_, i) => 0.3 + 0.05 * i);

export const propellerRange = structure("propellerRange", {
  label: "In a boat: range along the propeller curve",
  from: {
    fuelFlow,
    ratedPower,
    indicatedPower,
    ratedSpeed,
    usableFuel,
    boatSpeed,
    hullExponent,
    propellerShare,
    fuelPropellerExponent,
    cruiseShare,
  },
  compute: (at) => {
    const point = (share: number): RangePoint => {
      const engineSpeed = (at.ratedSpeed * share) as RotationalSpeed;
      const { power, fuelFlow } = propellerAt(at, engineSpeed);
      const time = fuelEndurance(at.usableFuel, fuelFlow);
      const way = (at.boatSpeed * share ** at.hullExponent) as Velocity;
      return { engineSpeed, power, way, fuelFlow, time, range: (way * time) as Length };
    };
    return { curve: boatShares.map(point), cruise: point(at.cruiseShare) };
  },
  formula: "s = \\frac{m_t}{\\dot m(\\nu)}\\,v_{boat}\\,\\nu^{x_{hull}}, \\qquad P = s_{pr}\\,P_b\\,\\nu^{x_{prop}}",
  source: "propeller law; Willans's line (from memory)",
  assumptions: [
    "Calm water, clean bottom, one steady speed from full tank to reserve; ν is the share of the promised speed.",
    "The propeller's share of the promised power stands on the sheet of the boat's duty, whose curve is this one.",
  ],
});

export const cruiseRange = cell("cruiseRange", {
  label: "In a boat: range at cruise",
  kind: "length",
  hint: "boat",
  symbol: "s_{cr}",
  from: { propellerRange },
  compute: ({ propellerRange }) => propellerRange.cruise.range,
  formula: "s_{cr} = \\frac{m_t}{\\dot m(\\nu_{cr})}\\,v_{boat}\\,\\nu_{cr}^{x_{hull}}",
  source: "propeller law; Willans's line (from memory)",
});

export const boatRange = cell("boatRange", {
  label: "In a boat: range at the promised speed",
  kind: "length",
  hint: "boat",
  symbol: "s_{boat}",
  from: { propellerRange },
  compute: ({ propellerRange }) => propellerRange.curve.at(-1)!.range,
  formula: "s_{boat} = \\frac{m_t}{\\dot m(1)}\\,v_{boat}",
  source: "propeller law; Willans's line (from memory)",
});

