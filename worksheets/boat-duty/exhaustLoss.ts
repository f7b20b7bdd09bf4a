import { dryExhaustLoss, exhaustVapourFraction, wetExhaustLoss } from "../../lib/cooling";
import { airViscosity, burntGas, saturationVapourPressure, seaWater } from "../../lib/fluid";
import { cell } from "../../lib/graph";
import type { MassFlow, Ratio, VolumeFlow } from "../../lib/quantity";
import { exhaustOutletLoss, exhaustRatedFlow, exhaustRatedTemperature } from "../boost/inputs";
import { ambientPressure } from "../brief/cells";
import { exhaustHose, salinity, seaTemperature, wetExhaustLimit } from "../marine-cooling/inputs";
import { dryBore, dryLength, exhaustKind, exhaustLift, exhaustLossFrom, hoseBends, hoseLength } from "./inputs";

/** Exhaust of a diesel near its rating, for the gas constant alone: it moves by a thousandth. */
const typicalMix = { excessAirRatio: 2 as Ratio };
const typicalGas = burntGas(typicalMix);
const typicalVapour = exhaustVapourFraction(typicalMix);

/** Gas constant of water vapour [J/(kg·K)]. @source IAPWS R6-95 (from memory) */
const steamConstant = 461.52;

export const exhaustLossCounted = cell("exhaustLossCounted", {
  label: "Exhaust loss at the flow stated, as the turbines meet it",
  kind: "pressureDifference",
  hint: "duct",
  symbol: "\\Delta p_{e,r}",
  from: {
    exhaustLossFrom,
    exhaustOutletLoss,
    exhaustRatedFlow,
    exhaustRatedTemperature,
    exhaustKind,
    exhaustHose,
    hoseLength,
    hoseBends,
    exhaustLift,
    wetExhaustLimit,
    dryBore,
    dryLength,
    ambientPressure,
    salinity,
    seaTemperature,
  },
  compute: (at) => {
    if (at.exhaustLossFrom === "measured") return at.exhaustOutletLoss;
    if (at.exhaustKind === "dry") {
      const volumeFlow = at.exhaustRatedFlow / typicalGas.density(at.exhaustRatedTemperature, at.ambientPressure);
      return dryExhaustLoss({
        volumeFlow: volumeFlow as VolumeFlow,
        length: at.dryLength,
        bore: at.dryBore,
        temperature: at.exhaustRatedTemperature,
      });
    }
    // Gas as warm as the hose may be, and saturated: the most volume that is allowed.
    const temperature = at.wetExhaustLimit;
    const vapour = saturationVapourPressure(temperature);
    const drier = at.ambientPressure - vapour;
    if (!(drier > 0.1 * at.ambientPressure)) {
      throw new RangeError(
        `exhaustLossCounted: at the ${(temperature - 273.15).toFixed(0)} °C that the hose may have, water boils at this barometer; lower the wet exhaust temperature allowed`,
      );
    }
    const dryShare = 1 - typicalVapour;
    const dryGas = (at.exhaustRatedFlow * typicalGas.gasConstant * dryShare * temperature) / drier;
    const gasVolumeFlow = dryGas as VolumeFlow;
    const extra = (vapour * gasVolumeFlow) / (steamConstant * temperature) - vapourMass(at.exhaustRatedFlow);
    return wetExhaustLoss({
      gasVolumeFlow,
      gasFlow: (at.exhaustRatedFlow + extra) as MassFlow,
      dynamicViscosity: airViscosity(temperature),
      bore: at.exhaustHose,
      length: at.hoseLength,
      lossCoefficient: at.hoseBends,
      lift: at.exhaustLift,
      waterDensity: seaWater(at.salinity).density(at.seaTemperature),
    });
  },
  formula:
    "\\Delta p_{e,r} = \\left(f\\,\\frac{l_x}{d_x} + \\zeta_x\\right)\\frac{\\rho_x v_x^2}{2} + \\rho_w\\,g\\,z_{li}",
  source:
    "Darcy–Weisbach and hydrostatics (wet); 6.32 l q²/(d⁵ T), read in a public installation document for marine engines (dry)",
  assumptions: [
    "Taken as measured, it is the loss stated on the sheet of the boost, and the formula is not used. Taken from the exhaust laid out here, it is the formula's; a dry pipe lifts no water.",
    "Wet: gas of the temperature that the hose may have, saturated with vapour, at the barometer's pressure.",
    "The charge path takes it to grow with the square of the flow, the lifted water too: at part load it is a little larger than reckoned.",
  ],
});

const vapourMass = (flow: MassFlow) => (typicalVapour * flow * typicalGas.gasConstant) / steamConstant;
