import { airFlow } from "../air-demand/cells";
import { boost } from "../boost/cells";
import { blowerDrivenTeeth } from "../drive-speeds/inputs";
import { heading, lines, prose, type Sheet } from "../sheet";
import {
  altitude,
  ambientDensity,
  ambientHumidityRatio,
  ambientPressure,
  ambientTemperature,
  bore,
  cylinders,
  displacement,
  heatCarrier,
  idleSpeed,
  maximumSpeed,
  meanEffectivePressure,
  meanPistonSpeed,
  pistonSpeedLimit,
  ratedPower,
  ratedSpeed,
  ratedTorque,
  relativeHumidity,
  stroke,
} from "./cells";

export const briefPage: Sheet = {
  key: "brief",
  title: "The promise",
  answers: "What the engine is to give, where, and how large it is.",
  blocks: [
    prose`Somebody has been promised ${ratedPower} at ${ratedSpeed}. Turn the blower with ${blowerDrivenTeeth} teeth on its pulley and the engine must swallow ${airFlow} of air at ${boost}. Drag an underlined number and watch what follows it; everything on these sheets is one calculation.`,
    ...lines(ratedPower, ratedSpeed, idleSpeed, maximumSpeed, heatCarrier),
    heading("The air outside"),
    prose`At ${altitude} the standard atmosphere leaves ${ambientPressure}. With the air at ${ambientTemperature} and ${relativeHumidity} humid, a cubic metre weighs ${ambientDensity}: every stage that follows starts from there.`,
    ...lines(altitude, ambientTemperature, relativeHumidity, ambientPressure, ambientHumidityRatio, ambientDensity),
    heading("The engine"),
    ...lines(cylinders, bore, stroke, displacement, ratedTorque, meanEffectivePressure, meanPistonSpeed, pistonSpeedLimit),
  ],
};
