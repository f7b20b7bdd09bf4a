import { cell, structure } from "../../lib/graph";
import type { Power, RotationalSpeed } from "../../lib/quantity";
import { idleSpeed, maximumSpeed, ratedSpeed } from "../brief/cells";
import { Later } from "../later";
import { matchBuild } from "../matching/match";
import { speedRun } from "../matching/runs";
import { balanceSetup } from "./balance";
import { flowsAlong, flowsLoad, flowsSpeed } from "./inputs/flows";
import { curvePointAt, propellerCurve } from "./curve";
import { type BalancePoint, fullLoadPointAt, pointBelow } from "./fullLoad";
import { cylinderSetup, wallHeatCalibration } from "./wallHeat";

export const flowsEngineSpeed = cell("flowsEngineSpeed", {
  label: "Engine speed for which the heat flows are drawn",
  kind: "rotationalSpeed",
  symbol: "N_Q",
  from: { ratedSpeed, flowsSpeed },
  compute: ({ ratedSpeed, flowsSpeed }) => (ratedSpeed * flowsSpeed) as RotationalSpeed,
  formula: "N_Q = n_Q\\,N",
  source: "definition",
});

const curveFormula =
  "P = x_Q\\,P_b\\left(\\frac{n}{N}\\right)^{x} \\text{ or } x_Q\\,P_{at}(n), \\qquad \\dot m_f\\,H_u = \\eta_g P + P_x + (P_{fp} - Q_f) + \\sum Q";
const curveSource = "conservation of mass and first law at every point";
const curveAssumptions = [
  "Worked out when the hand rests.",
  "On either curve the engine is the match: each turbocharger where its field has it, wastegates and blower as they stand there. At one speed and power both have one balance.",
  "Wall heat after the correlation chosen, scaled to your share at the promised power: the match is reckoned with that share at every speed, so its power is taken and its heat solved anew.",
  "Limits of the match do not stop the propeller's curve: where one is passed, that is told.",
  "Accessories go with the speed as in the match, the heat of returning fuel with the pump's power; gear loss is in proportion to power.",
];

/** The heat balance from idle to the highest speed of the curve chosen. */
export const balanceRun = structure("balanceRun", {
  label: "Where every kilowatt goes, over the engine's speeds",
  from: {
    flowsAlong,
    flowsLoad,
    propellerCurve,
    speedRun,
    matchBuild,
    balanceSetup,
    cylinderSetup,
    wallHeatCalibration,
  },
  compute: (at) =>
    new Later("balanceRun", at, ({ flowsAlong, flowsLoad, propellerCurve, speedRun, ...parts }): readonly BalancePoint[] => {
      if (flowsAlong === "fullLoad") {
        return speedRun
          .answer()
          .map((most) =>
            most.ok
              ? pointBelow(parts, most, flowsLoad)
              : { speed: most.engineSpeed, brakePower: 0 as Power, refused: most.refusal },
          );
      }
      const curve = propellerCurve.answer();
      return flowsLoad === 1 ? curve : curve.map(({ speed }) => curvePointAt(propellerCurve.from, speed, flowsLoad));
    }),
  formula: curveFormula,
  source: curveSource,
  assumptions: curveAssumptions,
});

/** The heat balance at the speed and load that the reader has set. */
export const balanceThere = structure("balanceThere", {
  label: "Where every kilowatt goes at the speed and load set",
  from: {
    flowsAlong,
    flowsLoad,
    flowsEngineSpeed,
    idleSpeed,
    maximumSpeed,
    propellerCurve,
    matchBuild,
    balanceSetup,
    cylinderSetup,
    wallHeatCalibration,
  },
  compute: (at) =>
    new Later("balanceThere", at, ({ flowsEngineSpeed: speed, propellerCurve, ...rest }): BalancePoint => {
      const { flowsAlong, flowsLoad, idleSpeed, maximumSpeed, ...parts } = rest;
      const propeller = flowsAlong === "propeller";
      requireBetween(speed, idleSpeed, propeller ? propellerCurve.from.ratedSpeed : maximumSpeed, propeller);
      if (propeller) return curvePointAt(propellerCurve.from, speed, flowsLoad);
      return fullLoadPointAt(parts, speed, flowsLoad);
    }),
  formula: curveFormula,
  source: curveSource,
  assumptions: curveAssumptions,
});

function requireBetween(speed: number, least: number, most: number, propeller: boolean): void {
  const turns = (value: number) => `${(60 * value).toFixed(0)} rev/min`;
  if (speed < least * (1 - 1e-9)) {
    throw new RangeError(
      `balanceThere: the speed set is ${turns(speed)}, below idle; choose ${turns(least)} or more`,
    );
  }
  if (speed <= most * (1 + 1e-9)) return;
  const reason = propeller
    ? "where the propeller takes all of the promised power"
    : "the highest speed of the engine";
  throw new RangeError(
    `balanceThere: the speed set is ${turns(speed)}, and this curve ends at ${turns(most)}, ${reason}; choose a lower speed${propeller ? ", or full load" : ""}`,
  );
}
