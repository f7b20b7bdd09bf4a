import * as drive from "../../../lib/drive";
import { type Plain, plain } from "./plain";

type Layout = Plain<drive.BeltLayout>;
const beltRun = plain(drive.beltRun);

/** Small generator of even random numbers from a fixed seed (linear congruences; constants of Numerical Recipes). */
function randomNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 2 ** 32;
  };
}

/** Invented layouts that a belt can lie on: pulleys around a ring, in half of them idlers pressed in from outside. */
export function randomLayouts(count: number): readonly Layout[] {
  const random = randomNumbers(20260101);
  const between = (low: number, high: number) => low + (high - low) * random();
  const layouts: Layout[] = [];
  while (layouts.length < count) {
    const layout = drawn(between);
    try {
      beltRun(layout);
      layouts.push(layout);
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
    }
  }
  return layouts;
}

function drawn(between: (low: number, high: number) => number): Layout {
  const toothed = Math.floor(between(2, 5));
  const forward = between(0, 1) < 0.5 ? 1 : -1;
  const idlers = between(0, 1) < 0.6 ? 1 + Math.floor(between(0, 2)) : 0;
  const start = between(0, 2 * Math.PI);
  const at = (angle: number, distance: number) => ({ x: distance * Math.cos(angle), y: distance * Math.sin(angle) });
  const pulleys = Array.from({ length: toothed }, (_, i) => {
    const place = (share: number) => start + (forward * 2 * Math.PI * (i + share)) / toothed;
    const own = {
      name: `pulley ${i}`,
      ...at(place(between(-0.2, 0.2)), between(0.15, 0.4)),
      pitchRadius: between(0.02, 0.09),
      contact: "toothed" as const,
    };
    const idler = {
      name: `idler ${i}`,
      ...at(place(between(0.4, 0.6)), between(0.05, 0.3)),
      pitchRadius: between(0.02, 0.05),
      contact: "back" as const,
    };
    return i < idlers ? [own, idler] : [own];
  });
  return { travel: forward === 1 ? "counterclockwise" : "clockwise", pulleys: pulleys.flat() };
}
