import { ambientHumidityRatio, ambientPressure, ambientTemperature } from "../../brief/cells";
import {
  coreAirRise,
  coreFace,
  coreLoss,
  fanOpenFlow,
  fanRatio,
  fanShutOff,
  fanStatedSpeed,
  radiatorAirStated,
  radiatorConductance,
  ramRecovery,
} from "../inputs";

/** Core, fan and the air outside, as the inputs state them. */
export const radiatorFrom = {
  radiatorConductance,
  radiatorAirStated,
  coreLoss,
  coreFace,
  fanShutOff,
  fanOpenFlow,
  fanStatedSpeed,
  fanRatio,
  ramRecovery,
  coreAirRise,
  ambientTemperature,
  ambientPressure,
  ambientHumidityRatio,
};
