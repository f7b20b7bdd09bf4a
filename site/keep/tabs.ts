import { newId } from "./record";

/** The tabs in which the page is open. */
export interface Tabs {
  /** This tab's sign, new at every load. */
  readonly own: string;
  /** Signs of the others, as far as the browser tells. */
  others(): Promise<ReadonlySet<string>>;
}

const prefix = "airledger tab ";

/** This tab among its like. It holds a lock while it lives, which the browser lets go however the tab ends. */
export function createTabs(locks: LockManager | undefined): Tabs {
  const own = newId();
  locks?.request(prefix + own, () => new Promise<never>(() => {})).catch(() => undefined);
  return {
    own,
    others: async () => {
      const held = (await locks?.query())?.held ?? [];
      const signs = held.flatMap(({ name }) => (name?.startsWith(prefix) ? [name.slice(prefix.length)] : []));
      return new Set(signs.filter((sign) => sign !== own));
    },
  };
}
