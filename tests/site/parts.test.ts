import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { Part } from "../../site/page/desk";
import type { Told } from "../../site/page/nearness";
import { createParts } from "../../site/page/parts";

const refreshed: string[] = [];
let moving = false;

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal("window", globalThis);
  refreshed.length = 0;
  moving = false;
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

function partOf(name: string, takesTurns = false): Part {
  return { element: {} as HTMLElement, watches: ["speed"], takesTurns, refresh: () => refreshed.push(name) };
}

function taken(): string[] {
  return refreshed.splice(0);
}

test("parts.refresh(keys) leaves what is off the screen until the hand has rested, or it comes near", () => {
  const parts = createParts(() => moving);
  let told: Told = () => {};
  const gathering = parts.gathered({} as Element, (_, __, tell) => {
    told = tell;
    return () => {};
  });
  parts.add(partOf("near"));
  gathering.add(partOf("away"));
  told(false);
  expect([...parts.near()]).toEqual(["speed"]);
  parts.refresh(["speed"]);
  expect(taken()).toEqual(["near"]);
  told(true);
  expect(taken()).toEqual(["away"]);
  told(false);
  parts.refresh(["speed"]);
  vi.advanceTimersByTime(1000);
  expect(taken()).toEqual(["near", "away"]);
});

test("a part added to what is off the screen is off the screen", () => {
  const parts = createParts(() => moving);
  const gathering = parts.gathered({} as Element, (_, __, tell) => {
    tell(false);
    return () => {};
  });
  gathering.add(partOf("away"));
  expect([...parts.near()]).toEqual([]);
  parts.refresh(["speed"]);
  expect(taken()).toEqual([]);
});

test("while the hand moves, parts that take turns follow one in a frame, the longest waiting first, and all of them at rest", () => {
  const parts = createParts(() => moving);
  for (const name of ["a", "b", "c"]) parts.add(partOf(name, true));
  parts.add(partOf("line"));
  parts.refresh(["speed"]);
  expect(taken()).toEqual(["a", "b", "c", "line"]);
  moving = true;
  for (const turn of ["a", "b", "c", "a"]) {
    parts.refresh(["speed"]);
    expect(taken()).toEqual(["line", turn]);
  }
  vi.advanceTimersByTime(1000);
  expect(taken().sort()).toEqual(["a", "b", "c"].filter((name) => name !== "a").sort());
});
