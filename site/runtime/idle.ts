export interface Patience {
  /** Longest wait, in milliseconds; any if left out. */
  readonly timeout?: number;
  /** Wait in a browser that does not tell when it is idle, in milliseconds. */
  readonly blind: number;
}

/** Does a piece of work when the browser has nothing better to do. */
export function whenIdle(work: () => void, { timeout, blind }: Patience): void {
  if (typeof requestIdleCallback === "function") requestIdleCallback(work, timeout === undefined ? undefined : { timeout });
  else setTimeout(work, blind);
}
