import { fuelBulkModulus, fuelExpansion, fuelSpecificHeat, fuelViscosity } from "../../lib/fluid";
import {
  crankAngleOf,
  cylinderPressureDuringInjection,
  fuelLineFlow,
  fuelMassPerStroke,
  fuelVolumePerStroke,
  injectionDuration as injectionDurationOf,
  jetVelocity as jetVelocityOf,
  mixedTemperature,
  nozzleArea as nozzleAreaOf,
  nozzleAreaForWindow,
  nozzleFlow as nozzleFlowOf,
  pumpDelivery,
  pumpDisplacement as pumpDisplacementOf,
  pumpDriveRatio,
  pumpMassFlow,
  returnHeat,
  supplyFlow as supplyFlowOf,
  throttlingRise,
} from "../../lib/fuel";
import { cell } from "../../lib/graph";
import type {
  GaugePressure,
  Length,
  MassFlow,
  Pressure,
  PressureDifference,
  Ratio,
  RotationalSpeed,
  Temperature,
  Time,
  VolumeFlow,
} from "../../lib/quantity";
import { fuelFlow } from "../air-demand/cells";
import { manifoldPressure } from "../boost/cells";
import { compressionExponent, effectiveCompressionRatio, firingRise } from "../boost/inputs";
import { ambientPressure, cylinders, ratedSpeed } from "../brief/cells";
import { fuelPumpDriveRatio } from "../drive-speeds/ratios";
import {
  coolingFlow,
  deadVolumeShare,
  filterLoss,
  fuelChoice,
  fuels,
  fuelTemperature,
  holeDiameter,
  injectionWindow,
  injectorReturn,
  inletPressureNeeded,
  needleRamps,
  nozzleDischarge,
  nozzleHoles,
  plungerDiameter,
  plungerStroke,
  pumpLeakage,
  pumpLobes,
  pumpPlungers,
  railPressure,
  supplyBore,
  supplyCapacity,
  supplyFittings,
  supplyLength,
  supplyPressure,
} from "./inputs";
import { fuelDensityAtPump } from "./pumpWork";

const bars = (pressure: number) => `${(pressure / 1e5).toFixed(1)} bar`;

/** Half of the needle's lost time opens it, half closes it. */
const half = (time: Time) => (time / 2) as Time;

export const fuelPerStroke = cell("fuelPerStroke", {
  label: "Fuel for one stroke, by mass",
  kind: "mass",
  hint: "fuel",
  symbol: "m_f",
  from: { fuelFlow, engineSpeed: ratedSpeed, cylinders },
  compute: fuelMassPerStroke,
  formula: "m_f = \\frac{2\\,\\dot m_f}{N\\,z_c}",
  source: "definition; one working stroke in two turns",
});

export const injectedVolume = cell("injectedVolume", {
  label: "Fuel for one stroke, by volume",
  kind: "volumePerStroke",
  symbol: "V_f",
  from: { fuelPerStroke, fuelDensityAtPump },
  compute: ({ fuelPerStroke, fuelDensityAtPump }) => fuelVolumePerStroke(fuelPerStroke, fuelDensityAtPump),
  formula: "V_f = \\frac{m_f}{\\rho_f}",
  source: "definition",
  assumptions: [
    "Counted at the pump's inlet, unsqueezed, as a flow bench counts it; at rail pressure it is up to a tenth less.",
  ],
});

export const cylinderPressure = cell("cylinderPressure", {
  label: "Mean cylinder pressure during injection",
  kind: "pressure",
  hint: "boost",
  symbol: "p_z",
  from: { manifoldPressure, effectiveCompressionRatio, compressionExponent, firingRiseRatio: firingRise },
  compute: (stroke) => cylinderPressureDuringInjection(stroke).mean,
  formula: "p_z = p_5\\,\\varepsilon^{\\,n_c}\\,\\frac{1 + \\alpha}{2}",
  source: "common practice, no source: an estimate between compression and peak pressure",
});

