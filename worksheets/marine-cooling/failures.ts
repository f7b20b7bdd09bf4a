import { pumpOnSystem } from "../../lib/cooling";
import { structure } from "../../lib/graph";
import type { Fraction, RotationalSpeed, VolumeFlow } from "../../lib/quantity";
import { wetExhaust } from "../boat-duty/exhaust";
import { exhaustKind } from "../boat-duty/inputs";
import { ratedSpeed } from "../brief/cells";
import { rawWaterDriveRatio } from "../drive-speeds/ratios";
import { Later } from "../later";
import { marineCircuit } from "./circuit";
import type { CircuitState } from "./circuitState";
import { type FailurePart, type FailuresFrom, partsIn, withoutJacketFlow, withoutSea } from "./failureParts";
import { circuitSetup, circuitState } from "./heats";
import { hydraulicsOf } from "./hydraulics";
import {
  circuitVolume,
  dischargeLimit,
  fouledShare,
  gearOilTemperature,
  gearOilVolume,
  jacketTemperature,
  oilTemperature,
  oilVolume,
  stuckOpening,
  warmMetal,
  wetExhaustLimit,
  wornFilling,
} from "./inputs";
import { type RawWaterState, rawWaterState } from "./rawWater";

export interface FailureCase {
  readonly key: string;
  readonly name: string;
  readonly note: string;
  readonly parts: readonly FailurePart[];
}

export const failures = structure("failures", {
  label: "What fails, how hot it gets, and how soon",
  from: {
    circuitSetup,
    circuitState,
    marineCircuit,
    rawWaterState,
    wetExhaust,
    exhaustKind,
    ratedSpeed,
    rawWaterDriveRatio,
    wornFilling,
    fouledShare,
    stuckOpening,
    warmMetal,
    circuitVolume,
    oilVolume,
    gearOilVolume,
    jacketTemperature,
    oilTemperature,
    gearOilTemperature,
    dischargeLimit,
    wetExhaustLimit,
  },
  compute: ({ wetExhaust, ratedSpeed, rawWaterDriveRatio, ...at }): Later<readonly FailureCase[], FailuresFrom> =>
    new Later(
      "failures",
      { ...at, exhaust: wetExhaust.inputs, pumpSpeed: (ratedSpeed * rawWaterDriveRatio) as RotationalSpeed },
      casesOf,
    ),
  formula: "t = \\int_{T}^{T_{lim}} \\frac{C\\,dT}{Q - Q_{passed}(T)}",
  source: "energy balance of the line as failed; a lump of one temperature for the time",
  assumptions: [
    "The engine stays at the promised power in the warmest sea: who throttles back at the first alarm gains time.",
    "Jacket: its water and the iron that warms with it; oil and gear oil: their sumps alone, so that the truth is a little slower.",
    "The exhaust hose feels the mix at once; where the water fails, the dry gas. A dry exhaust feels neither.",
  ],
});

function casesOf(at: FailuresFrom): readonly FailureCase[] {
  const { circuitState: state, rawWaterState: raw } = at;
  const flowWith = (change: Partial<RawWaterState["stated"]>): VolumeFlow => {
    const { pump, system } = hydraulicsOf({ ...raw.stated, ...change });
    return pumpOnSystem(pump, at.pumpSpeed, system).volumeFlow;
  };
  const blocked = (1 - (1 - raw.stated.strainerBlocked) / 2) as Fraction; // half of what is open now
  const withState = (change: Partial<CircuitState>) => partsIn(at, { ...state, ...change });
  return [
    {
      key: "strainer",
      name: "Strainer half blocked",
      note: "half of what is open now closes",
      parts: withState({ rawWaterFlow: flowWith({ strainerBlocked: blocked }) }),
    },
    {
      key: "impeller",
      name: "Raw-water pump worn",
      note: "filling falls; a centrifugal pump loses flow in the same proportion",
      parts: withState({ rawWaterFlow: wornFlow(at, flowWith) }),
    },
    {
      key: "fouled",
      name: "Jacket exchanger fouled",
      note: "its UA falls to what is left",
      parts: withState({ conductanceLeft: { jacketExchanger: at.fouledShare } }),
    },
    {
      key: "oilFouled",
      name: "Oil cooler fouled",
      note: "its UA falls to what is left",
      parts: withState({ conductanceLeft: { oilCooler: at.fouledShare } }),
    },
    {
      key: "thermostat",
      name: "Thermostat stuck",
      note: "it lets through its share, however hot the water",
      parts: withState({ stuckOpening: at.stuckOpening }),
    },
    { key: "rawBelt", name: "Raw-water pump's belt lost", note: "no sea water at all", parts: withoutSea(at) },
    {
      key: "jacketBelt",
      name: "Jacket pump's belt lost",
      note: "the jacket water stands",
      parts: withoutJacketFlow(at),
    },
  ];
}

function wornFlow(at: FailuresFrom, flowWith: (change: { rawWaterFilling: Fraction }) => VolumeFlow): VolumeFlow {
  const { stated } = at.rawWaterState;
  if (stated.rawWaterPumpKind === "impeller") {
    return flowWith({ rawWaterFilling: Math.min(at.wornFilling, stated.rawWaterFilling) as Fraction });
  }
  const left = Math.min(1, at.wornFilling / stated.rawWaterFilling);
  return (at.circuitState.rawWaterFlow * left) as VolumeFlow;
}

export type { FailurePart } from "./failureParts";
