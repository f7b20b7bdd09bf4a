import { openDatabase } from "./database";
import type { Drawer, PlainDrawer } from "./drawer";
import { plainDrawer } from "./plain-drawer";
import { byTime, isKeptBuild, type KeptBuild } from "./record";

/** The builds on this device. */
export interface Store {
  /** Newest first. */
  all(): Promise<readonly KeptBuild[]>;
  /**
   * Keeps a record, unless another tab has kept it since.
   *
   * @returns whether it is kept
   * @throws what the browser says where it is full or keeps nothing
   */
  put(record: KeptBuild): Promise<boolean>;
  /** Keeps a record whoever kept it before. */
  take(record: KeptBuild): Promise<void>;
  remove(id: string): Promise<void>;
  /** Keeps a record in the last moment of a page, where no promise may be awaited. @throws as put does */
  putAtOnce(record: KeptBuild): void;
}

/**
 * A store over the browser's database, with its plain storage as the last resort and for the last moment.
 *
 * @param database undefined where the browser refuses one
 * @param plain undefined where the browser refuses it
 */
export function createStore(database: Drawer | undefined, plain: PlainDrawer | undefined): Store {
  const inDatabase = async (): Promise<readonly KeptBuild[]> => ((await database?.all()) ?? []).filter(isKeptBuild);
  const inPlain = (): readonly KeptBuild[] => (plain?.all() ?? []).filter(isKeptBuild);

  /** In the database if it can be, else in the plain storage; the first complaint tells why. */
  const write = async (record: KeptBuild, next: (present: unknown) => KeptBuild | undefined): Promise<void> => {
    let complaint: unknown = new Error("the browser keeps nothing for this page");
    if (database) {
      try {
        await database.change(record.id, next);
        plain?.remove(record.id);
        return;
      } catch (error) {
        complaint = error;
      }
    }
    try {
      if (!plain) throw complaint;
      const kept = next(inPlain().find(({ id }) => id === record.id));
      if (kept) plain.put(kept);
    } catch {
      throw complaint;
    }
  };

  return {
    all: async () => {
      const records = new Map((await inDatabase()).map((record) => [record.id, record]));
      for (const record of inPlain()) {
        const other = records.get(record.id);
        // The last words of a tab whose place another has taken are a record of their own.
        if (other && other.writer !== record.writer) {
          const id = `${record.id}-${record.writer}`;
          records.set(id, { ...record, id });
        } else if (!other || record.time > other.time) records.set(record.id, record);
      }
      return byTime([...records.values()]);
    },
    put: async (record) => {
      let kept = false;
      await write(record, (present) => {
        kept = !isKeptBuild(present) || present.writer === record.writer;
        return kept ? record : undefined;
      });
      return kept;
    },
    take: (record) => write(record, () => record),
    remove: async (id) => {
      plain?.remove(id);
      await database?.remove(id);
    },
    putAtOnce: (record) => {
      if (!plain) throw new Error("the browser keeps nothing for this page");
      plain.put(record);
    },
  };
}

/** The store of this browser; a browser that refuses one gets a store that says so at every write. */
export async function openStore(): Promise<Store> {
  // Some browsers refuse even to be asked for the database.
  const database = await (async () => openDatabase(indexedDB))().catch(() => undefined);
  const plain = storageOf();
  const store = createStore(database, plain && plainDrawer(plain));
  if (database && plain) await moveIn(store, plainDrawer(plain)).catch(() => undefined);
  return store;
}

/** What a tab kept in its last moment moves to the others. */
async function moveIn(store: Store, plain: PlainDrawer): Promise<void> {
  const left = plain.all().filter(isKeptBuild);
  if (left.length === 0) return;
  const all = await store.all();
  for (const { id, writer, time } of left) {
    const record = all.find((each) => each.writer === writer && each.time === time && each.id.startsWith(id));
    if (record) await store.take(record);
    plain.remove(id);
  }
}

function storageOf(): Storage | undefined {
  try {
    return window.localStorage;
  } catch {
    return undefined;
  }
}
