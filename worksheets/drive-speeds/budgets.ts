import {
  alternatorCurrent,
  type DriveSpeeds,
  hydraulicFlow,
  hydraulicHeat,
  hydraulicShaftPower,
  meanCurrent,
} from "../../lib/drive";
import { cell, structure } from "../../lib/graph";
import type { ElectricCurrent, Fraction, Power, RotationalSpeed, VolumeFlow } from "../../lib/quantity";
import { alternatorCurve, electricalLoads, hydraulicLoads } from "./budgetTables";
import { beltRuns } from "./beltRuns";
import { electricalLoad } from "./accessories";
import { hydraulicDisplacement, hydraulicEfficiency, hydraulicFilling, hydraulicPressure } from "./inputs";

/** Current at one engine speed. */
export interface ElectricalPoint {
  readonly speed: keyof DriveSpeeds;
  readonly output: ElectricCurrent;
  readonly load: ElectricCurrent;
  /** what is left to charge the batteries; negative where they give */
  readonly balance: ElectricCurrent;
}

const speedNames = ["idle", "cruise", "rated", "maximum", "overspeed"] as const satisfies readonly (keyof DriveSpeeds)[];

export const idleElectricalLoad = cell("idleElectricalLoad", {
  label: "Electrical load at idle",
  kind: "electricCurrent",
  symbol: "I_0",
  from: { electricalLoads },
  compute: ({ electricalLoads }) =>
    meanCurrent(electricalLoads.map(({ current, idleShare }) => ({ current, share: idleShare }))),
  formula: "I_0 = \\sum_k I_k\\,x_{0,k}",
  source: "sum of loads",
  assumptions: ["x are the shares of the time; what is drawn at once may be more."],
});

export const electricalBudget = structure("electricalBudget", {
  label: "Electrical budget over engine speed",
  from: { beltRuns, alternatorCurve, electricalLoad, idleElectricalLoad },
  compute: ({ beltRuns, alternatorCurve, electricalLoad, idleElectricalLoad }): readonly ElectricalPoint[] => {
    const curve = alternatorCurve.map(({ speed, current }) => ({ speed, value: current }));
    const [first, last] = [curve[0]!, curve.at(-1)!];
    const alternators = beltRuns.flatMap(({ members }) => members.filter(({ role }) => role === "alternator"));
    return speedNames.map((speed) => {
      const output = alternators.reduce((sum, { at }) => {
        const shaft = Math.min(at[speed], last.speed) as RotationalSpeed;
        return sum + alternatorCurrent({ cutInSpeed: first.speed, currentCurve: curve }, shaft);
      }, 0);
      const load = speed === "idle" ? idleElectricalLoad : electricalLoad;
      return { speed, output: output as ElectricCurrent, load, balance: (output - load) as ElectricCurrent };
    });
  },
  formula: "\\Delta I = \\sum I_{max}(n_a) - I",
  source: "linear interpolation in the alternator's own curve",
  assumptions: ["Above the last row of its curve an alternator gives what it gave there; every alternator has the same curve."],
  checks: (points) =>
    points
      .filter(({ load, speed }) => load > 0 && speed !== "overspeed")
      .map(({ speed, output, load }) => ({
        component: "battery",
        label: `Alternator's output at ${speedWords[speed]}`,
        kind: "electricCurrent" as const,
        side: "least" as const,
        value: output,
        bound: load,
        source: "the loads that the table names",
      })),
});

export const speedWords: Readonly<Record<keyof DriveSpeeds, string>> = {
  idle: "idle",
  cruise: "cruise",
  rated: "the promised speed",
  maximum: "the highest engine speed",
  overspeed: "overspeed",
};

export const idleBatteryBalance = cell("idleBatteryBalance", {
  label: "Battery's balance at idle",
  kind: "electricCurrent",
  symbol: "\\Delta I_0",
  from: { electricalBudget },
  compute: ({ electricalBudget }) => electricalBudget[0]!.balance,
  formula: "\\Delta I_0 = \\sum I_{max}(n_{a,0}) - I_0",
  source: "sum of currents",
  assumptions: ["Above zero the batteries are charged while the engine idles, below it they are drawn down."],
});

/** Oil at one engine speed. */
export interface HydraulicPoint {
  readonly speed: keyof DriveSpeeds;
  readonly flow: VolumeFlow;
  /** mean flow that the loads use */
  readonly used: VolumeFlow;
  readonly shaftPower: Power;
  /** mean work that leaves with the loads */
  readonly useful: Power;
  readonly heat: Power;
}

export const hydraulicBudget = structure("hydraulicBudget", {
  label: "Hydraulic budget over engine speed",
  from: { beltRuns, hydraulicLoads, hydraulicDisplacement, hydraulicPressure, hydraulicEfficiency, hydraulicFilling },
  compute: (at): readonly HydraulicPoint[] => {
    const pumps = at.beltRuns.flatMap(({ members }) => members.filter(({ role }) => role === "hydraulicPump"));
    return speedNames.map((speed) => {
      const shares = at.hydraulicLoads.map((load) => ({
        flow: load.flow,
        pressure: load.pressure,
        share: (speed === "idle" ? load.idleShare : load.workShare) as Fraction,
      }));
      const used = shares.reduce((sum, { flow, share }) => sum + flow * share, 0);
      const useful = shares.reduce((sum, { flow, pressure, share }) => sum + flow * pressure * share, 0) as Power;
      const displacement = at.hydraulicDisplacement;
      const flow = pumps.reduce(
        (sum, pump) =>
          sum + hydraulicFlow({ displacement, speed: pump.at[speed], volumetricEfficiency: at.hydraulicFilling }),
        0,
      );
      const shaftPower = pumps.reduce(
        (sum, pump) =>
          sum +
          hydraulicShaftPower({
            displacement,
            speed: pump.at[speed],
            pressureRise: at.hydraulicPressure,
            mechanicalEfficiency: at.hydraulicEfficiency,
          }),
        0,
      ) as Power;
      return {
        speed,
        flow: flow as VolumeFlow,
        used: used as VolumeFlow,
        shaftPower,
        useful,
        heat: hydraulicHeat(shaftPower, useful),
      };
    });
  },
  formula: "\\dot Q_h = \\sum \\frac{V_h\\,n_h\\,p_h}{\\eta_h} - \\sum_k q_k\\,p_k\\,x_k",
  source: "ISO 4391 (from memory); first law",
  assumptions: [
    "The volumetric efficiency is that at idle, for want of another.",
    "All that the pump's shaft takes and the loads do not carry away warms the oil.",
  ],
  checks: (points) =>
    points
      .filter(({ used, speed }) => used > 0 && speed !== "overspeed")
      .map(({ speed, flow, used }) => ({
        component: "hydraulic pump",
        label: `Hydraulic flow at ${speedWords[speed]}`,
        kind: "volumeFlow" as const,
        hint: "coolant" as const,
        side: "least" as const,
        value: flow,
        bound: used,
        source: "the loads that the table names",
      })),
});

export const hydraulicHeatRate = cell("hydraulicHeatRate", {
  label: "Heat into the hydraulic oil at the promised speed",
  kind: "power",
  symbol: "\\dot Q_h",
  from: { hydraulicBudget },
  compute: ({ hydraulicBudget }) => hydraulicBudget.find(({ speed }) => speed === "rated")!.heat,
  formula: "\\dot Q_h = P_h - \\sum_k q_k\\,p_k\\,x_k",
  source: "first law",
});
