import type { PlainDrawer } from "./drawer";

const prefix = "airledger build ";

/** The browser's plain storage as a drawer. What it holds and cannot be read is passed over. */
export function plainDrawer(storage: Storage): PlainDrawer {
  return {
    all: () =>
      Array.from({ length: storage.length }, (_, i) => storage.key(i) ?? "")
        .filter((key) => key.startsWith(prefix))
        .flatMap((key) => parsed(storage.getItem(key))),
    put: (record) => storage.setItem(prefix + record.id, JSON.stringify(record)),
    remove: (id) => storage.removeItem(prefix + id),
  };
}

function parsed(text: string | null): readonly unknown[] {
  try {
    return text === null ? [] : [JSON.parse(text)];
  } catch {
    return [];
  }
}
