/** Something that is no part of the first load. */
export interface Fetched<T> {
  /** There once it was asked for. */
  readonly made: T | undefined;
  /** Fetches and makes it the first time; nothing where it could not be fetched, and the next time it is tried again. */
  ask(): Promise<T | undefined>;
}

/**
 * @param fetchIt fetches what it is made with
 * @param make makes it, once
 * @param failed told when it could not be fetched
 */
export function fetched<M, T>(fetchIt: () => Promise<M>, make: (module: M) => T, failed: () => void): Fetched<T> {
  let made: T | undefined;
  return {
    get made() {
      return made;
    },
    ask: async () => {
      let module: M;
      try {
        module = await fetchIt();
      } catch {
        failed();
        return undefined;
      }
      made ??= make(module);
      return made;
    },
  };
}
