import { requireNotNegative, requirePositive, requireWithin } from "../../quantity/guard";
import type { Power, Ratio, RotationalSpeed } from "../../quantity/kinds";
import type { ChargeElement } from "../path/elements";
import { coolingAtSinkFlow } from "../path/ratedCooler";
import type { OperatingBuild, OverSpeed, SlowExcessAir } from "./operatingBuild";

/** A build as it stands at a speed, with nothing left that goes with it. */
export function buildAtSpeed(build: OperatingBuild, engineSpeed: RotationalSpeed): OperatingBuild {
  const { overSpeed, ...stated } = build;
  if (!overSpeed) return build;
  const { statedAt, accessories, coolingStreams, slowExcessAir } = overSpeed;
  const faster = engineSpeed / statedAt;
  return {
    ...stated,
    ...(accessories && {
      accessoryPower: (build.accessoryPower *
        (1 + accessories.withSpeed * (faster - 1) + accessories.withCube * (faster ** 3 - 1))) as Power,
    }),
    ...(coolingStreams && { path: build.path.map((element) => cooledByFlow(element, faster)) }),
    ...(slowExcessAir && {
      limits: { ...build.limits, leastExcessAirRatio: leastExcessAir(build.limits.leastExcessAirRatio, slowExcessAir, engineSpeed) },
    }),
  };
}

function cooledByFlow(element: ChargeElement, flow: number): ChargeElement {
  if (element.kind !== "cooler") return element;
  const { cooling, warmedBy } = element;
  return {
    ...element,
    ...(cooling.kind === "rated" && { cooling: coolingAtSinkFlow(cooling, flow as Ratio) }),
    ...(warmedBy && { warmedBy: { ...warmedBy, perWatt: warmedBy.perWatt / flow } }),
  };
}

/**
 * Least excess air of an engine at a speed [–]: along a straight line between two speeds, level beyond them.
 *
 * @param full what the limits ask for at full speed [–]
 * @param slow what a slow engine needs, and between which speeds it gives way [–, rev/s]
 * @param engineSpeed crankshaft speed [rev/s]
 * @throws nothing
 * @source common practice, no source: heat asks for air at high power, smoke at low speed
 * @example leastExcessAir(1.75, { leastExcessAirRatio: 1.4, upTo: 13, fullFrom: 33 }, 23) // 1.575
 */
export function leastExcessAir(full: Ratio, slow: SlowExcessAir, engineSpeed: RotationalSpeed): Ratio {
  const { leastExcessAirRatio, upTo, fullFrom } = slow;
  if (engineSpeed >= fullFrom) return full;
  const share = Math.max(0, (engineSpeed - upTo) / (fullFrom - upTo));
  return (leastExcessAirRatio + share * (full - leastExcessAirRatio)) as Ratio;
}

/**
 * Passes when what goes with the speed makes sense.
 *
 * @param overSpeed what of a build goes with the engine's speed
 * @throws RangeError that names the number
 */
export function requireOverSpeed({ statedAt, accessories, slowExcessAir }: OverSpeed): void {
  requirePositive("operatingPoint: overSpeed statedAt", statedAt, "rev/s");
  if (accessories) {
    requireNotNegative("operatingPoint: accessories withSpeed", accessories.withSpeed);
    requireNotNegative("operatingPoint: accessories withCube", accessories.withCube);
    requireWithin("operatingPoint: accessories with speed and cube together", accessories.withSpeed + accessories.withCube, [0, 1]);
  }
  if (slowExcessAir) {
    const { upTo, fullFrom, leastExcessAirRatio } = slowExcessAir;
    requirePositive("operatingPoint: slowExcessAir upTo", upTo, "rev/s");
    requireNotNegative("operatingPoint: slowExcessAir fullFrom less upTo", fullFrom - upTo, "rev/s");
    requireWithin("operatingPoint: slowExcessAir leastExcessAirRatio", leastExcessAirRatio, [1, 5]);
  }
}