export const nozzleArea = cell("nozzleArea", {
  label: "Area of one nozzle's holes",
  kind: "area",
  hint: "small",
  symbol: "A_h",
  from: { nozzleHoles, holeDiameter },
  compute: ({ nozzleHoles, holeDiameter }) => nozzleAreaOf(nozzleHoles, holeDiameter),
  formula: "A_h = z_h\\,\\frac{\\pi}{4}\\,d_h^2",
  source: "geometry",
});

export const jetVelocity = cell("jetVelocity", {
  label: "Velocity of the jets",
  kind: "velocity",
  symbol: "v_j",
  from: { railPressure, cylinderPressure, density: fuelDensityAtPump },
  compute: jetVelocityOf,
  formula: "v_j = \\sqrt{\\frac{2\\,(p_r - p_z)}{\\rho_f}}",
  source: "Bernoulli; a liquid that does not yield",
  assumptions: ["The pressure in the nozzle is the rail's; waves in the pipes are left out."],
});

export const nozzleFlow = cell("nozzleFlow", {
  label: "Flow of one nozzle, needle open",
  kind: "volumeFlow",
  hint: "small",
  symbol: "q_n",
  from: { area: nozzleArea, nozzleDischarge, railPressure, cylinderPressure, density: fuelDensityAtPump },
  compute: ({ nozzleDischarge, ...nozzle }) =>
    nozzleFlowOf({ ...nozzle, dischargeCoefficient: nozzleDischarge as number as Ratio }),
  formula: "q_n = C_d\\,A_h\\,v_j",
  source: "J. B. Heywood, Internal Combustion Engine Fundamentals (1988), chapter 10 (from memory)",
  assumptions: [
    "By volume at the density of the pump's inlet, like the quantity that has to pass; the squeeze of the fuel, left out, takes some 2 % off it.",
  ],
});

export const injectionTime = cell("injectionTime", {
  label: "Injection lasts",
  kind: "time",
  hint: "small",
  symbol: "t_i",
  from: { injectedVolume, nozzleFlow, needleRamps },
  compute: ({ injectedVolume, nozzleFlow, needleRamps }) =>
    injectionDurationOf({
      volumePerStroke: injectedVolume,
      nozzleFlow,
      openingTime: half(needleRamps),
      closingTime: half(needleRamps),
    }),
  formula: "t_i = \\frac{V_f}{q_n} + \\frac{t_n}{2}",
  source: "trapezium of flow over time",
  assumptions: ["For quantities too small to open the needle fully, t_i = √(2 t_n V_f/q_n)."],
});

export const injectionAngle = cell("injectionAngle", {
  label: "Injection lasts, in crank angle",
  kind: "crankAngle",
  symbol: "\\theta_i",
  from: { injectionTime, ratedSpeed },
  compute: ({ injectionTime, ratedSpeed }) => crankAngleOf(injectionTime, ratedSpeed),
  formula: "\\theta_i = 360^\\circ\\,N\\,t_i",
  source: "definition",
  limits: [{ component: "injectors", side: "most", bound: injectionWindow }],
});

export const holeDiameterNeeded = cell("holeDiameterNeeded", {
  label: "Hole diameter that just fits the window",
  kind: "length",
  hint: "small",
  symbol: "d_{h,0}",
  from: {
    injectedVolume,
    injectionWindow,
    ratedSpeed,
    nozzleDischarge,
    railPressure,
    cylinderPressure,
    fuelDensityAtPump,
    needleRamps,
    nozzleHoles,
  },
  compute: (at) => {
    const area = nozzleAreaForWindow({
      volumePerStroke: at.injectedVolume,
      window: at.injectionWindow,
      engineSpeed: at.ratedSpeed,
      dischargeCoefficient: at.nozzleDischarge as number as Ratio,
      railPressure: at.railPressure,
      cylinderPressure: at.cylinderPressure,
      density: at.fuelDensityAtPump,
      openingTime: half(at.needleRamps),
      closingTime: half(at.needleRamps),
    });
    return Math.sqrt((4 * area) / (Math.PI * at.nozzleHoles)) as Length;
  },
  formula: "\\theta_i(d_{h,0}) = \\theta_{lim}",
  source: "the chain from the holes to the crank angle, taken backwards",
});

