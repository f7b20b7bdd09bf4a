/** Time that some work may take in one frame. */
export interface Allowance {
  /** Does work, and counts its time. */
  spend(work: () => void): void;
  /** Whether the frame's time is used up; not when it is asked for the first time in a frame, so that something is done in each. */
  isSpent(): boolean;
}

/** @param time in a frame, in milliseconds */
export function frameAllowance(time: number): Allowance {
  let frame: unknown;
  let spent = 0;
  let begun: number | undefined;
  let asked = false;
  const running = (): number => (begun === undefined ? 0 : performance.now() - begun);
  return {
    spend: (work) => {
      const now = document.timeline.currentTime;
      if (now !== frame) {
        spent = 0;
        asked = false;
      }
      frame = now;
      begun = performance.now();
      work();
      spent += running();
      begun = undefined;
    },
    isSpent: () => {
      const first = !asked;
      asked = true;
      return !first && spent + running() >= time;
    },
  };
}
