import { expect, test } from "vitest";
import { plainDrawer } from "../../../site/keep/plain-drawer";
import { createStore } from "../../../site/keep/store";
import { fullDrawer, memoryDrawer, memoryStorage } from "./drawers";
import { kept } from "./keptBuild";

test("all() gives records back, newest first", async () => {
  const store = createStore(memoryDrawer(), undefined);
  await store.put(kept({ id: "old", time: 1 }));
  await store.put(kept({ id: "new", time: 3 }));
  await store.put(kept({ id: "middle", time: 2 }));
  expect((await store.all()).map(({ id }) => id)).toEqual(["new", "middle", "old"]);
  await store.remove("middle");
  expect((await store.all()).map(({ id }) => id)).toEqual(["new", "old"]);
});

test("put() does not write over what another tab has kept since; take() does", async () => {
  const store = createStore(memoryDrawer(), undefined);
  await store.put(kept({ name: "mine" }));
  await store.take(kept({ name: "theirs", writer: "tab 2" }));
  expect(await store.put(kept({ name: "mine again" }))).toBe(false);
  expect((await store.all()).map(({ name }) => name)).toEqual(["theirs"]);
});

test("put() goes to the plain storage where the database is full, and back once it is not", async () => {
  const storage = memoryStorage();
  const full = createStore(fullDrawer(), plainDrawer(storage));
  expect(await full.put(kept())).toBe(true);
  expect((await full.all()).map(({ id }) => id)).toEqual(["a1"]);
  const roomy = createStore(memoryDrawer(), plainDrawer(storage));
  await roomy.put(kept({ time: 2000 }));
  expect(storage.length).toBe(0);
  expect((await roomy.all()).map(({ time }) => time)).toEqual([2000]);
});

test("put() passes on why the database refuses where the plain storage refuses too", async () => {
  const store = createStore(fullDrawer(), plainDrawer(memoryStorage(10)));
  await expect(store.put(kept())).rejects.toThrow("full");
  await expect(createStore(undefined, undefined).put(kept())).rejects.toThrow("keeps nothing");
  expect(() => createStore(memoryDrawer(), undefined).putAtOnce(kept())).toThrow("keeps nothing");
});

test("a tab's last words count where they are newer, and stand beside what another tab has kept since", async () => {
  const store = createStore(memoryDrawer(), plainDrawer(memoryStorage()));
  await store.put(kept({ name: "before", time: 1 }));
  store.putAtOnce(kept({ name: "last words", time: 2 }));
  expect((await store.all()).map(({ name }) => name)).toEqual(["last words"]);
  await store.put(kept({ name: "after", time: 3 }));
  store.putAtOnce(kept({ name: "stale", time: 2 }));
  expect((await store.all()).map(({ name }) => name)).toEqual(["after"]);
  store.putAtOnce(kept({ name: "another's", time: 4, writer: "tab 2" }));
  expect((await store.all()).map(({ name }) => name)).toEqual(["another's", "after"]);
});

test("all() passes over what is no record", async () => {
  const storage = memoryStorage();
  storage.setItem("airledger build x", "{");
  storage.setItem("airledger build y", '{"id":"y","name":{}}');
  storage.setItem("airledger build z", "null");
  storage.setItem("another page's", "7");
  expect(await createStore(undefined, plainDrawer(storage)).all()).toEqual([]);
});
