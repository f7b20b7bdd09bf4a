import { fuelLineFlow, liftPumpRise, supplyReach, supplyStations } from "../../../lib/fuel";
import { cell, structure } from "../../../lib/graph";
import type { Length, MassFlow, Pressure, PressureDifference, Ratio, VolumeFlow } from "../../../lib/quantity";
import { ambientPressure } from "../../brief/cells";
import {
  filterLoss,
  inletPressureNeeded,
  liftShutOff,
  suctionFittings,
  suctionHeight,
  suctionLength,
  supplyBore,
  supplyCapacity,
  supplyCoolerLoss,
  supplyFittings,
  supplyLength,
  supplyPressure,
} from "../inputs";
import { fuelState } from "./fuelAtPump";
import { supplyMassFlow, supplyVolumeFlow } from "./supplyFlow";

export const supplyLine = structure("supplyLine", {
  label: "The supply line, part by part",
  from: {
    supplyMassFlow,
    supplyVolumeFlow,
    fuelState,
    ambientPressure,
    supplyBore,
    suctionLength,
    suctionFittings,
    suctionHeight,
    liftShutOff,
    supplyPressure,
    supplyCapacity,
    filterLoss,
    supplyLength,
    supplyFittings,
    supplyCoolerLoss,
    inletPressureNeeded,
  },
  compute: (at) => {
    const { density, kinematicViscosity } = at.fuelState;
    const line = (length: Length, lossCoefficient: Ratio) => (flow: VolumeFlow) =>
      fuelLineFlow({
        massFlow: (flow * density) as MassFlow,
        density,
        kinematicViscosity,
        diameter: at.supplyBore,
        length,
        lossCoefficient,
      });
    const suction = line(at.suctionLength, at.suctionFittings);
    const delivery = line(at.supplyLength, at.supplyFittings);
    const lift = {
      pressureWithoutFlow: at.liftShutOff as number as PressureDifference,
      ratedRise: at.supplyPressure as number as PressureDifference,
      ratedFlow: at.supplyCapacity,
    };
    const share = (flow: VolumeFlow) => flow / at.supplyVolumeFlow;
    const parts = [
      { name: "Height", change: () => -density * 9.80665 * at.suctionHeight },
      { name: "Suction line", change: (flow: VolumeFlow) => -suction(flow).loss },
      { name: "Lift pump", change: (flow: VolumeFlow) => liftPumpRise(lift, flow) },
      { name: "Filter", change: (flow: VolumeFlow) => -at.filterLoss * share(flow) },
      { name: "Line and fittings", change: (flow: VolumeFlow) => -delivery(flow).loss },
      { name: "Cooler", change: (flow: VolumeFlow) => -at.supplyCoolerLoss * share(flow) ** 2 },
    ];
    return {
      line: delivery(at.supplyVolumeFlow),
      stations: supplyStations(at.ambientPressure, parts, at.supplyVolumeFlow),
      reach: supplyReach({
        tankPressure: at.ambientPressure,
        parts,
        leastPressure: (at.ambientPressure + at.inletPressureNeeded) as Pressure,
        highestFlow: (4 * at.supplyCapacity) as VolumeFlow,
      }),
    };
  },
  formula:
    "p_{k+1} = p_k + \\Delta p_{lift}(q) - \\left(f\\,\\frac{l}{d_s} + \\zeta\\right)\\frac{\\rho_f v_s^2}{2} - \\ldots",
  source: "Darcy and Weisbach; friction factor f by Reynolds number, 64/Re or after Colebrook (1939); sum of losses",
  assumptions: [
    "Smooth lines at the temperature T_f throughout; cold fuel loses more.",
    "The filter's loss grows with the flow, the cooler's with its square.",
    "The tank is vented: barometer on the fuel.",
  ],
});

export const supplyVelocity = cell("supplyVelocity", {
  label: "Velocity in the supply line",
  kind: "velocity",
  symbol: "v_s",
  from: { supplyLine },
  compute: ({ supplyLine }) => supplyLine.line.velocity,
  formula: "v_s = \\frac{4\\,q_s}{\\pi\\,d_s^2}",
  source: "definition",
  validity: [
    {
      of: "result",
      span: [0, 2.5],
      note: "Above about 2.5 m/s a supply line is usually thought too small: common practice, no source.",
    },
  ],
});

export const supplyReynolds = cell("supplyReynolds", {
  label: "Reynolds number in the supply line",
  kind: "ratio",
  symbol: "Re",
  from: { supplyLine },
  compute: ({ supplyLine }) => supplyLine.line.reynoldsNumber,
  formula: "Re = \\frac{v_s\\,d_s}{\\nu_f}",
  source: "definition",
  assumptions: ["Laminar below 2300; up to 4000 the flow may be either, and the loss is taken in between."],
});

export const supplyLoss = cell("supplyLoss", {
  label: "Pressure lost in the line behind the lift pump",
  kind: "pressureDifference",
  hint: "boost",
  symbol: "\\Delta p_s",
  from: { supplyLine },
  compute: ({ supplyLine }) => supplyLine.line.loss,
  formula: "\\Delta p_s = \\left(f\\,\\frac{l_s}{d_s} + \\zeta\\right)\\frac{\\rho_f v_s^2}{2}",
  source: "Darcy and Weisbach; friction factor f by Reynolds number, 64/Re or after Colebrook (1939)",
});
