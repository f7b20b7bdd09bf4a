import {
  cylinderPressureAt,
  type CylinderTrace,
  cylinderPressureDuringInjection,
  injectedPulse,
  sharedInjections,
} from "../../lib/fuel";
import { cell, structure } from "../../lib/graph";
import type { CrankAngle, Pressure } from "../../lib/quantity";
import { manifoldPressure } from "../boost/cells";
import { compressionExponent, effectiveCompressionRatio, firingRise } from "../boost/inputs";
import { ratedSpeed } from "../brief/cells";
import { dischargeMet, injectedVolume, nozzleArea } from "./cells";
import {
  afterGap,
  afterShare,
  injectionStart,
  latestEnd,
  needleClosing,
  needleOpening,
  peakAngle,
  pilotLead,
  pilotShare,
  railPressure,
} from "./inputs";
import { fuelDensityAtPump } from "./pumpWork";

export const injections = structure("injections", {
  label: "Fuel of pilot, main and after-injection",
  from: { volumePerStroke: injectedVolume, pilotShare, afterShare },
  compute: sharedInjections,
  formula: "V_{pi} = \\sigma_{pi}\\,V_f, \\qquad V_{af} = \\sigma_{af}\\,V_f, \\qquad V_{ma} = V_f - V_{pi} - V_{af}",
  source: "definition",
});

export const cylinderTrace = structure("cylinderTrace", {
  label: "Cylinder pressure around the firing dead centre",
  from: { manifoldPressure, effectiveCompressionRatio, compressionExponent, firingRise, peakAngle },
  compute: (at): CylinderTrace => {
    const { compression, peak } = cylinderPressureDuringInjection({
      manifoldPressure: at.manifoldPressure,
      effectiveCompressionRatio: at.effectiveCompressionRatio,
      compressionExponent: at.compressionExponent,
      firingRiseRatio: at.firingRise,
    });
    return {
      compression,
      peak,
      peakAngle: at.peakAngle,
      exponent: at.compressionExponent,
      compressionRatio: at.effectiveCompressionRatio,
    };
  },
  formula:
    "p = p_5\\,(\\varepsilon/v)^{n_c} \\text{ up to dead centre}, \\qquad p = \\alpha\\,p_5\\,\\varepsilon^{n_c}\\,(v_{max}/v)^{n_c} \\text{ behind the peak}",
  source: "polytropic change of state; between dead centre and peak a smooth rise: common practice, no source",
  assumptions: [
    "v is the cylinder's volume over its clearance volume, with a rod of 3.4 crank radii and the effective ratio for the geometric one.",
    "An estimate for what the nozzle sprays against, and no model of combustion.",
  ],
});

export const injectionCourse = structure("injectionCourse", {
  label: "The injections along the crank",
  from: {
    injections,
    cylinderTrace,
    nozzleArea,
    dischargeMet,
    railPressure,
    fuelDensityAtPump,
    ratedSpeed,
    needleOpening,
    needleClosing,
    injectionStart,
    pilotLead,
    afterGap,
  },
  compute: (at) => {
    const nozzle = {
      area: at.nozzleArea,
      dischargeCoefficient: at.dischargeMet,
      railPressure: at.railPressure,
      density: at.fuelDensityAtPump,
      engineSpeed: at.ratedSpeed,
      openingTime: at.needleOpening,
      closingTime: at.needleClosing,
      cylinderPressure: (angle: CrankAngle): Pressure => cylinderPressureAt(at.cylinderTrace, angle),
    };
    const from = (start: number, volume: typeof at.injections.main) =>
      injectedPulse(nozzle, { start: start as CrankAngle, volume });
    const { injections: volumes } = at;
    const pilot = from(-at.injectionStart - at.pilotLead, volumes.pilot);
    const main = from(-at.injectionStart, volumes.main);
    if (pilot.end > main.start) {
      throw new RangeError(
        `injectionCourse: the pilot would last to ${degrees(pilot.end)} and the main injection starts at ${degrees(main.start)}, counted from top dead centre; start the pilot earlier or give it less fuel`,
      );
    }
    const after = from(main.end + at.afterGap, volumes.after);
    const pulses = [
      { name: "Pilot", ...pilot, volume: volumes.pilot },
      { name: "Main", ...main, volume: volumes.main },
      { name: "After", ...after, volume: volumes.after },
    ].filter(({ volume }) => volume > 0);
    return { pulses, first: pulses[0]?.start ?? main.start, last: pulses.at(-1)?.end ?? main.end };
  },
  formula:
    "\\int a(t)\\,C_d\\,A_h\\sqrt{\\frac{2\\,(p_r - p(\\theta))}{\\rho_f}}\\,dt = V, \\qquad a = 0 \\ldots 1 \\text{ along the needle's ramps}",
  source: "orifice equation, integrated by Simpson's rule",
  assumptions: [
    "The rail's pressure is taken as steady, and the density as at the pump's inlet.",
    "The needle's ramps are straight; a quantity too small to open it fully has a triangle for its rate.",
  ],
});

export const mainVolume = cell("mainVolume", {
  label: "Fuel of the main injection",
  kind: "volumePerStroke",
  symbol: "V_{ma}",
  from: { injections },
  compute: ({ injections }) => injections.main,
  formula: "V_{ma} = V_f\\,(1 - \\sigma_{pi} - \\sigma_{af})",
  source: "definition",
});

export const injectionSpan = cell("injectionSpan", {
  label: "Crank angle from the first fuel to the last",
  kind: "crankAngle",
  symbol: "\\theta_g",
  from: { injectionCourse },
  compute: ({ injectionCourse }) => (injectionCourse.last - injectionCourse.first) as CrankAngle,
  formula: "\\theta_g = \\theta_e - \\theta_{first}",
  source: "definition",
});

export const injectionEnd = cell("injectionEnd", {
  label: "Last fuel after top dead centre",
  kind: "crankAngle",
  symbol: "\\theta_e",
  from: { injectionCourse },
  compute: ({ injectionCourse }) => injectionCourse.last,
  formula: "\\theta_e = -\\theta_s + \\int_{main} d\\theta + \\theta_{af} + \\int_{after} d\\theta",
  source: "the injections along the crank",
  limits: [{ component: "injectors", side: "most", bound: latestEnd }],
});

const degrees = (angle: number) => `${((angle * 180) / Math.PI).toFixed(1)}°`;