export const pumpDisplacement = cell("pumpDisplacement", {
  label: "Displacement of the high-pressure pump",
  kind: "volumePerTurn",
  hint: "small",
  symbol: "V_p",
  from: { plungers: pumpPlungers, bore: plungerDiameter, stroke: plungerStroke, lobes: pumpLobes },
  compute: pumpDisplacementOf,
  formula: "V_p = z_p\\,z_l\\,\\frac{\\pi}{4}\\,d_p^2\\,s_p",
  source: "geometry",
});

export const pumpFilling = cell("pumpFilling", {
  label: "High-pressure pump, volumetric efficiency by mass",
  kind: "fraction",
  symbol: "\\eta_{vp}",
  from: { railPressure, fuelTemperature, fuelChoice, deadVolumeShare, pumpLeakage },
  compute: ({ railPressure, fuelTemperature, fuelChoice, deadVolumeShare, pumpLeakage }) =>
    pumpDelivery({
      deadVolumeShare,
      pressureRise: railPressure as number as PressureDifference,
      // The mean over the rise is that at half the pressure.
      bulkModulus: fuelBulkModulus(fuels[fuelChoice], {
        temperature: fuelTemperature,
        pressure: (railPressure / 2) as Pressure,
      }),
      leakageShare: pumpLeakage,
    }).byMass,
  formula: "\\eta_{vp} = 1 - \\kappa\\left(e^{p_r/K} - 1\\right) - \\lambda_p\\,e^{p_r/K}",
  source: "mass balance of the pumping chamber with constant mean bulk modulus",
  assumptions: [
    "K is the fuel's bulk modulus at half the rail pressure and T_f.",
    "The inlet valve fills the chamber; yielding of steel is left out.",
  ],
});

export const pumpSpeed = cell("fuelPumpSpeed", {
  label: "High-pressure pump speed",
  kind: "rotationalSpeed",
  symbol: "n_f",
  from: { ratedSpeed, fuelPumpDriveRatio },
  compute: ({ ratedSpeed, fuelPumpDriveRatio }) => (ratedSpeed * fuelPumpDriveRatio) as RotationalSpeed,
  formula: "n_f = N\\,i_f",
  source: "definition",
});

export const pumpCapacity = cell("pumpCapacity", {
  label: "Fuel that the pump can deliver to the rail",
  kind: "massFlow",
  hint: "fuel",
  symbol: "\\dot m_p",
  from: { displacement: pumpDisplacement, byMass: pumpFilling, inletDensity: fuelDensityAtPump, pumpSpeed },
  compute: pumpMassFlow,
  formula: "\\dot m_p = V_p\\,n_f\\,\\rho_f\\,\\eta_{vp}",
  source: "definition",
});

export const pumpDemand = cell("pumpDemand", {
  label: "Fuel that the rail asks for",
  kind: "massFlow",
  hint: "fuel",
  symbol: "\\dot m_{rail}",
  from: { fuelFlow, injectorReturn },
  compute: ({ fuelFlow, injectorReturn }) => (fuelFlow * (1 + injectorReturn)) as MassFlow,
  formula: "\\dot m_{rail} = \\dot m_f\\,(1 + \\lambda_i)",
  source: "mass balance of the rail",
  limits: [{ component: "high-pressure pump", side: "most", bound: pumpCapacity }],
});

export const pumpRatioNeeded = cell("pumpRatioNeeded", {
  label: "Drive ratio at which the pump just keeps up",
  kind: "ratio",
  symbol: "i_{f,0}",
  from: {
    demand: pumpDemand,
    engineSpeed: ratedSpeed,
    displacement: pumpDisplacement,
    byMass: pumpFilling,
    inletDensity: fuelDensityAtPump,
  },
  compute: pumpDriveRatio,
  formula: "i_{f,0} = \\frac{\\dot m_{rail}}{V_p\\,\\rho_f\\,\\eta_{vp}\\,N}",
  source: "mass balance",
});

