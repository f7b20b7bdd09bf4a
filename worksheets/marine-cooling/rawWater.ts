import { heatCapacityRate, type PumpOperatingPoint, pumpOnSystem } from "../../lib/cooling";
import { seaWater } from "../../lib/fluid";
import { cell, structure } from "../../lib/graph";
import type { MassFlow, RotationalSpeed, ThermalConductance, VolumeFlow } from "../../lib/quantity";
import { heatCarrier, idleSpeed, maximumSpeed, ratedSpeed } from "../brief/cells";
import { rawWaterDriveRatio } from "../drive-speeds/ratios";
import { coolantCapacityRate } from "./circuitState";
import {
  hydraulicsOf,
  type LineAndPump,
  type LineHydraulics,
  operatingPointAt,
  pressuresAlong,
  type RowFlow,
} from "./hydraulics";
import {
  branchFlow,
  chargeCooledBy,
  exchangerSeaFlow,
  glycolShare,
  injectionHeight,
  loopFlow,
  loopTemperature,
  rawWaterDisplacement,
  rawWaterFilling,
  rawWaterLine,
  rawWaterOpenFlow,
  rawWaterPumpHeight,
  rawWaterPumpKind,
  rawWaterShutOff,
  rawWaterStatedSpeed,
  salinity,
  seaTemperature,
  strainerBlocked,
  suctionLineLoss,
} from "./inputs";

const stated = {
  rawWaterLine,
  branchFlow,
  rawWaterPumpKind,
  rawWaterDisplacement,
  rawWaterFilling,
  rawWaterShutOff,
  rawWaterOpenFlow,
  rawWaterStatedSpeed,
  exchangerSeaFlow,
  suctionLineLoss,
  strainerBlocked,
  injectionHeight,
  salinity,
  seaTemperature,
};

type Stated = Omit<LineAndPump, "seaDensity"> & {
  readonly salinity: Parameters<typeof seaWater>[0];
  readonly seaTemperature: Parameters<ReturnType<typeof seaWater>["density"]>[0];
};

const withDensity = (at: Stated): LineAndPump => ({
  ...at,
  seaDensity: seaWater(at.salinity).density(at.seaTemperature),
});

const capacityRateOf = (flow: VolumeFlow, at: Stated): ThermalConductance => {
  const sea = seaWater(at.salinity);
  const massFlow = (flow * sea.density(at.seaTemperature)) as MassFlow;
  return heatCapacityRate(massFlow, sea.specificHeat(at.seaTemperature));
};

/**
 * Warming of the sea water between the two charge coolers, for the charge path's loop: 0 where air cools, which then
 * does not wait for a raw-water line that has no answer.
 */
export const chargeWaterWarming = structure("chargeWaterWarming", {
  label: "Warming of the charge coolers' stream between them, for each watt",
  from: {
    ...stated,
    heatCarrier,
    ratedSpeed,
    rawWaterDriveRatio,
    chargeCooledBy,
    loopFlow,
    loopTemperature,
    glycolShare,
  },
  compute: (at): number => {
    if (at.heatCarrier === "air") return 0;
    if (at.chargeCooledBy === "loop") return 1 / coolantCapacityRate(at.loopFlow, at.glycolShare, at.loopTemperature);
    const { pump, system } = hydraulicsOf(withDensity(at));
    const { volumeFlow } = pumpOnSystem(pump, (at.ratedSpeed * at.rawWaterDriveRatio) as RotationalSpeed, system);
    return 1 / capacityRateOf(volumeFlow, at);
  },
  formula: "\\frac{1}{C_w}",
  source: "energy balance",
  assumptions: [
    "Zero with air, which reaches both coolers as it is; with a loop it is the loop's own water that warms.",
  ],
});

export const rawWaterInlet = cell("rawWaterInlet", {
  label: "Sea water reaching the first exchanger",
  kind: "temperature",
  symbol: "T_{w,0}",
  from: { seaTemperature },
  compute: ({ seaTemperature }) => seaTemperature,
  formula: "T_{w,0} = T_{sea}",
  source: "definition",
  assumptions: ["What pump and strainer give the water is left out: a hundredth of a kelvin."],
});

/** Pump and line at the promised, idle and highest speed. */
export interface RawWaterState extends LineHydraulics {
  readonly stated: LineAndPump;
  readonly rated: PumpOperatingPoint;
  readonly idle: PumpOperatingPoint | { readonly refused: string };
  readonly highest: PumpOperatingPoint | { readonly refused: string };
  /** every row of the line at the promised speed */
  readonly rows: readonly RowFlow[];
}

