import { type Force, requireNotNegative } from "../quantity";
import type { BeltRun } from "./beltLayout";
import { requireSpanTensions } from "./tension";

/** Tensions around a run. */
export interface RunTensions {
  readonly run: BeltRun;
  /** tension of each span, in the order of the run's spans [N], above 0 */
  readonly spans: readonly Force[];
  /** centrifugal tension [N], 0 or above; 0, a belt at rest, if left out */
  readonly centrifugalTension?: Force;
}

/** Pull of the belt on the shaft of one pulley, seen from the front of the engine. */
export interface HubLoad {
  readonly name: string;
  /** part to the right [N] */
  readonly x: Force;
  /** part upward [N] */
  readonly y: Force;
  /** size of the pull [N] */
  readonly magnitude: Force;
}

/**
 * Pull of the belt on the shaft of every pulley [N]: (T_out − T_c) t_out − (T_in − T_c) t_in, with t the unit vectors
 * along the travel. All of them together add to nothing. Weight and gear forces of the unit itself are left out.
 * At rest give the tension of installation for every span: that load is often the greater one.
 *
 * @param tensions run, span tensions and centrifugal tension [N]
 * @throws RangeError if there are not as many tensions as spans, one is not above 0 or the centrifugal one is negative
 * @source statics of the belt
 * @example hubLoads({ run: beltRun({ travel: "clockwise", pulleys: [{ name: "crank", x: 0, y: 0, pitchRadius: 0.05, contact: "toothed" }, { name: "blower", x: 0, y: 0.3, pitchRadius: 0.05, contact: "toothed" }] }), spans: [300, 1100] })[0].magnitude // 1400
 */
export function hubLoads({ run, spans, centrifugalTension }: RunTensions): readonly HubLoad[] {
  const centrifugal = centrifugalTension ?? 0;
  requireNotNegative("hubLoads: centrifugalTension", centrifugal, "N");
  requireSpanTensions("hubLoads", run, spans);
  return run.pulleys.map(({ name }, i) => {
    const pullIn = spans.at(i - 1)! - centrifugal;
    const pullOut = spans[i]! - centrifugal;
    const directionIn = run.spans.at(i - 1)!.direction;
    const directionOut = run.spans[i]!.direction;
    const x = pullOut * Math.cos(directionOut) - pullIn * Math.cos(directionIn);
    const y = pullOut * Math.sin(directionOut) - pullIn * Math.sin(directionIn);
    return { name, x: x as Force, y: y as Force, magnitude: Math.hypot(x, y) as Force };
  });
}
