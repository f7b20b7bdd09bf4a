import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { compile } from "../../../lib/graph";
import { type Autosave, createAutosave } from "../../../site/keep/autosave";
import { plainDrawer } from "../../../site/keep/plain-drawer";
import { createStore, type Store } from "../../../site/keep/store";
import { createSession, type Session } from "../../../site/state";
import { readBuild, writeBuild } from "../../../worksheets/build/file";
import { build } from "../build";
import { graph } from "../fixture";
import { fullDrawer, memoryDrawer, memoryStorage } from "./drawers";

const program = compile(graph);
let told: string[];
beforeEach(() => {
  vi.useFakeTimers();
  told = [];
});
afterEach(() => void vi.useRealTimers());

function tab(store: Store, writer = "tab 1"): { session: Session; autosave: Autosave } {
  const session = createSession({ graph, program, build, name: "at the start" });
  const autosave = createAutosave({
    session,
    store,
    writer,
    now: () => Date.now(),
    write: (each) => writeBuild(each, graph),
    onTaken: () => told.push("taken"),
    onKept: (kept) => told.push(kept ? "kept" : "refused"),
  });
  return { session, autosave };
}

const rest = () => vi.advanceTimersByTimeAsync(1000);
const ratios = async (store: Store) =>
  (await store.all()).map(({ text }) => {
    const read = readBuild(text, graph);
    return read.ok && read.build.shared.driveRatio;
  });

test("nothing is kept of a build that was only looked at", async () => {
  const store = createStore(memoryDrawer(), undefined);
  const { session } = tab(store);
  session.show("boat");
  session.choose({ system: "US", own: {} });
  await rest();
  expect(await store.all()).toEqual([]);
});

test("a change is kept after a rest, a gesture once it ends", async () => {
  const store = createStore(memoryDrawer(), undefined);
  const { session } = tab(store);
  session.begin("driveRatio");
  session.set("driveRatio", 2);
  await rest();
  expect(told).toEqual([]);
  session.set("driveRatio", 2.2);
  session.end();
  await rest();
  expect(await ratios(store)).toEqual([2.2]);
  session.set("driveRatio", 2.4);
  session.set("driveRatio", 2.6);
  await rest();
  expect(await ratios(store)).toEqual([2.6]);
  expect(told).toEqual(["kept", "kept"]);
});

test("what is taken back wholly is kept no more", async () => {
  const store = createStore(memoryDrawer(), undefined);
  const { session } = tab(store);
  session.set("driveRatio", 2);
  await rest();
  session.undo();
  await rest();
  expect(await store.all()).toEqual([]);
});

test("a record that was followed stays, though everything is taken back, and keeps its name's mark", async () => {
  const store = createStore(memoryDrawer(), undefined);
  const { session, autosave } = tab(store);
  session.set("driveRatio", 2);
  await rest();
  const [record] = await store.all();
  autosave.follow({ ...record!, named: true }, () => session.open(session.state.build, "as opened"));
  session.set("driveRatio", 3);
  session.undo();
  await rest();
  expect(await ratios(store)).toEqual([2]);
  expect((await store.all())[0]!.named).toBe(true);
});

test("two tabs that follow one record end with a record each, and the first is told", async () => {
  const store = createStore(memoryDrawer(), undefined);
  const one = tab(store, "tab 1");
  one.session.set("driveRatio", 2);
  await rest();
  const [record] = await store.all();
  const two = tab(store, "tab 2");
  await store.take({ ...record!, writer: "tab 2" });
  two.autosave.follow(record, () => two.session.open(one.session.state.build, "as opened"));
  two.session.set("driveRatio", 3);
  await rest();
  one.session.set("driveRatio", 1);
  await rest();
  two.session.set("driveRatio", 3.2);
  one.session.set("driveRatio", 1.2);
  await rest();
  expect((await ratios(store)).toSorted()).toEqual([1.2, 3.2]);
  expect(told.filter((word) => word === "taken")).toHaveLength(1);
});

test("a refusal is told, and that it is over", async () => {
  const storage = memoryStorage();
  const drawer = fullDrawer();
  const refusing = { ...drawer };
  const store = createStore(refusing, undefined);
  const { session } = tab(store);
  session.set("driveRatio", 2);
  await rest();
  Object.assign(refusing, memoryDrawer());
  session.set("driveRatio", 2.2);
  await rest();
  expect(told).toEqual(["refused", "kept"]);
  expect(storage.length).toBe(0);
});

test("atOnce() keeps what the rest has not yet, in the middle of a gesture too, without awaiting", () => {
  const storage = memoryStorage();
  const { session, autosave } = tab(createStore(memoryDrawer(), plainDrawer(storage)));
  autosave.atOnce();
  expect(storage.length).toBe(0);
  session.begin("driveRatio");
  session.set("driveRatio", 2);
  autosave.atOnce();
  expect(storage.length).toBe(1);
});

test("a build that is opened while the last is being kept does not take its place", async () => {
  const store = createStore(memoryDrawer(), undefined);
  const { session, autosave } = tab(store);
  session.set("driveRatio", 2);
  const first = autosave.flush();
  autosave.follow(undefined, () => session.open(build, "as opened"));
  await first;
  session.set("driveRatio", 3);
  await rest();
  expect((await ratios(store)).toSorted()).toEqual([2, 3]);
});
