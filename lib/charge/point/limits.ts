import type { KindName, MassFlow } from "../../quantity/kinds";
import type { BlowerElement, CompressorBankElement } from "../path/elements";
import type { OperatingBuild } from "./operatingBuild";
import type { Limit, OperatingState } from "./operatingState";

/** A limit, and how far a point is from it. */
export interface LimitMargin extends Omit<Limit, "value" | "limit"> {
  readonly value: number;
  readonly limit: number;
  /** part of the limit that is left: 1 − value/limit, or 1 − limit/value for a least value; negative beyond it [–] */
  readonly margin: number;
}

/** Every limit of a build. */
export function limitsOf(build: OperatingBuild): readonly Limit[] {
  const { highestExhaustTemperature, highestBackPressure, highestPeakPressure, external = [] } = build.limits;
  const { leastExcessAirRatio } = build.limits;
  let banks = 0;
  let blowers = 0;
  const ofPath = build.path.flatMap((element) => {
    if (element.kind === "compressorBank") return bankLimits(element, banks++);
    if (element.kind === "blower") return blowerLimits(element, blowers++);
    return [];
  });
  const all: readonly (Limit | undefined)[] = [
    {
      id: "excessAir",
      name: "Excess air (smoke)",
      kind: "ratio",
      sense: "at least",
      value: ({ excessAirRatio }) => excessAirRatio,
      limit: () => leastExcessAirRatio,
    },
    ...ofPath,
    atMost("exhaustTemperature", "Exhaust temperature", "temperature", highestExhaustTemperature, (state) => {
      return state.exhaustTemperature;
    }),
    atMost("backPressure", "Back pressure", "pressure", highestBackPressure, (state) => state.exhaustPressure),
    atMost("peakPressure", "Cylinder pressure", "pressure", highestPeakPressure, (state) => {
      return state.cylinders.peakPressure;
    }),
    ...external.map((each): Limit => {
      const { key, name, kind } = each;
      const used = ({ engineSpeed, trial, march, cylinders }: OperatingState) =>
        each.use({
          engineSpeed,
          fuelFlow: trial.fuelFlow as MassFlow,
          manifoldPressure: march.manifold.pressure,
          peakPressure: cylinders.peakPressure,
        });
      const [value, limit] = [(at: OperatingState) => used(at).value, (at: OperatingState) => used(at).limit];
      return { id: key, name, kind, sense: "at most", value, limit };
    }),
  ];
  return all.filter((limit) => limit !== undefined);
}

function atMost(
  id: string,
  name: string,
  kind: KindName,
  most: number | undefined,
  value: Limit["value"],
): Limit | undefined {
  return most === undefined ? undefined : { id, name, kind, sense: "at most", value, limit: () => most };
}

function bankLimits(element: CompressorBankElement, i: number): readonly (Limit | undefined)[] {
  const { compressor, name, highestSpeed, highestTipSpeed, leastSurgeMargin = 0, leastChokeMargin = 0 } = element;
  const { tipDiameter } = compressor;
  const id = (kind: string) => `${kind}:${i + 1}`;
  const bank = ({ march }: OperatingState) => march.banks[i]!;
  const flow: Limit["value"] = (state) => bank(state).correctedFlow;
  return [
    highestSpeed === undefined
      ? atMost(
          id("wheelSpeed"),
          `Corrected wheel speed of ${name}`,
          "rotationalSpeed",
          compressor.speedSpan[1],
          (state) => bank(state).correctedSpeed,
        )
      : atMost(id("wheelSpeed"), `Wheel speed of ${name}`, "rotationalSpeed", highestSpeed, (at) => bank(at).speed),
    tipDiameter === undefined
      ? undefined
      : atMost(id("tipSpeed"), `Tip speed of ${name}`, "velocity", highestTipSpeed, (state) => {
          return Math.PI * tipDiameter * bank(state).speed;
        }),
    {
      id: id("surge"),
      name: `Surge of ${name}`,
      kind: "massFlow",
      sense: "at least",
      value: flow,
      limit: (state) => compressor.surgeFlow(bank(state).correctedSpeed) / (1 - leastSurgeMargin),
    },
    {
      id: id("choke"),
      name: `Choke of ${name}`,
      kind: "massFlow",
      sense: "at most",
      value: flow,
      limit: (state) => compressor.chokeFlow(bank(state).correctedSpeed) * (1 - leastChokeMargin),
    },
  ];
}

function blowerLimits(element: BlowerElement, i: number): readonly (Limit | undefined)[] {
  const { name, highestSpeed, highestTipSpeed, rotorDiameter, highestOutletTemperature } = element;
  const id = (kind: string) => `${kind}:${i + 1}`;
  const blower = ({ march }: OperatingState) => march.blowers[i]!;
  return [
    atMost(id("blowerSpeed"), `Speed of ${name}`, "rotationalSpeed", highestSpeed, (state) => blower(state).speed),
    rotorDiameter === undefined
      ? undefined
      : atMost(id("blowerTipSpeed"), `Tip speed of ${name}`, "velocity", highestTipSpeed, (state) => {
          return Math.PI * rotorDiameter * blower(state).speed;
        }),
    atMost(id("blowerTemperature"), `Temperature after ${name}`, "temperature", highestOutletTemperature, (state) => {
      return blower(state).outlet.temperature;
    }),
  ];
}

/** Distance of a state from a limit, as part of the limit [–]. */
export function marginAt({ sense, value, limit }: Limit, state: OperatingState): number {
  return sense === "at most" ? 1 - value(state) / limit(state) : 1 - limit(state) / value(state);
}

/** Distances of a state from all limits, in their order. */
export function limitMargins(limits: readonly Limit[], state: OperatingState): readonly LimitMargin[] {
  return limits.map((each) => ({
    id: each.id,
    name: each.name,
    kind: each.kind,
    sense: each.sense,
    value: each.value(state),
    limit: each.limit(state),
    margin: marginAt(each, state),
  }));
}
