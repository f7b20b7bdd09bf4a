import { heatCapacityRate, impellerPumpFlow } from "../../lib/cooling";
import { seaWater } from "../../lib/fluid";
import { cell } from "../../lib/graph";
import type { MassFlow, RotationalSpeed, Temperature } from "../../lib/quantity";
import { sinkRise } from "../boost/inputs";
import { heatCarrier, ratedSpeed } from "../brief/cells";
import { rawWaterDriveRatio } from "../drive-speeds/ratios";
import { rawWaterDisplacement, rawWaterFilling, salinity, seaTemperature } from "./inputs";

export const rawWaterInlet = cell("rawWaterInlet", {
  label: "Sea water reaching the first exchanger",
  kind: "temperature",
  symbol: "T_{w,0}",
  from: { seaTemperature, sinkRise, heatCarrier },
  compute: ({ seaTemperature, sinkRise, heatCarrier }) =>
    (heatCarrier === "seaWater" ? seaTemperature + sinkRise : seaTemperature) as Temperature,
  formula: "T_{w,0} = T_{sea} + \\Delta T_s",
  source: "definition",
  assumptions: [
    "With a cooling stream of air the rise is the air's, and the sea water arrives at the sea's temperature.",
  ],
});

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
  label: "Heat capacity rate of the sea water",
  kind: "thermalConductance",
  symbol: "C_w",
  from: { rawWaterFlow, salinity, seaTemperature },
  compute: ({ rawWaterFlow, salinity, seaTemperature }) => {
    const sea = seaWater(salinity);
    const massFlow = (rawWaterFlow * sea.density(seaTemperature)) as MassFlow;
    return heatCapacityRate(massFlow, sea.specificHeat(seaTemperature));
  },
  formula: "C_w = \\rho_w(S_w, T_{sea})\\,q_w\\,c_w(S_w, T_{sea})",
  source:
    "definition; density: Millero, Poisson, Deep-Sea Research 28A (1981) 625; specific heat: Jamieson et al., Desalination 7 (1969) (from memory)",
});