export const supplyMassFlow = cell("supplyMassFlow", {
  label: "Supply flow, by mass",
  kind: "massFlow",
  hint: "fuel",
  symbol: "\\dot m_s",
  from: { fuelFlow, injectorReturn, coolingFlow },
  compute: ({ fuelFlow, injectorReturn, coolingFlow }) =>
    supplyFlowOf({
      injected: fuelFlow,
      injectorReturn: (fuelFlow * injectorReturn) as MassFlow,
      pumpReturn: (fuelFlow * coolingFlow) as MassFlow,
    }).supply,
  formula: "\\dot m_s = \\dot m_f\\,(1 + \\lambda_i + k_s)",
  source: "mass balance",
});

export const supplyVolumeFlow = cell("supplyVolumeFlow", {
  label: "Supply flow, by volume",
  kind: "volumeFlow",
  hint: "fuel",
  symbol: "q_s",
  from: { supplyMassFlow, fuelDensityAtPump },
  compute: ({ supplyMassFlow, fuelDensityAtPump }) => (supplyMassFlow / fuelDensityAtPump) as VolumeFlow,
  formula: "q_s = \\frac{\\dot m_s}{\\rho_f}",
  source: "definition",
  limits: [{ component: "lift pump", side: "most", bound: supplyCapacity }],
});

const supplyLine = {
  from: {
    supplyMassFlow,
    fuelDensityAtPump,
    fuelChoice,
    fuelTemperature,
    supplyBore,
    supplyLength,
    supplyFittings,
  },
} as const;

export const supplyVelocity = cell("supplyVelocity", {
  label: "Velocity in the supply line",
  kind: "velocity",
  symbol: "v_s",
  from: supplyLine.from,
  compute: (at) => lineFlow(at).velocity,
  formula: "v_s = \\frac{4\\,q_s}{\\pi\\,d_s^2}",
  source: "definition",
  validity: [
    {
      of: "result",
      span: [0, 2.5],
      note: "Above about 2.5 m/s a supply line is usually thought too small: common practice, no source.",
    },
  ],
});

export const supplyReynolds = cell("supplyReynolds", {
  label: "Reynolds number in the supply line",
  kind: "ratio",
  symbol: "Re",
  from: supplyLine.from,
  compute: (at) => lineFlow(at).reynoldsNumber,
  formula: "Re = \\frac{v_s\\,d_s}{\\nu}",
  source: "definition",
  assumptions: [
    "ν is the fuel's kinematic viscosity at T_f.",
    "Laminar below 2300; up to 4000 the flow may be either, and the loss is taken in between.",
  ],
});

export const supplyLoss = cell("supplyLoss", {
  label: "Pressure lost in the supply line",
  kind: "pressureDifference",
  hint: "boost",
  symbol: "\\Delta p_s",
  from: supplyLine.from,
  compute: (at) => lineFlow(at).loss,
  formula: "\\Delta p_s = \\left(f\\,\\frac{l_s}{d_s} + \\zeta\\right)\\frac{\\rho_f v_s^2}{2}",
  source: "Darcy and Weisbach; friction factor f by Reynolds number, 64/Re or after Colebrook (1939)",
  assumptions: ["A smooth line at the temperature T_f throughout; cold fuel loses more."],
});

export const inletPressure = cell("inletPressure", {
  label: "Pressure at the high-pressure pump's inlet",
  kind: "gaugePressure",
  hint: "boost",
  symbol: "p_i",
  from: { supplyPressure, supplyLoss, filterLoss, ambientPressure },
  compute: ({ supplyPressure, supplyLoss, filterLoss, ambientPressure }) => {
    const left = supplyPressure - supplyLoss - filterLoss;
    if (left > -ambientPressure) return left as GaugePressure;
    throw new RangeError(
      `inletPressure: line and filter would lose ${bars(supplyLoss + filterLoss)} of the ${bars(supplyPressure)} that the lift pump gives, and the fuel would part; take a wider or shorter line`,
    );
  },
  formula: "p_i = p_l - \\Delta p_s - \\Delta p_f",
  source: "sum of losses",
  assumptions: ["Lift pump and inlet stand at one height.", "Fuel does not bear a pull: short of vacuum it parts."],
  limits: [{ component: "high-pressure pump inlet", side: "least", bound: inletPressureNeeded }],
});

