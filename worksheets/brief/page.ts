import { airFlow } from "../air-demand/cells";
import { boost } from "../boost/cells";
import { blowerDrivenTeeth } from "../drive-speeds/inputs";
import { drawn, heading, lines, prose, type Sheet } from "../sheet";
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

const figures = () => import("./figures");

export const briefPage: Sheet = {
  key: "brief",
  title: "The promise",
  answers: "What the engine is to give, where, and how large it is.",
  blocks: [
    prose`Somebody has been promised ${ratedPower} at ${ratedSpeed}. With ${blowerDrivenTeeth} teeth on the blower's pulley, the engine must swallow ${airFlow} of air at a boost of ${boost}.`,
    prose`Drag an underlined number and see what moves with it: these sheets are one calculation.`,
    ...lines(ratedPower, ratedSpeed, idleSpeed, maximumSpeed, heatCarrier),
    heading("The air outside"),
    prose`At an altitude of ${altitude} the barometer stands at ${ambientPressure} in the standard atmosphere. At ${ambientTemperature} and a relative humidity of ${relativeHumidity} the air's density is ${ambientDensity}. Fuel burns with a mass of air, but engine and blower swallow volumes: density turns the one into the other.`,
    ...lines(altitude, ambientTemperature, relativeHumidity, ambientPressure, ambientHumidityRatio, ambientDensity),
    drawn(figures, "altitude"),
    heading("The engine"),
    prose`From ${displacement} the promise asks for a brake mean effective pressure of ${meanEffectivePressure}. That pressure compares engines of any size and speed: it says how hard this one is worked. The pistons meet their limit at the highest speed, with or without load.`,
    ...lines(
      cylinders,
      bore,
      stroke,
      displacement,
      ratedTorque,
      meanEffectivePressure,
      meanPistonSpeed,
      pistonSpeedLimit,
    ),
  ],
};
