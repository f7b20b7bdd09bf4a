import { frictionFactor } from "../../lib/fluid";
import type { Ratio } from "../../lib/quantity";
import { type Amount, constant, type Inner, inner, unbound, type WrittenOut, writtenOut } from "../inner";
import {
  cavitationNumber,
  dischargeMet,
  fuelReturnHeat,
  fuelState,
  holeFlow,
  pumpCapacity,
  pumpFilling,
  pumpLeakFlow,
  pumpPeakTorque,
  pumpSpeed,
  returnTemperature,
  suctionPressure,
  supplyLine,
  supplyLoss,
} from "./cells";
import { duty, meanFuelFlow, runDistance, runTime } from "./consumption";
import { bestEfficiency, deliverySweep, meteringAtIdle } from "./deliverySweep";
import { pumpPlungers } from "./inputs";
import { fuelDensityAtPump, fuelInUse, stoichiometricRatio } from "./pumpWork";
import { injectionCourse, injectionEnd, injectionSpan } from "./timing";

const fraction = (value: number): Amount => ({ kind: "fraction", value });

/** Friction factor of the supply line, whose walls are smooth. */
const friction = ({ supplyLine: { line } }: { readonly supplyLine: { readonly line: { readonly reynoldsNumber: Ratio } } }) =>
  frictionFactor({ reynoldsNumber: line.reynoldsNumber, relativeRoughness: 0 as Ratio });

const idle = { deliverySweep };

export const fuelInner: readonly Inner[] = [
  inner([fuelDensityAtPump], "\\rho_{15}", "density of the fuel at 15 °C", "density", { fuelInUse }, (at) => at.fuelInUse.densityAt15C, "fuel"),
  inner([stoichiometricRatio], "y", "hydrogen atoms for each of carbon", "ratio", { fuelInUse }, (at) => at.fuelInUse.hydrogenToCarbon),
  inner([stoichiometricRatio], "z", "oxygen atoms for each of carbon", "ratio", { fuelInUse }, (at) => at.fuelInUse.oxygenToCarbon),
  unbound([stoichiometricRatio], "M_{air}", "molar mass of air"),
  unbound([stoichiometricRatio], "x_{O_2}", "part of the air's molecules that is oxygen"),
  unbound([stoichiometricRatio], "M_{CH_yO_z}", "molar mass of the fuel for each atom of carbon"),
  inner([returnTemperature, fuelReturnHeat], "c_f", "specific heat of the fuel", "specificHeat", { fuelState }, (at) => at.fuelState.specificHeat),
  unbound([returnTemperature], "\\beta_f", "thermal expansion of the fuel, a share for each kelvin"),
  inner([cavitationNumber], "p_{vap}", "vapour pressure of the fuel", "pressure", { fuelState }, (at) => at.fuelState.vapourPressure),
  inner([dischargeMet], "C_c", "contraction of the jet behind the hole's inlet", "ratio", { holeFlow }, (at) => at.holeFlow.contraction),
  inner([pumpFilling, pumpCapacity], "n_f", "speed of the high-pressure pump", "rotationalSpeed", { pumpSpeed }, (at) => at.pumpSpeed),
  unbound([pumpLeakFlow], "p", "pressure along the plunger, from none to the rail's"),
  unbound([pumpLeakFlow], "dp", "a step of that pressure"),
  inner([pumpPeakTorque], "m", "strokes that press at once, at the peak", "count", { pumpPlungers }, (at) => Math.floor((at.pumpPlungers + 1) / 2)),
  inner([supplyLoss, suctionPressure], "f", "friction factor of the line", "ratio", { supplyLine }, friction),
  constant([suctionPressure], "g", "standard gravity", "acceleration", 9.80665),
  inner([injectionSpan], "\\theta_{first}", "the first fuel, after top dead centre", "crankAngle", { injectionCourse }, (at) => at.injectionCourse.first),
  unbound([injectionEnd], "d", "a step of the crank"),
  unbound([injectionEnd], "\\theta", "crank angle while fuel flows"),
  inner([meteringAtIdle], "\\dot m_{rail,0}", "fuel that the rail asks for at idle speed and full load", "massFlow", idle, (at) => at.deliverySweep[0]!.asked, "fuel"),
  inner([meteringAtIdle], "\\dot m_{f,0}", "fuel burnt there", "massFlow", idle, (at) => at.deliverySweep[0]!.burnt, "fuel"),
  inner([meteringAtIdle], "\\dot m_{p,0}", "fuel that the pumps can deliver there", "massFlow", idle, (at) => at.deliverySweep[0]!.delivered, "fuel"),
  unbound([bestEfficiency], "\\dot m_p", "fuel delivered at a speed"),
  unbound([bestEfficiency], "w_{least}", "least work for each kilogram, without losses"),
  unbound([bestEfficiency], "P_{fp}", "power at the pump's shaft there"),
];

export const fuelWrittenOut: readonly WrittenOut[] = [
  writtenOut(meanFuelFlow, { duty }, ({ duty: { phases } }) => phases.map(({ timeShare, fuelFlow }) => [fraction(timeShare), { kind: "massFlow", hint: "fuel", value: fuelFlow }])),
  writtenOut(runDistance, { duty, runTime }, ({ duty: { phases }, runTime: time }) =>
    phases.map(({ timeShare, way }) => [
      { kind: "time", hint: "running hours", value: time },
      fraction(timeShare),
      { kind: "velocity", hint: "road", value: way },
    ]),
  ),
];
