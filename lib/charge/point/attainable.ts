import type { Power, RotationalSpeed } from "../../quantity/kinds";
import { type Climb, climb } from "./climb";
import { describePoint } from "./describePoint";
import type { GasSource } from "./gasSource";
import { type LimitMargin, marginAt } from "./limits";
import type { OperatingBuild } from "./operatingBuild";
import { solvedOrRefused } from "./operatingPoint";
import type { OperatingPoint } from "./operatingResult";
import { operatingSetting } from "./setting";
import type { Solved } from "./solved";

/** A limit that ends the climb in load, and where. */
export interface BindingLimit {
  /** as LimitMargin has it, or "balance" where the loop of air and exhaust finds none any more */
  readonly id: string;
  /** name for readers */
  readonly name: string;
  /** power at the flywheel at which it is met [W]; an estimate along the tangent for the next one */
  readonly brakePower: Power;
}

/** The most that chosen parts give at a speed. */
export interface AttainablePoint {
  readonly engineSpeed: RotationalSpeed;
  /** the point at which the first limit is met; what runs on in spite of `violated` where that is not empty */
  readonly point: OperatingPoint;
  /** the limit that is met first as fuel is added */
  readonly binding: BindingLimit;
  /** the limit that would be met next if that one were lifted; undefined where none is in sight */
  readonly next: BindingLimit | undefined;
  /** limits that are passed at every load up to there, a blower that turns too fast for one: no load is allowed at this speed */
  readonly violated: readonly LimitMargin[];
}

/**
 * The most power that chosen parts give at a speed, and which limit binds [W]: fuel is added from light load until the first
 * limit is met, so a load that could only be reached through smoke or surge does not count. At a fixed turbine area power
 * is close to runaway: a few per cent more area or efficiency change it by tens, so look at the binding limit first, and
 * give the turbocharger a wastegate or a wheel speed that it must not pass.
 *
 * @param build everything from the open air to the exhaust pipe, and the limits
 * @param engineSpeed crankshaft speed [rev/s], above 0
 * @param gases where the gases come from; lib/fluid if left out
 * @throws RangeError "attainable: no balance: …" if there is none even at light load
 * @source conservation of mass; first law on every element
 * @example attainable(inventedOperatingBuild, 50).binding.id // "excessAir"
 */
export function attainable(build: OperatingBuild, engineSpeed: RotationalSpeed, gases?: GasSource): AttainablePoint {
  return solvedOrRefused(() => describeClimb(climb(operatingSetting(build, engineSpeed, gases))), "attainable");
}

/** A climb as its reader wants it. */
export function describeClimb({ found, bindingId, beyond }: Climb): AttainablePoint {
  const point = describePoint(found);
  const violated = point.margins.filter(({ id, margin }) => margin < -1e-7 && id !== bindingId);
  return {
    engineSpeed: point.engineSpeed,
    point,
    binding: { id: bindingId, name: nameOf(point.margins, bindingId), brakePower: point.brakePower },
    next: nextLimit(point, bindingId, beyond),
    violated,
  };
}

function nameOf(margins: readonly LimitMargin[], id: string): string {
  return margins.find((limit) => limit.id === id)?.name ?? "Balance of air and exhaust";
}

function nextLimit(point: OperatingPoint, bindingId: string, beyond: Solved | undefined): BindingLimit | undefined {
  if (!beyond) {
    if (bindingId === "balance") return undefined;
    return { id: "balance", name: nameOf([], "balance"), brakePower: point.brakePower };
  }
  let next: BindingLimit | undefined;
  const after = beyond.setting.limits.map((limit) => marginAt(limit, beyond.state));
  point.margins.forEach(({ id, name, margin }, i) => {
    const fall = margin - after[i]!;
    if (id === bindingId || margin < 0 || !(fall > 0)) return;
    const brakePower = point.brakePower + (margin / fall) * (beyond.state.brake - point.brakePower);
    if (!next || brakePower < next.brakePower) next = { id, name, brakePower: brakePower as Power };
  });
  return next;
}
