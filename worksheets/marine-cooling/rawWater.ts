import { heatCapacityRate, impellerPumpFlow } from "../../lib/cooling";
import { seaWater } from "../../lib/fluid";
import { cell } from "../../lib/graph";
import type { MassFlow, RotationalSpeed } from "../../lib/quantity";
import { ratedSpeed } from "../brief/cells";
import { rawWaterDriveRatio } from "../drive-speeds/ratios";
import { rawWaterDisplacement, rawWaterFilling, salinity, seaTemperature } from "./inputs";

export const rawWaterFlow = cell("rawWaterFlow", {
  label: "Raw-water flow",
  kind: "volumeFlow",
  hint: "coolant",
  symbol: "q_w",
  from: { rawWaterDisplacement, rawWaterFilling, ratedSpeed, rawWaterDriveRatio },
  compute: ({ rawWaterDisplacement, rawWaterFilling, ratedSpeed, rawWaterDriveRatio }) =>
    impellerPumpFlow({
      displacement: rawWaterDisplacement,
      speed: (ratedSpeed * rawWaterDriveRatio) as RotationalSpeed,
      volumetricEfficiency: rawWaterFilling,
    }),
  formula: "q_w = \\eta_w\\,V_w\\,N\\,i_w",
  source: "definition of volumetric efficiency",
});

export const seaCapacityRate = cell("seaCapacityRate", {
  label: "Heat that the sea water takes up for each degree",
  kind: "thermalConductance",
  symbol: "C_w",
  from: { rawWaterFlow, salinity, seaTemperature },
  compute: ({ rawWaterFlow, salinity, seaTemperature }) => {
    const sea = seaWater(salinity);
    const massFlow = (rawWaterFlow * sea.density(seaTemperature)) as MassFlow;
    return heatCapacityRate(massFlow, sea.specificHeat(seaTemperature));
  },
  formula: "C_w = \\rho(S, T_{sea})\\,q_w\\,c(S, T_{sea})",
  source: "sea-water properties of lib/fluid, with their sources",
});
