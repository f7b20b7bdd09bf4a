import { fuelBulkModulus, fuelExpansion, fuelSpecificHeat, fuelViscosity } from "../../lib/fluid";
import {
  crankAngleOf,
  cylinderPressureDuringInjection,
  fuelLineFlow,
  fuelMassPerStroke,
  fuelVapourPressure,
  fuelVolumePerStroke,
  fullestCylinder,
  injectionDuration as injectionDurationOf,
  jetVelocity as jetVelocityOf,
  liftPumpRise,
  meteredTorque,
  mixedTemperature,
  nozzleArea as nozzleAreaOf,
  nozzleAreaForWindow,
  nozzleCavitation,
  nozzleFlow as nozzleFlowOf,
  type PlungerPump,
  pumpAtSpeed,
  pumpDelivery,
  pumpDisplacement as pumpDisplacementOf,
  pumpDriveRatio,
  railPressureDrop,
  railRecoveryTime,
  returnHeat,
  supplyFlow as supplyFlowOf,
  supplyReach,
  supplyStations,
  throttlingRise,
} from "../../lib/fuel";
import { cell, structure } from "../../lib/graph";
import type {
  BulkModulus,
  Count,
  DynamicViscosity,
  Fraction,
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
import { drivenPumps } from "./drivenPumps";
import {
  coolingFlow,
  cylinderImbalance,
  deadVolumeShare,
  filterLoss,
  fuelTemperature,
  holeDiameter,
  injectionWindow,
  injectorReturn,
  inletPressureNeeded,
  inletRounding,
  liftShutOff,
  needleClosing,
  needleOpening,
  nozzleDischarge,
  nozzleHoles,
  plungerDiameter,
  plungerGap,
  plungerSeal,
  plungerStroke,
  pumpLobes,
  pumpMechanicalEfficiency,
  pumpPlungers,
  railDipLimit,
  railPressure,
  railVolume,
  suctionFittings,
  suctionHeight,
  suctionLeast,
  suctionLength,
  supplyBore,
  supplyCapacity,
  supplyCoolerLoss,
  supplyFittings,
  supplyLength,
  supplyPressure,
  viscousShare,
} from "./inputs";
import { fuelDensityAtPump, fuelInUse } from "./pumpWork";

const bars = (pressure: number) => `${(pressure / 1e5).toFixed(1)} bar`;

export const fuelState = structure("fuelState", {
  label: "The fuel at the pump's inlet and in the rail",
  from: { fuelInUse, fuelTemperature, fuelDensityAtPump, railPressure },
  compute: ({ fuelInUse, fuelTemperature, fuelDensityAtPump, railPressure }) => {
    const modulus = (pressure: number) =>
      fuelBulkModulus(fuelInUse, { temperature: fuelTemperature, pressure: pressure as Pressure });
    const kinematicViscosity = fuelViscosity(fuelInUse, fuelTemperature);
    return {
      density: fuelDensityAtPump,
      kinematicViscosity,
      dynamicViscosity: (kinematicViscosity * fuelDensityAtPump) as DynamicViscosity,
      // The mean over the rise is that at half the pressure.
      meanModulus: modulus(railPressure / 2),
      railModulus: modulus(railPressure),
      specificHeat: fuelSpecificHeat(fuelInUse, fuelTemperature),
      expansion: fuelExpansion(fuelInUse, fuelTemperature),
      vapourPressure: fuelVapourPressure(fuelTemperature),
    };
  },
  formula: "\\rho_f,\\ \\nu_f,\\ K,\\ c_f,\\ \\beta_f,\\ p_{vap} \\text{ at } T_f \\text{ and } p_r",
  source: "ASTM D1250 and D341, Cragoe (1929), AP-42 chapter 7.1, all from memory; see the library's own notes",
  assumptions: [
    "K is the isentropic bulk modulus: its mean on the way to the rail, and its value there.",
    "Air in the fuel, even a hundredth of its volume, would make all of this much softer.",
  ],
});

export const fuelViscosityAtPump = cell("fuelViscosityAtPump", {
  label: "Kinematic viscosity of the fuel at the pump's inlet",
  kind: "kinematicViscosity",
  symbol: "\\nu_f",
  from: { fuelState },
  compute: ({ fuelState }) => fuelState.kinematicViscosity,
  formula: "\\nu_f = \\nu(T_f)",
  source: "ASTM D341 (from memory) through the viscosity at 40 °C",
  validity: [
    {
      of: "result",
      span: [1.4e-6, 8e-6],
      note: "Pumps for diesel fuel want 1.5 to 8 mm²/s at their inlet: common practice, no source.",
    },
  ],
});

export const fuelModulus = cell("fuelModulus", {
  label: "Bulk modulus of the fuel on the way to the rail",
  kind: "bulkModulus",
  symbol: "K_f",
  from: { fuelState },
  compute: ({ fuelState }) => fuelState.meanModulus as BulkModulus,
  formula: "K_f = K\\left(T_f,\\ \\tfrac{1}{2}p_r\\right)",
  source: "own line through figures from memory; compare Tat and Van Gerpen, JAOCS 80 (2003) 1127",
});

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

export const fullestStroke = cell("fullestStroke", {
  label: "Fuel for one stroke of the fullest cylinder",
  kind: "mass",
  hint: "fuel",
  symbol: "m_{f,max}",
  from: { meanMass: fuelPerStroke, imbalance: cylinderImbalance, cylinders },
  compute: (uneven) => fullestCylinder(uneven).fullest,
  formula: "m_{f,max} = m_f\\,(1 + \\delta_z)",
  source: "mass balance; the other cylinders get as much less between them",
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

export const holeFlow = structure("holeFlow", {
  label: "How a nozzle's hole flows, and whether it cavitates",
  from: { railPressure, cylinderPressure, fuelState, inletRounding, nozzleDischarge },
  compute: ({ railPressure, cylinderPressure, fuelState, inletRounding, nozzleDischarge }) =>
    nozzleCavitation({
      upstreamPressure: railPressure,
      downstreamPressure: cylinderPressure,
      vapourPressure: fuelState.vapourPressure,
      inletRounding,
      fullHoleDischarge: nozzleDischarge as number as Ratio,
    }),
  formula:
    "K_c = \\frac{p_r - p_{vap}}{p_r - p_z}, \\qquad C_d = C_c\\sqrt{K_c} \\text{ where } K_c < \\left(\\frac{C_{d,0}}{C_c}\\right)^2",
  source: "W. H. Nurick, J. Fluids Engineering 98 (1976) 681 (from memory)",
  assumptions: ["C_c^{-2} = 0.611^{-2} − 11.4 r_h; a taper of the hole, which hinders cavitation, is left out."],
});

export const cavitationNumber = cell("cavitationNumber", {
  label: "Cavitation number of the holes",
  kind: "ratio",
  symbol: "K_c",
  from: { holeFlow },
  compute: ({ holeFlow }) => holeFlow.cavitationNumber,
  formula: "K_c = \\frac{p_r - p_{vap}}{p_r - p_z}",
  source: "W. H. Nurick (1976) (from memory)",
});

export const cavitationCritical = cell("cavitationCritical", {
  label: "Cavitation number below which they cavitate",
  kind: "ratio",
  symbol: "K_{c,0}",
  from: { holeFlow },
  compute: ({ holeFlow }) => holeFlow.criticalNumber,
  formula: "K_{c,0} = C_{d,0}^2\\left(0.611^{-2} - 11.4\\,r_h\\right)",
  source: "W. H. Nurick (1976) (from memory)",
  assumptions: ["A cavitating hole keeps its flow whatever the cylinder's pressure does, and wears."],
});

export const dischargeMet = cell("dischargeMet", {
  label: "Discharge coefficient at this pressure",
  kind: "ratio",
  symbol: "C_d",
  from: { holeFlow },
  compute: ({ holeFlow }) => holeFlow.dischargeCoefficient,
  formula: "C_d = \\min\\left(C_{d,0},\\ C_c\\sqrt{K_c}\\right)",
  source: "W. H. Nurick (1976) (from memory)",
});

export const nozzleFlow = cell("nozzleFlow", {
  label: "Flow of one nozzle, needle open",
  kind: "volumeFlow",
  hint: "small",
  symbol: "q_n",
  from: {
    area: nozzleArea,
    dischargeCoefficient: dischargeMet,
    railPressure,
    cylinderPressure,
    density: fuelDensityAtPump,
  },
  compute: nozzleFlowOf,
  formula: "q_n = C_d\\,A_h\\,v_j",
  source: "J. B. Heywood, Internal Combustion Engine Fundamentals (1988), chapter 10 (from memory)",
  assumptions: [
    "By volume at the density of the pump's inlet, like the quantity that has to pass; the squeeze of the fuel, left out, takes some 2 % off it.",
  ],
});

export const injectionTime = cell("injectionTime", {
  label: "Injection lasts, all fuel at one go",
  kind: "time",
  hint: "small",
  symbol: "t_i",
  from: {
    volumePerStroke: injectedVolume,
    nozzleFlow,
    openingTime: needleOpening,
    closingTime: needleClosing,
  },
  compute: injectionDurationOf,
  formula: "t_i = \\frac{V_f}{q_n} + \\frac{t_{no} + t_{nc}}{2}",
  source: "trapezium of flow over time",
  assumptions: [
    "For quantities too small to open the needle fully, t_i = √(2 (t_no + t_nc) V_f/q_n).",
    "Against the mean pressure in the cylinder; the timeline below follows the crank.",
  ],
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

/** What the nozzle's size for the window is found from. */
export const windowed = structure("windowed", {
  label: "Fuel, window and pressures that size the holes",
  from: {
    injectedVolume,
    injectionWindow,
    ratedSpeed,
    dischargeMet,
    railPressure,
    cylinderPressure,
    fuelDensityAtPump,
    needleOpening,
    needleClosing,
  },
  compute: (at) => ({
    volumePerStroke: at.injectedVolume,
    window: at.injectionWindow,
    engineSpeed: at.ratedSpeed,
    dischargeCoefficient: at.dischargeMet,
    railPressure: at.railPressure,
    cylinderPressure: at.cylinderPressure,
    density: at.fuelDensityAtPump,
    openingTime: at.needleOpening,
    closingTime: at.needleClosing,
  }),
  formula: "\\text{inputs gathered}",
  source: "definition",
});

export const holeDiameterNeeded = cell("holeDiameterNeeded", {
  label: "Hole diameter that just fits the window",
  kind: "length",
  hint: "small",
  symbol: "d_{h,0}",
  from: { windowed, nozzleHoles },
  compute: ({ windowed, nozzleHoles }) =>
    Math.sqrt((4 * nozzleAreaForWindow(windowed)) / (Math.PI * nozzleHoles)) as Length,
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

export const pumpBuild = structure("pumpBuild", {
  label: "One high-pressure pump as built",
  from: {
    pumpPlungers,
    plungerDiameter,
    plungerStroke,
    pumpLobes,
    deadVolumeShare,
    plungerGap,
    plungerSeal,
    pumpMechanicalEfficiency,
    viscousShare,
    ratedSpeed,
    drivenPumps,
  },
  compute: (at): PlungerPump => ({
    plungers: at.pumpPlungers,
    bore: at.plungerDiameter,
    stroke: at.plungerStroke,
    lobes: at.pumpLobes,
    deadVolumeShare: at.deadVolumeShare,
    gap: at.plungerGap,
    sealLength: at.plungerSeal,
    mechanicalEfficiency: at.pumpMechanicalEfficiency,
    viscousShare: at.viscousShare,
    referenceSpeed: (at.ratedSpeed * at.drivenPumps.pumps[0]!.ratio) as RotationalSpeed,
  }),
  formula: "\\text{inputs gathered}",
  source: "definition",
});

export const pumpRun = structure("pumpRun", {
  label: "The high-pressure pumps at the promised speed",
  from: { pumpBuild, drivenPumps, ratedSpeed, railPressure, fuelState },
  compute: ({ pumpBuild, drivenPumps, ratedSpeed, railPressure, fuelState }) =>
    drivenPumps.pumps.map(({ ratio }) =>
      pumpAtSpeed(pumpBuild, {
        pumpSpeed: (ratedSpeed * ratio) as RotationalSpeed,
        pressureRise: railPressure as number as PressureDifference,
        bulkModulus: fuelState.meanModulus,
        inletDensity: fuelState.density,
        dynamicViscosity: fuelState.dynamicViscosity,
      }),
    ),
  formula:
    "\\dot m = V_p\\,n_f\\,\\rho_f\\left[1 - \\kappa\\left(e^{p_r/K_f} - 1\\right)\\right] - \\dot m_{leak}",
  source: "mass balance of the pumping chamber; leakage through an annulus, H. E. Merritt (1967) (from memory)",
  assumptions: [
    "The inlet valve fills the chamber; yielding of steel is left out.",
    "A plunger leaks for the half of the time in which it is under pressure; the fuel there thickens with pressure, doubling at 1000 bar (from memory).",
  ],
});

export const pumpFilling = cell("pumpFilling", {
  label: "High-pressure pump, volumetric efficiency by mass",
  kind: "fraction",
  symbol: "\\eta_{vp}",
  from: { pumpRun },
  compute: ({ pumpRun }) => pumpRun[0]!.byMass as number as Fraction,
  formula:
    "\\eta_{vp} = 1 - \\kappa\\left(e^{p_r/K_f} - 1\\right) - \\frac{\\dot m_{leak}}{V_p\\,n_f\\,\\rho_f}",
  source: "mass balance of the pumping chamber with constant mean bulk modulus",
  assumptions: ["Of the first pump, if there are several."],
});

export const pumpLeakFlow = cell("pumpLeakFlow", {
  label: "Fuel that leaks past the plungers",
  kind: "massFlow",
  hint: "fuel",
  symbol: "\\dot m_{leak}",
  from: { pumpRun },
  compute: ({ pumpRun }) => pumpRun.reduce((sum, { leakage }) => sum + leakage, 0) as MassFlow,
  formula:
    "\\dot m_{leak} = \\frac{z_p}{2}\\,\\frac{\\pi\\,d_p\\,h_p^3}{12\\,l_p}\\int_0^{p_r}\\frac{dp}{\\nu(p)}",
  source: "H. E. Merritt, Hydraulic Control Systems (1967), §3-2 (from memory)",
  assumptions: ["The third power of the gap makes of this an estimate."],
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

export const pumpsFitted = cell("pumpsFitted", {
  label: "High-pressure pumps on the drive sheet",
  kind: "count",
  symbol: "z_{fp}",
  from: { drivenPumps },
  compute: ({ drivenPumps }) => drivenPumps.pumps.length as Count,
  formula: "z_{fp} = \\text{pulleys of that role}",
  source: "definition",
});

export const pumpCapacity = cell("pumpCapacity", {
  label: "Fuel that the pumps can deliver to the rail",
  kind: "massFlow",
  hint: "fuel",
  symbol: "\\dot m_p",
  from: { pumpRun },
  compute: ({ pumpRun }) => pumpRun.reduce((sum, { delivery }) => sum + delivery, 0) as MassFlow,
  formula: "\\dot m_p = \\sum V_p\\,n_f\\,\\rho_f\\,\\eta_{vp}",
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
  label: "Drive ratio at which the pumps just keep up",
  kind: "ratio",
  symbol: "i_{f,0}",
  from: { pumpDemand, pumpLeakFlow, pumpsFitted, ratedSpeed, pumpDisplacement, pumpBuild, fuelState, railPressure },
  compute: (at) =>
    pumpDriveRatio({
      demand: ((at.pumpDemand + at.pumpLeakFlow) / at.pumpsFitted) as MassFlow,
      engineSpeed: at.ratedSpeed,
      displacement: at.pumpDisplacement,
      byMass: pumpDelivery({
        deadVolumeShare: at.pumpBuild.deadVolumeShare,
        pressureRise: at.railPressure as number as PressureDifference,
        bulkModulus: at.fuelState.meanModulus,
        leakageShare: 0 as Fraction,
      }).byMass,
      inletDensity: at.fuelState.density,
    }),
  formula:
    "i_{f,0} = \\frac{\\dot m_{rail} + \\dot m_{leak}}{z_{fp}\\,V_p\\,\\rho_f\\,N\\left[1 - \\kappa\\left(e^{p_r/K_f} - 1\\right)\\right]}",
  source: "mass balance; leakage does not change with speed",
});

export const pumpMetering = cell("pumpMetering", {
  label: "Part of a full stroke that the inlet meters",
  kind: "fraction",
  symbol: "\\mu_f",
  from: { pumpDemand, pumpCapacity },
  compute: ({ pumpDemand, pumpCapacity }) => (pumpDemand / pumpCapacity) as Fraction,
  formula: "\\mu_f = \\frac{\\dot m_{rail}}{\\dot m_p}",
  source: "definition",
});

export const pumpMeanTorque = cell("pumpMeanTorque", {
  label: "Mean torque at a pump's shaft",
  kind: "torque",
  symbol: "M_{fp}",
  from: { pumpRun, pumpDemand, pumpCapacity, pumpSpeed },
  compute: ({ pumpRun, pumpDemand, pumpCapacity, pumpSpeed }) => {
    const full = pumpRun[0]!;
    if (pumpDemand > pumpCapacity) return full.meanTorque;
    return meteredTorque({ demand: ((pumpDemand * full.delivery) / pumpCapacity) as MassFlow, full, pumpSpeed });
  },
  formula:
    "M_{fp} = \\frac{\\mu_f\\,\\dot m_p + \\dot m_{leak}}{2\\pi\\,n_f\\,z_{fp}\\,\\eta_p}\\,\\frac{K_f}{\\rho_f}\\left(1 - e^{-p_r/K_f}\\right)",
  source: "first law",
  assumptions: [
    "The air sheet charges the work of a stiff liquid instead, some per cent more, and the leakage not at all.",
    "A pump that cannot keep up runs full.",
  ],
});

export const pumpPeakTorque = cell("pumpPeakTorque", {
  label: "Highest torque in a turn of a pump",
  kind: "torque",
  symbol: "M_{fp,max}",
  from: { pumpRun },
  compute: ({ pumpRun }) => pumpRun[0]!.peakTorque,
  formula:
    "M_{fp,max} = \\frac{V_p\\,p_r}{2\\pi\\,\\eta_p}\\,\\frac{\\pi}{z_p}\\,\\frac{\\sin(m\\pi/z_p)}{\\sin(\\pi/z_p)}",
  source: "sum of half waves of the plungers",
  assumptions: [
    "m is the number of plungers that press together, half of them rounded up.",
    "Strokes follow each other evenly on a cam of sine shape; the belt and its pulleys must bear the peak.",
  ],
});

export const railDip = cell("railDip", {
  label: "Rail pressure lost in one injection",
  kind: "pressureDifference",
  hint: "rail",
  symbol: "\\Delta p_{dip}",
  from: { railVolume, fuelState, fullestStroke, railPressure },
  compute: ({ railVolume, fuelState, fullestStroke, railPressure }) =>
    railPressureDrop({
      railVolume,
      bulkModulus: fuelState.railModulus,
      injectedVolume: fuelVolumePerStroke(
        fullestStroke,
        (fuelState.density * Math.exp(railPressure / fuelState.meanModulus)) as typeof fuelState.density,
      ),
    }),
  formula: "\\Delta p_{dip} = K(T_f, p_r)\\,\\frac{m_{f,max}}{\\rho(T_f, p_r)\\,V_r}",
  source: "definition of the bulk modulus",
  assumptions: [
    "Of the fullest cylinder, before the pump makes any of it good; waves in the rail come on top.",
    "The steel is taken as stiff; its yielding makes 10 to 20 % less of the dip: common practice, no source.",
  ],
  limits: [{ component: "rail", side: "most", bound: railDipLimit }],
});

export const injectionInterval = cell("injectionInterval", {
  label: "Time from one cylinder's injection to the next one's",
  kind: "time",
  hint: "small",
  symbol: "t_z",
  from: { ratedSpeed, cylinders },
  compute: ({ ratedSpeed, cylinders }) => (2 / (ratedSpeed * cylinders)) as Time,
  formula: "t_z = \\frac{2}{N\\,z_c}",
  source: "definition; evenly firing",
});

export const railRecovery = cell("railRecovery", {
  label: "Time in which the pumps fill the rail again",
  kind: "time",
  hint: "small",
  symbol: "t_r",
  from: { injectedVolume, pumpCapacity, fuelFlow, injectorReturn, fuelDensityAtPump },
  compute: ({ injectedVolume, pumpCapacity, fuelFlow, injectorReturn, fuelDensityAtPump }) =>
    railRecoveryTime({
      injectedVolume,
      inflow: (pumpCapacity / fuelDensityAtPump) as VolumeFlow,
      leakage: ((fuelFlow * injectorReturn) / fuelDensityAtPump) as VolumeFlow,
    }),
  formula: "t_r = \\frac{\\rho_f\\,V_f}{\\dot m_p - \\lambda_i\\,\\dot m_f}",
  source: "mass balance",
  assumptions: ["With full strokes, as a controller asks for when the pressure falls."],
  limits: [{ component: "rail", side: "most", bound: injectionInterval }],
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
});

export const supplyLine = structure("supplyLine", {
  label: "The supply line, part by part",
  from: {
    supplyMassFlow,
    supplyVolumeFlow,
    fuelState,
    ambientPressure,
    supplyBore,
    suctionLength,
    suctionFittings,
    suctionHeight,
    liftShutOff,
    supplyPressure,
    supplyCapacity,
    filterLoss,
    supplyLength,
    supplyFittings,
    supplyCoolerLoss,
    inletPressureNeeded,
  },
  compute: (at) => {
    const { density, kinematicViscosity } = at.fuelState;
    const line = (length: Length, lossCoefficient: Ratio) => (flow: VolumeFlow) =>
      fuelLineFlow({
        massFlow: (flow * density) as MassFlow,
        density,
        kinematicViscosity,
        diameter: at.supplyBore,
        length,
        lossCoefficient,
      });
    const suction = line(at.suctionLength, at.suctionFittings);
    const delivery = line(at.supplyLength, at.supplyFittings);
    const lift = {
      shutOffRise: at.liftShutOff as number as PressureDifference,
      ratedRise: at.supplyPressure as number as PressureDifference,
      ratedFlow: at.supplyCapacity,
    };
    const share = (flow: VolumeFlow) => flow / at.supplyVolumeFlow;
    const parts = [
      { name: "Height", change: () => -density * 9.80665 * at.suctionHeight },
      { name: "Suction line", change: (flow: VolumeFlow) => -suction(flow).loss },
      { name: "Lift pump", change: (flow: VolumeFlow) => liftPumpRise(lift, flow) },
      { name: "Filter", change: (flow: VolumeFlow) => -at.filterLoss * share(flow) },
      { name: "Line and fittings", change: (flow: VolumeFlow) => -delivery(flow).loss },
      { name: "Cooler", change: (flow: VolumeFlow) => -at.supplyCoolerLoss * share(flow) ** 2 },
    ];
    return {
      line: delivery(at.supplyVolumeFlow),
      stations: supplyStations(at.ambientPressure, parts, at.supplyVolumeFlow),
      reach: supplyReach({
        tankPressure: at.ambientPressure,
        parts,
        leastPressure: (at.ambientPressure + at.inletPressureNeeded) as Pressure,
        highestFlow: (4 * at.supplyCapacity) as VolumeFlow,
      }),
    };
  },
  formula:
    "p_{k+1} = p_k + \\Delta p_{lift}(q) - \\left(f\\,\\frac{l}{d_s} + \\zeta\\right)\\frac{\\rho_f v_s^2}{2} - \\ldots",
  source: "Darcy and Weisbach; friction factor f by Reynolds number, 64/Re or after Colebrook (1939); sum of losses",
  assumptions: [
    "Smooth lines at the temperature T_f throughout; cold fuel loses more.",
    "The filter's loss grows with the flow, the cooler's with its square.",
    "The tank is vented: barometer on the fuel.",
  ],
});

export const supplyVelocity = cell("supplyVelocity", {
  label: "Velocity in the supply line",
  kind: "velocity",
  symbol: "v_s",
  from: { supplyLine },
  compute: ({ supplyLine }) => supplyLine.line.velocity,
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
  from: { supplyLine },
  compute: ({ supplyLine }) => supplyLine.line.reynoldsNumber,
  formula: "Re = \\frac{v_s\\,d_s}{\\nu_f}",
  source: "definition",
  assumptions: ["Laminar below 2300; up to 4000 the flow may be either, and the loss is taken in between."],
});

export const supplyLoss = cell("supplyLoss", {
  label: "Pressure lost in the line behind the lift pump",
  kind: "pressureDifference",
  hint: "boost",
  symbol: "\\Delta p_s",
  from: { supplyLine },
  compute: ({ supplyLine }) => supplyLine.line.loss,
  formula: "\\Delta p_s = \\left(f\\,\\frac{l_s}{d_s} + \\zeta\\right)\\frac{\\rho_f v_s^2}{2}",
  source: "Darcy and Weisbach; friction factor f by Reynolds number, 64/Re or after Colebrook (1939)",
});

export const suctionPressure = cell("suctionPressure", {
  label: "Pressure before the lift pump",
  kind: "pressure",
  hint: "boost",
  symbol: "p_{su}",
  from: { supplyLine },
  compute: ({ supplyLine }) => parting(supplyLine.stations[2]!.pressure, "suctionPressure", "the suction line"),
  formula:
    "p_{su} = p_0 - \\rho_f\\,g\\,h_{su} - \\left(f\\,\\frac{l_{su}}{d_s} + \\zeta_{su}\\right)\\frac{\\rho_f v_s^2}{2}",
  source: "hydrostatics; Darcy and Weisbach",
  limits: [{ component: "lift pump", side: "least", bound: suctionLeast }],
});

export const vapourMargin = cell("vapourMargin", {
  label: "That pressure above the fuel's vapour pressure",
  kind: "pressureDifference",
  hint: "boost",
  symbol: "\\Delta p_{vap}",
  from: { suctionPressure, fuelState },
  compute: ({ suctionPressure, fuelState }) => (suctionPressure - fuelState.vapourPressure) as PressureDifference,
  formula: "\\Delta p_{vap} = p_{su} - p_{vap}(T_f)",
  source: "US EPA, AP-42, chapter 7.1 (from memory)",
  assumptions: ["Diesel fuel's vapour pressure is some hundred pascal: air comes out of it long before vapour does."],
});

export const liftPressure = cell("liftPressure", {
  label: "Pressure behind the lift pump at this flow",
  kind: "gaugePressure",
  hint: "boost",
  symbol: "p_l",
  from: { supplyLine, ambientPressure },
  compute: ({ supplyLine, ambientPressure }) =>
    (parting(supplyLine.stations[3]!.pressure, "liftPressure", "the suction line") - ambientPressure) as GaugePressure,
  formula: "p_l = p_{su} - p_0 + p_{l,0} - (p_{l,0} - p_{l,r})\\left(\\frac{q_s}{q_l}\\right)^2",
  source: "parabola through two points of the pump's curve: common practice, no source",
});

export const inletPressure = cell("inletPressure", {
  label: "Pressure at the high-pressure pump's inlet",
  kind: "gaugePressure",
  hint: "boost",
  symbol: "p_i",
  from: { supplyLine, ambientPressure },
  compute: ({ supplyLine, ambientPressure }) =>
    (parting(supplyLine.stations.at(-1)!.pressure, "inletPressure", "line, filter and cooler") -
      ambientPressure) as GaugePressure,
  formula: "p_i = p_l - \\Delta p_f - \\Delta p_s - \\Delta p_k",
  source: "sum of losses",
  assumptions: ["Lift pump and inlet stand at one height."],
  limits: [{ component: "high-pressure pump inlet", side: "least", bound: inletPressureNeeded }],
});

export const supplyReached = cell("supplyReached", {
  label: "Supply flow at which the inlet would just have its pressure",
  kind: "volumeFlow",
  hint: "fuel",
  symbol: "q_{s,max}",
  from: { supplyLine },
  compute: ({ supplyLine }) => supplyLine.reach,
  formula: "q_{s,max} = q_s|_{p_i = p_{i,min}}",
  source: "where the lift pump's curve crosses the line's",
  limits: [{ component: "lift pump", side: "least", bound: supplyVolumeFlow }],
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
  from: { railPressure, fuelTemperature, fuelState, fuelFlow, injectorReturn, coolingFlow, pumpLeakFlow },
  compute: (at) => {
    const rise = throttlingRise({
      pressureDrop: at.railPressure as number as PressureDifference,
      temperature: at.fuelTemperature,
      density: at.fuelState.density,
      specificHeat: at.fuelState.specificHeat,
      expansion: at.fuelState.expansion,
    });
    const own = at.fuelFlow * at.coolingFlow - at.pumpLeakFlow;
    if (own < 0) {
      throw new RangeError(
        `returnTemperature: ${perHour(at.pumpLeakFlow)} leaks past the plungers and only ${perHour(at.fuelFlow * at.coolingFlow)} is passed back to the tank; let more pass, or narrow the gap`,
      );
    }
    return mixedTemperature([
      {
        massFlow: (at.fuelFlow * at.injectorReturn + at.pumpLeakFlow) as MassFlow,
        temperature: (at.fuelTemperature + rise) as Temperature,
      },
      { massFlow: own as MassFlow, temperature: at.fuelTemperature },
    ]);
  },
  formula:
    "T_r = T_f + \\frac{\\lambda_i\\,\\dot m_f + \\dot m_{leak}}{(\\lambda_i + k_s)\\,\\dot m_f}\\,\\frac{p_r\\,(1 - \\beta_f\\,T_f)}{\\rho_f\\,c_f}",
  source: "first law for steady flow; Joule–Thomson coefficient of a liquid",
  assumptions: [
    "β_f is the fuel's thermal expansion and c_f its specific heat, both at T_f.",
    "Only what the injectors return and what leaks past the plungers has fallen from rail pressure; the rest of the pump's own return has not been raised to it.",
    "The pump's friction heats the fuel as well, which is left out.",
  ],
});

export const fuelReturnHeat = cell("fuelReturnHeat", {
  label: "Heat that the fuel brings back",
  kind: "power",
  hint: "heat",
  symbol: "Q_f",
  from: { fuelReturnFlow, returnTemperature, fuelTemperature, fuelState },
  compute: (at) =>
    returnHeat({
      massFlow: at.fuelReturnFlow,
      specificHeat: at.fuelState.specificHeat,
      temperatureRise: (at.returnTemperature - at.fuelTemperature) as Parameters<
        typeof returnHeat
      >[0]["temperatureRise"],
    }),
  formula: "Q_f = \\dot m_b\\,c_f\\,(T_r - T_f)",
  source: "first law",
});

const perHour = (flow: number) => `${(flow * 3600).toFixed(1)} kg/h`;

/** Fuel does not bear a pull: short of vacuum it parts. */
function parting(pressure: Pressure, name: string, where: string): Pressure {
  if (pressure > 0) return pressure;
  throw new RangeError(
    `${name}: ${where} would lose ${bars(-pressure)} more than there is, and the fuel would part; take a wider or shorter line, a cleaner filter or a stronger pump`,
  );
}
