import type { Drawer } from "../../../site/keep/drawer";

/** A database in memory. */
export function memoryDrawer(): Drawer {
  const records = new Map<string, unknown>();
  return {
    all: async () => [...records.values()],
    change: async (id, next) => {
      const record = next(records.get(id));
      if (record) records.set(id, record);
    },
    remove: async (id) => void records.delete(id),
  };
}

/** A database that refuses every record, as a full device does. */
export function fullDrawer(): Drawer {
  return { ...memoryDrawer(), change: () => Promise.reject(new DOMException("full", "QuotaExceededError")) };
}

/** Plain storage in memory that refuses texts when the sum would exceed a length. */
export function memoryStorage(room = Number.POSITIVE_INFINITY): Storage {
  const entries = new Map<string, string>();
  return {
    get length() {
      return entries.size;
    },
    key: (index) => [...entries.keys()][index] ?? null,
    getItem: (key) => entries.get(key) ?? null,
    setItem: (key, text) => {
      if (text.length > room) throw new DOMException("full", "QuotaExceededError");
      entries.set(key, text);
    },
    removeItem: (key) => void entries.delete(key),
    clear: () => entries.clear(),
  };
}
