/** A choice of this reader on this device; where nothing may be stored it holds until the page is closed. */
export interface Preference<T extends string> {
  readonly value: T;
  set(value: T): void;
}

/**
 * @param name under which it is stored
 * @param allowed the values there are; the first holds until one is chosen
 */
export function preference<T extends string>(name: string, allowed: readonly [T, ...T[]]): Preference<T> {
  const key = `airledger ${name}`;
  let value: T = allowed[0];
  try {
    const stored = localStorage.getItem(key);
    value = allowed.find((each) => each === stored) ?? value;
  } catch {
    // Storage is refused: the first value holds.
  }
  return {
    get value() {
      return value;
    },
    set: (next) => {
      value = next;
      try {
        localStorage.setItem(key, next);
      } catch {
        // It holds for this visit.
      }
    },
  };
}
