/** How long a hand must rest before slow work begins, and after how long the wait is told, in milliseconds. */
export const restTimes = { told: 120, begun: 150 };

/** Slow work that is put off until nothing has changed for a while. */
export interface Rest {
  /** Something changed: the work is due, and is put off again. */
  ask(): void;
}

/**
 * @param work what is done once the hand rests
 * @param waiting told that the wait has become long enough to be seen, and that it is over
 */
export function whenAtRest(work: () => void, waiting: (long: boolean) => void): Rest {
  let begins: ReturnType<typeof setTimeout> | undefined;
  let tells: ReturnType<typeof setTimeout> | undefined;
  const begin = (): void => {
    clearTimeout(tells);
    begins = undefined;
    tells = undefined;
    try {
      work();
    } finally {
      waiting(false);
    }
  };
  return {
    ask: () => {
      clearTimeout(begins);
      begins = setTimeout(begin, restTimes.begun);
      tells ??= setTimeout(() => waiting(true), restTimes.told);
    },
  };
}
