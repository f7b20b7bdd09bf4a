import { type ChargePath, type ChargeStation, chargePathAtIdle } from "../../lib/charge";
import { type Gas, heatOfVaporization } from "../../lib/fluid";
import type { Ratio, Temperature } from "../../lib/quantity";
import { idleAirFlow } from "../air-demand/cells";
import { ambientPressure, ambientTemperature, heatCarrier, idleSpeed } from "../brief/cells";
import { type Amount, type Inner, inner, unbound, type WrittenOut, writtenOut } from "../inner";
import { chargeCooledBy, loopTemperature, seaTemperature, wallHeatFrom } from "../marine-cooling/inputs";
import {
  aftercoolerHeat,
  blowerFilling,
  blowerInletPressure,
  blowerInletTemperature,
  blowerPressureRatio,
  blowerShaftPower,
  blowerShare,
  chargePath,
  compressorCorrectedFlow,
  compressorOutletTemperature,
  compressorPower,
  compressorPressureRatio,
  condensate,
  expansionRatio,
  intercoolerHeat,
  manifoldPressure,
  turbineArea,
  turbineInletPressure,
  turbochargerShare,
} from "./cells";
import { charge, demand, demandBuild, wallHeatInUse } from "./demand";
import { sinkRise, wallHeatShare } from "./inputs";
import { chargeSinkTemperature } from "./statedBuild";

const at = (path: ChargePath, key: ChargeStation["key"]): ChargeStation => path.stations.find((each) => each.key === key)!;

/** Density between two stations: at the first one's pressure, and the mean of their temperatures. */
const between = (from: ChargeStation, to: ChargeStation): number => (from.density * from.temperature) / (0.5 * (from.temperature + to.temperature));

const enthalpy = (station: ChargeStation["key"]) => (values: { readonly charge: Gas; readonly chargePath: ChargePath }) =>
  values.charge.enthalpy(at(values.chargePath, station).temperature);

const path = { chargePath };
const gasAlong = { charge, chargePath };

/** What air without losses would reach behind the compressors. */
function idealOutlet({ charge: gas, chargePath: along }: { readonly charge: Gas; readonly chargePath: ChargePath }): Temperature {
  const inlet = at(along, "filterOutlet");
  return gas.isentropicTemperature(inlet.temperature, along.turbochargers.pressureRatio as number as Ratio);
}

