import type { CircuitStation } from "../../lib/cooling";
import { saturationVapourPressure, seaWater } from "../../lib/fluid";
import type { Fraction, Temperature } from "../../lib/quantity";
import { ambientHumidityRatio } from "../brief/cells";
import { fuelReturnFlow } from "../fuel-delivery/cells";
import { type Amount, constant, type Inner, inner, unbound, type WrittenOut, writtenOut } from "../inner";
import { balanceGap, exhaustLatent, ownEngine, roomHeat } from "./balance";
import { expansionVolume, rawWaterNeeded } from "./cells";
import { chargeWaterRise, fuelReaches, gearOilReaches, jacketReaches, jacketReturns, marineCircuit, networkResidual, oilReaches, rawWaterDischarge, seaHeat } from "./circuit";
import { chargeDewPoint, coldChargeTemperature, coldCircuit, coldCondensate } from "./cold";
import { jacketHeat, oilHeat } from "./heats";
import { type ElementKey, salinity, seaTemperature } from "./inputs";
import type { MarineNetwork } from "./networkAt";
import type { SolvedEngine } from "./solvedEngine";
import { rawWaterFlow, rawWaterInlet, rawWaterRise, rawWaterState, seaCapacityRate } from "./rawWater";
import { strainerLossNow, suctionHeadGiven } from "./suction";
import { cycleFuelHeat, wallHeatByCorrelation, wallHeatParts } from "./wallHeat";

type Sea = { readonly salinity: Fraction; readonly seaTemperature: Temperature };
const sea = { salinity, seaTemperature };
const density = (at: Sea) => seaWater(at.salinity).density(at.seaTemperature);

/** A number of an exchanger of the line; none without it. */
const of = (key: ElementKey, value: (station: CircuitStation) => number) => ({ marineCircuit: { nodes } }: { readonly marineCircuit: MarineNetwork }) => {
  const station = nodes.find((node) => node.key === key)?.station;
  return station ? value(station) : Number.NaN;
};
const line = { marineCircuit };
const reached = ({ seaInlet }: CircuitStation) => seaInlet;
const effectiveness = (station: CircuitStation) => station.effectiveness;
/** The smaller of two heat capacity rates, which effectiveness is a share of. */
const smaller = ({ heat, effectiveness: share, hotInlet, seaInlet }: CircuitStation) => heat / (share * (hotInlet - seaInlet));

const exchanger = (cell: Parameters<typeof inner>[0][number], letter: string, key: ElementKey, name: string): readonly Inner[] => [
  inner([cell], `T_{w,${letter}}`, `sea water reaching the ${name}`, "temperature", line, of(key, reached)),
  inner([cell], `\\epsilon_${letter}`, `effectiveness of the ${name}`, "fraction", line, of(key, effectiveness)),
  inner([cell], `C_{min,${letter}}`, `smaller heat capacity rate in the ${name}`, "thermalConductance", line, of(key, smaller)),
];

/** Power of all compressors together. */
function compressorPower({ point }: SolvedEngine): number {
  return "banks" in point ? point.banks.reduce((sum, { compressorPower: power }) => sum + power, 0) : point.path.turbochargers.power;
}

/** The last charge cooler on the chosen parts' path, as it works in the coldest sea. */
function coldAftercooler({ coldCircuit: { engine: { point } } }: { readonly coldCircuit: { readonly engine: SolvedEngine } }) {
  return "coolers" in point ? point.coolers.at(-1) : undefined;
}

const watts = (value: number): Amount => ({ kind: "power", hint: "heat", value });

