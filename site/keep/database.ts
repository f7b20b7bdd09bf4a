import type { Drawer } from "./drawer";

const name = "airledger";
const table = "builds";

/** The browser's database as a drawer. @throws what the browser says where it refuses one */
export async function openDatabase(factory: IDBFactory): Promise<Drawer> {
  const request = factory.open(name, 1);
  request.onupgradeneeded = () => request.result.createObjectStore(table, { keyPath: "id" });
  const database = await answer(request);
  // A page of a later version may change the database only once this one lets go.
  database.onversionchange = () => database.close();

  return {
    all: () => answer(database.transaction(table).objectStore(table).getAll()),
    change: (id, next) => {
      const transaction = database.transaction(table, "readwrite");
      const records = transaction.objectStore(table);
      const present = records.get(id);
      const finished = end(transaction);
      present.onsuccess = () => {
        try {
          const record = next(present.result);
          if (record) records.put(record);
        } catch (error) {
          refusals.set(transaction, error);
          transaction.abort();
        }
      };
      return finished;
    },
    remove: (id) => {
      const transaction = database.transaction(table, "readwrite");
      transaction.objectStore(table).delete(id);
      return end(transaction);
    },
  };
}

/** Why a transaction was given up by ourselves. */
const refusals = new WeakMap<IDBTransaction, unknown>();

function answer<T>(request: IDBRequest<T>): Promise<T> {
  return new Promise((resolve, reject) => {
    request.onsuccess = () => resolve(request.result);
    request.onerror = () => reject(request.error);
    if (request instanceof IDBOpenDBRequest) request.onblocked = () => reject(new Error("the database is in use"));
  });
}

/** A full device may refuse only here, at the transaction's end. */
function end(transaction: IDBTransaction): Promise<void> {
  return new Promise((resolve, reject) => {
    transaction.oncomplete = () => resolve();
    transaction.onabort = () => reject(refusals.get(transaction) ?? transaction.error);
  });
}
