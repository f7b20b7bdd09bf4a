/** Inputs that are locked against a hand that slips; values still follow undo, files and links. */
export interface Locks {
  has(key: string): boolean;
  toggle(key: string): void;
  /** Tells of each lock that was set or taken off. */
  subscribe(listener: (key: string) => void): void;
}

export function createLocks(): Locks {
  const locked = new Set<string>();
  const listeners: ((key: string) => void)[] = [];
  return {
    has: (key) => locked.has(key),
    toggle: (key) => {
      if (!locked.delete(key)) locked.add(key);
      for (const listener of listeners) listener(key);
    },
    subscribe: (listener) => void listeners.push(listener),
  };
}
