import { airViscosity, dryAir, frictionFactor, reynoldsNumber, velocityInPipe } from "../../lib/fluid";
import type { MassFlow, Ratio, Temperature } from "../../lib/quantity";
import { ambientDensity, ambientPressure, ambientTemperature } from "../brief/cells";
import { type Inner, inner } from "../inner";
import { intakeLoss, meterDepression, meterMach, meterVelocity } from "./cells";
import { ductBore, filterRatedFlow, meterCount } from "./inputs";
import { ductRatedLoss, ductRoughness, intakeRestriction } from "./intake";

const tube = { ambientPressure, ambientTemperature, meterDepression, meterVelocity };

/** Static temperature in a meter's tube: the air has given some of its warmth for its speed. */
const tubeTemperature = ({ ambientTemperature: still, meterVelocity: velocity }: { readonly ambientTemperature: Temperature; readonly meterVelocity: number }): Temperature =>
  (still - velocity ** 2 / (2 * dryAir.specificHeat(still))) as Temperature;

export const airInner: readonly Inner[] = [
  inner([ductRatedLoss], "f", "friction factor of the duct", "ratio", { filterRatedFlow, meterCount, ambientDensity, ambientTemperature, ductBore }, (at) => {
    const flow = { massFlow: (at.filterRatedFlow / at.meterCount) as MassFlow, density: at.ambientDensity, diameter: at.ductBore };
    const reynolds = reynoldsNumber({ ...flow, velocity: velocityInPipe(flow), dynamicViscosity: airViscosity(at.ambientTemperature) });
    return frictionFactor({ reynoldsNumber: reynolds, relativeRoughness: (ductRoughness / at.ductBore) as Ratio });
  }),
  inner([intakeLoss], "\\Delta p_r", "loss of meters, ducts and filter at the filter's rated flow", "pressureDifference", { intakeRestriction }, (at) => at.intakeRestriction.pressureLoss, "duct"),
  inner([meterDepression], "p_a", "static pressure in a meter's tube", "pressure", tube, (at) => at.ambientPressure - at.meterDepression, "duct"),
  inner([meterMach], "T_a", "temperature in a meter's tube", "temperature", tube, tubeTemperature),
  inner([meterMach], "\\gamma", "ratio of specific heats of the air", "ratio", tube, (at) => dryAir.ratioOfSpecificHeats(at.ambientTemperature)),
  inner([meterMach], "R", "gas constant of the air", "specificHeat", {}, () => dryAir.gasConstant),
  inner([meterVelocity], "\\rho_a", "density in a meter's tube", "density", tube, (at) => (at.ambientPressure - at.meterDepression) / (dryAir.gasConstant * tubeTemperature(at))),
];