export const boostInner: readonly Inner[] = [
  inner([compressorPressureRatio, compressorCorrectedFlow], "p_1", "pressure behind the filter", "pressure", path, ({ chargePath }) => at(chargePath, "filterOutlet").pressure, "boost"),
  inner([compressorPressureRatio], "p_2", "pressure behind the turbochargers", "pressure", path, ({ chargePath }) => at(chargePath, "compressorOutlet").pressure, "boost"),
  inner([compressorCorrectedFlow, compressorOutletTemperature], "T_1", "temperature behind the filter", "temperature", path, ({ chargePath }) => at(chargePath, "filterOutlet").temperature),
  inner([compressorOutletTemperature], "T_{2s}", "temperature behind the turbochargers without losses", "temperature", gasAlong, idealOutlet),
  inner([compressorPower], "h_1", "enthalpy of the air before the compressors, from 25 °C", "specificEnergy", gasAlong, enthalpy("filterOutlet")),
  inner([compressorPower, intercoolerHeat], "h_2", "enthalpy of the air behind the compressors, from 25 °C", "specificEnergy", gasAlong, enthalpy("compressorOutlet")),
  inner([intercoolerHeat], "h_3", "enthalpy of the air before the blower, from 25 °C", "specificEnergy", gasAlong, enthalpy("blowerInlet")),
  inner([aftercoolerHeat], "h_4", "enthalpy of the air behind the blower, from 25 °C", "specificEnergy", gasAlong, enthalpy("blowerOutlet")),
  inner([aftercoolerHeat], "h_5", "enthalpy of the air in the manifold, from 25 °C", "specificEnergy", gasAlong, enthalpy("manifold")),
  inner([intercoolerHeat, condensate], "\\dot m_{k,1}", "water condensed in the intercooler", "massFlow", path, ({ chargePath }) => chargePath.coolerBeforeBlower.condensateFlow, "small"),
  inner([aftercoolerHeat, condensate], "\\dot m_{k,2}", "water condensed in the aftercooler", "massFlow", path, ({ chargePath }) => chargePath.coolerAfterBlower.condensateFlow, "small"),
  inner([intercoolerHeat], "\\Delta h_v", "heat of condensation there", "specificEnergy", path, ({ chargePath }) => heatOfVaporization(at(chargePath, "blowerInlet").temperature)),
  inner([aftercoolerHeat], "\\Delta h_v", "heat of condensation there", "specificEnergy", path, ({ chargePath }) => heatOfVaporization(at(chargePath, "manifold").temperature)),
  inner([blowerInletPressure, blowerFilling], "R", "gas constant of the charge", "specificHeat", { charge }, (values) => values.charge.gasConstant),
  inner([blowerFilling], "\\dot m_l", "leak through the blower's clearances", "massFlow", path, ({ chargePath: { airFlow, blower } }) => airFlow / blower.volumetricEfficiency - airFlow),
  inner([blowerShaftPower], "\\gamma", "ratio of specific heats of the charge there", "ratio", gasAlong, (values) => values.charge.ratioOfSpecificHeats(at(values.chargePath, "blowerInlet").temperature)),
  inner([blowerPressureRatio, blowerShaftPower, manifoldPressure], "p_4", "pressure behind the blower", "pressure", path, ({ chargePath }) => at(chargePath, "blowerOutlet").pressure, "boost"),
  inner([manifoldPressure], "\\rho_{45}", "density at the aftercooler's inlet pressure and mean temperature", "density", path, ({ chargePath }) => between(at(chargePath, "blowerOutlet"), at(chargePath, "manifold"))),
  inner([turbochargerShare, blowerShare], "p_5", "pressure in the manifold", "pressure", path, ({ chargePath }) => chargePath.manifoldPressure, "boost"),
  inner([turbochargerShare, blowerShare], "p_0", "pressure of the open air", "pressure", { ambientPressure }, (values) => values.ambientPressure, "boost"),
  unbound([blowerInletTemperature], "C_w", "heat that the stream takes up for each kelvin; without limit where air cools"),
  inner([turbineInletPressure, expansionRatio], "p_7", "pressure behind the turbines", "pressure", { demand }, (values) => values.demand.exhaust.turbineOutletPressure, "boost"),
  inner([wallHeatInUse], "\\lambda_w", "the share stated, unless a measured heat is in use", "fraction", { wallHeatFrom, wallHeatShare }, (values) => (values.wallHeatFrom === "stated" ? values.wallHeatShare : Number.NaN)),
  unbound([turbineArea], "\\psi", "flow function of a nozzle"),
  inner([idleAirFlow], "\\eta_{vb}", "volumetric efficiency of the blower at idle", "fraction", { demandBuild, idleSpeed }, (values) => chargePathAtIdle(values.demandBuild, values.idleSpeed).blower.volumetricEfficiency),
  inner([idleAirFlow], "\\rho_3", "density of the air before the blower at idle", "density", { demandBuild, idleSpeed }, (values) => at(chargePathAtIdle(values.demandBuild, values.idleSpeed), "blowerInlet").density),
];

export const boostWrittenOut: readonly WrittenOut[] = [
  writtenOut(chargeSinkTemperature, { heatCarrier, ambientTemperature, sinkRise, seaTemperature, chargeCooledBy, loopTemperature }, (values) => {
    const kelvin = (value: number): Amount => ({ kind: "temperature", value });
    const rise: Amount = { kind: "temperatureDifference", value: values.sinkRise };
    if (values.heatCarrier === "air") return [[kelvin(values.ambientTemperature)], [rise]];
    return values.chargeCooledBy === "loop" ? [[kelvin(values.loopTemperature)]] : [[kelvin(values.seaTemperature)], [rise]];
  }),
];