export const fuelReturnFlow = cell("fuelReturnFlow", {
  label: "Fuel that comes back",
  kind: "massFlow",
  hint: "fuel",
  symbol: "\\dot m_b",
  from: { supplyMassFlow, fuelFlow },
  compute: ({ supplyMassFlow, fuelFlow }) => (supplyMassFlow - fuelFlow) as MassFlow,
  formula: "\\dot m_b = \\dot m_s - \\dot m_f",
  source: "mass balance",
});

export const returnTemperature = cell("returnTemperature", {
  label: "Fuel coming back, mixed",
  kind: "temperature",
  symbol: "T_r",
  from: { railPressure, fuelTemperature, fuelChoice, fuelDensityAtPump, fuelFlow, injectorReturn, coolingFlow },
  compute: (at) => {
    const fuel = fuels[at.fuelChoice];
    const rise = throttlingRise({
      pressureDrop: at.railPressure as number as PressureDifference,
      temperature: at.fuelTemperature,
      density: at.fuelDensityAtPump,
      specificHeat: fuelSpecificHeat(fuel, at.fuelTemperature),
      expansion: fuelExpansion(fuel, at.fuelTemperature),
    });
    return mixedTemperature([
      {
        massFlow: (at.fuelFlow * at.injectorReturn) as MassFlow,
        temperature: (at.fuelTemperature + rise) as Temperature,
      },
      { massFlow: (at.fuelFlow * at.coolingFlow) as MassFlow, temperature: at.fuelTemperature },
    ]);
  },
  formula: "T_r = T_f + \\frac{\\lambda_i}{\\lambda_i + k_s}\\,\\frac{p_r\\,(1 - \\beta_f\\,T_f)}{\\rho_f\\,c_f}",
  source: "first law for steady flow; Joule–Thomson coefficient of a liquid",
  assumptions: [
    "β_f is the fuel's thermal expansion and c_f its specific heat, both at T_f.",
    "Only what the injectors return has fallen from rail pressure; the pump's own return has not been raised to it.",
  ],
});

export const fuelReturnHeat = cell("fuelReturnHeat", {
  label: "Heat that the fuel brings back",
  kind: "power",
  hint: "heat",
  symbol: "Q_f",
  from: { fuelReturnFlow, returnTemperature, fuelTemperature, fuelChoice },
  compute: (at) =>
    returnHeat({
      massFlow: at.fuelReturnFlow,
      specificHeat: fuelSpecificHeat(fuels[at.fuelChoice], at.fuelTemperature),
      temperatureRise: (at.returnTemperature - at.fuelTemperature) as Parameters<
        typeof returnHeat
      >[0]["temperatureRise"],
    }),
  formula: "Q_f = \\dot m_b\\,c_f\\,(T_r - T_f)",
  source: "first law",
});

function lineFlow(at: {
  supplyMassFlow: MassFlow;
  fuelDensityAtPump: Parameters<typeof fuelLineFlow>[0]["density"];
  fuelChoice: keyof typeof fuels;
  fuelTemperature: Temperature;
  supplyBore: Length;
  supplyLength: Length;
  supplyFittings: Ratio;
}) {
  return fuelLineFlow({
    massFlow: at.supplyMassFlow,
    density: at.fuelDensityAtPump,
    kinematicViscosity: fuelViscosity(fuels[at.fuelChoice], at.fuelTemperature),
    diameter: at.supplyBore,
    length: at.supplyLength,
    lossCoefficient: at.supplyFittings,
  });
}