export const rawWaterState = structure("rawWaterState", {
  label: "Raw-water pump on its line",
  from: { ...stated, ratedSpeed, idleSpeed, maximumSpeed, rawWaterDriveRatio, rawWaterPumpHeight },
  compute: (at): RawWaterState => {
    const line = withDensity(at);
    const hydraulics = hydraulicsOf(line);
    const speedAt = (speed: RotationalSpeed) => (speed * at.rawWaterDriveRatio) as RotationalSpeed;
    const rated = pumpOnSystem(hydraulics.pump, speedAt(at.ratedSpeed), hydraulics.system);
    return {
      ...hydraulics,
      stated: line,
      rated,
      idle: operatingPointAt(hydraulics, speedAt(at.idleSpeed)),
      highest: operatingPointAt(hydraulics, speedAt(at.maximumSpeed)),
      rows: pressuresAlong(line, rated, at.rawWaterPumpHeight),
    };
  },
  formula:
    "\\Delta p_{w,0}\\,\\frac{n}{n_{w,r}}\\left(1 - \\frac{q_w}{\\eta_w V_w n}\\right) = \\rho_w g z_x + \\sum \\Delta p\\left(\\frac{q_w}{q_{w,r}}\\right)^2",
  source: "slip in proportion to pressure (displacement pump), affinity laws (centrifugal); Darcy–Weisbach",
  assumptions: [
    "A centrifugal pump gives Δp_w,0 [(n/n_w,r)² − (q/q_w,open)²] instead.",
    "Branches beside each other lose the same pressure, and share the flow accordingly: s_i is in proportion to o_i/√Δp_i, with the valve open by o_i. Where shares are set, valves take what the branches lose less than the one with the largest loss.",
    "A blocked strainer's loss is divided by (1 − b_s)².",
  ],
});

export const rawWaterFlow = cell("rawWaterFlow", {
  label: "Raw-water flow",
  kind: "volumeFlow",
  hint: "coolant",
  symbol: "q_w",
  from: { rawWaterState },
  compute: ({ rawWaterState }) => rawWaterState.rated.volumeFlow,
  formula: "q_w = q_{w,r}\\sqrt{\\frac{\\Delta p_w - \\rho_w\\,g\\,z_x}{\\Delta p_{line}}}",
  source: "operating point of pump and line",
});

export const rawWaterRise = cell("rawWaterRise", {
  label: "Pressure rise of the raw-water pump",
  kind: "pressureDifference",
  hint: "boost",
  symbol: "\\Delta p_w",
  from: { rawWaterState },
  compute: ({ rawWaterState }) => rawWaterState.rated.pressureRise,
  formula: "\\Delta p_w = \\rho_w\\,g\\,z_x + \\Delta p_{line}\\left(\\frac{q_w}{q_{w,r}}\\right)^2",
  source: "operating point of pump and line",
});

export const rawWaterIdleFlow = cell("rawWaterIdleFlow", {
  label: "Raw-water flow at idle",
  kind: "volumeFlow",
  hint: "coolant",
  symbol: "q_{w,idle}",
  from: { rawWaterState },
  compute: ({ rawWaterState }) => {
    if ("refused" in rawWaterState.idle) throw new RangeError(rawWaterState.idle.refused);
    return rawWaterState.idle.volumeFlow;
  },
  formula: "q_{w,idle} = q_w(N_0)",
  source: "operating point of pump and line",
});

export const seaCapacityRate = cell("seaCapacityRate", {
  label: "Heat capacity rate of the sea water",
  kind: "thermalConductance",
  symbol: "C_w",
  from: { rawWaterFlow, salinity, seaTemperature },
  compute: ({ rawWaterFlow, ...at }) => {
    const sea = seaWater(at.salinity);
    const massFlow = (rawWaterFlow * sea.density(at.seaTemperature)) as MassFlow;
    return heatCapacityRate(massFlow, sea.specificHeat(at.seaTemperature));
  },
  formula: "C_w = \\rho_w(S_w, T_{sea})\\,q_w\\,c_w(S_w, T_{sea})",
  source:
    "definition; density: Millero, Poisson, Deep-Sea Research 28A (1981) 625; specific heat: Jamieson et al., Desalination 7 (1969) (from memory)",
});