export const marineInner: readonly Inner[] = [
  inner([rawWaterFlow, rawWaterRise, rawWaterNeeded, suctionHeadGiven], "\\rho_w", "density of the sea water", "density", sea, density),
  inner([rawWaterNeeded], "c_w", "specific heat of the sea water", "specificHeat", sea, (at) => seaWater(at.salinity).specificHeat(at.seaTemperature)),
  constant([rawWaterFlow, rawWaterRise, suctionHeadGiven], "g", "standard gravity", "acceleration", 9.80665),
  inner([rawWaterFlow, rawWaterRise], "\\Delta p_{line}", "loss of the whole line at the reference flow", "pressureDifference", { rawWaterState }, (at) => at.rawWaterState.system.lossAtReference, "boost"),
  inner([strainerLossNow], "\\Delta p_{str,r}", "loss of the clean strainer at the reference flow", "pressureDifference", { rawWaterState }, ({ rawWaterState: { strainerLoss, stated } }) => strainerLoss * (1 - stated.strainerBlocked) ** 2, "boost"),
  inner([suctionHeadGiven], "\\Delta p_{su}", "loss of the suction line at this flow", "pressureDifference", { rawWaterState }, ({ rawWaterState: { suctionLoss, rated, system } }) => suctionLoss * (rated.volumeFlow / system.referenceFlow) ** 2, "boost"),
  inner([suctionHeadGiven], "p_v", "vapour pressure of the sea water", "pressure", sea, (at) => seaWater(at.salinity).vapourPressureRatio * saturationVapourPressure(at.seaTemperature), "boost"),
  unbound([balanceGap], "P", "a power of the balance"),
  unbound([balanceGap], "Q", "a heat of the balance"),
  inner([balanceGap, roomHeat, cycleFuelHeat, wallHeatByCorrelation, jacketHeat, oilHeat], "\\dot m_f", "fuel flow", "massFlow", { ownEngine }, (at) => at.ownEngine.fuelFlow, "fuel"),
  inner([coldCondensate], "\\dot m_{d,c}", "flow of dry air in the coldest sea", "massFlow", { coldCircuit, ambientHumidityRatio }, (at) => at.coldCircuit.engine.airFlow / (1 + at.ambientHumidityRatio)),
  inner([coldCondensate], "T_{5,c}", "charge in the manifold in the coldest sea", "temperature", { coldCircuit }, (at) => at.coldCircuit.engine.manifoldTemperature),
  inner([chargeDewPoint, coldCondensate], "p_{5,c}", "pressure in the manifold in the coldest sea", "pressure", { coldCircuit }, (at) => at.coldCircuit.engine.manifoldPressure, "boost"),
  unbound([chargeDewPoint], "T_s", "temperature at which vapour of a pressure is saturated"),
  inner([expansionVolume], "\\bar T_j", "mean temperature of the jacket water", "temperature", { jacketReaches, jacketReturns }, (at) => (at.jacketReaches + at.jacketReturns) / 2),
  unbound([exhaustLatent], "\\dot m_v", "water vapour in the exhaust"),
  unbound([exhaustLatent], "\\Delta h_v", "heat of evaporation at 25 °C"),
  inner([roomHeat], "P_{bl}", "power of the blower at its shaft", "power", { ownEngine }, (at) => at.ownEngine.point.powers.blower),
  inner([wallHeatByCorrelation], "Q_{closed}", "heat into the walls while the valves are closed", "power", { wallHeatParts }, (at) => at.wallHeatParts.valvesClosed, "heat"),
  inner([wallHeatByCorrelation], "Q_{open}", "heat into the walls while a valve is open", "power", { wallHeatParts }, (at) => at.wallHeatParts.valvesOpen, "heat"),
  inner([wallHeatByCorrelation], "Q_{ports}", "heat into the exhaust ports", "power", { wallHeatParts }, (at) => at.wallHeatParts.ports, "heat"),
  inner([jacketHeat, oilHeat], "P_f", "power lost to friction", "power", { ownEngine }, (at) => at.ownEngine.point.powers.friction),
  inner([oilHeat], "P_c", "power of all compressors together", "power", { ownEngine }, (at) => compressorPower(at.ownEngine)),
  ...exchanger(fuelReaches, "f", "fuelCooler", "fuel cooler"),
  ...exchanger(gearOilReaches, "g", "gearCooler", "gear oil cooler"),
  ...exchanger(oilReaches, "o", "oilCooler", "oil cooler"),
  inner([jacketReaches], "T_{w,j}", "sea water reaching the jacket exchanger", "temperature", line, of("jacketExchanger", reached)),
  unbound([jacketReaches], "\\epsilon_j", "effectiveness of the jacket exchanger"),
  unbound([jacketReaches], "\\theta", "opening of the thermostat"),
  inner([fuelReaches], "Q_f", "heat that the returning fuel brings", "power", line, of("fuelCooler", ({ heat }) => heat), "heat"),
  inner([fuelReaches], "c_f", "specific heat of the fuel", "specificHeat", { marineCircuit, fuelReturnFlow }, (at) => of("fuelCooler", ({ heat, hotInlet, hotOutlet }) => heat / ((hotInlet - hotOutlet) * at.fuelReturnFlow))(at)),
  inner([jacketReturns], "C_j", "heat capacity rate of the jacket water", "thermalConductance", line, ({ marineCircuit: { jacket } }) => (jacket ? jacket.heat / (jacket.hot - jacket.mixed) : Number.NaN)),
  unbound([networkResidual], "s_k", "an element's share of the flow"),
  unbound([networkResidual], "\\Delta T_{w,k}", "what the water warms in it"),
  unbound([networkResidual], "Q_k", "its heat"),
  inner([networkResidual, rawWaterDischarge], "C_w", "heat capacity rate of the sea water", "thermalConductance", { seaCapacityRate }, (at) => at.seaCapacityRate),
  inner([chargeWaterRise], "T_{w,c}", "sea water reaching the first charge cooler", "temperature", line, ({ marineCircuit: { nodes } }) =>
    nodes.find(({ key, station }) => (key === "aftercooler" || key === "intercooler") && station)?.seaInlet ?? Number.NaN,
  ),
  inner([chargeWaterRise], "T_{sea}", "temperature of the sea", "temperature", { rawWaterInlet }, (at) => at.rawWaterInlet),
  inner([coldChargeTemperature], "T_{s,c}", "stream reaching the aftercooler in the coldest sea", "temperature", { coldCircuit }, (at) => coldAftercooler(at)?.sinkTemperature ?? Number.NaN),
  inner([coldChargeTemperature], "\\epsilon_2", "effectiveness of the aftercooler there", "fraction", { coldCircuit }, (at) => coldAftercooler(at)?.effectiveness ?? Number.NaN),
  inner([coldChargeTemperature], "T_{4,c}", "temperature behind the blower in the cold sea", "temperature", { coldCircuit }, (at) => at.coldCircuit.engine.aftercooler.hotInlet),
];

export const marineWrittenOut: readonly WrittenOut[] = [
  writtenOut(seaHeat, line, ({ marineCircuit: { nodes } }) =>
    nodes.flatMap(({ station, circuit }) => (station ? [[watts(station.heat)]] : circuit ? [[watts(circuit.heat)]] : [])),
  ),
];
