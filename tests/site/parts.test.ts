import { afterEach, beforeEach, expect, test, vi } from "vitest";
import type { Part } from "../../site/page/desk";
import type { Told } from "../../site/page/nearness";
import { createParts, type Parts } from "../../site/page/parts";

const refreshed: string[] = [];
/** Key of the input that the hand moves. */
let hand: string | undefined;
/** The clock, which a refreshed part moves on by its cost. */
let now = 0;
let frame = 0;
let callbacks: (() => void)[] = [];
let focused: object;

beforeEach(() => {
  vi.useFakeTimers();
  vi.stubGlobal("window", globalThis);
  vi.stubGlobal("performance", { now: () => now });
  vi.stubGlobal("document", {
    timeline: {
      get currentTime() {
        return frame;
      },
    },
    get activeElement() {
      return focused;
    },
  });
  vi.stubGlobal("requestAnimationFrame", (work: () => void) => callbacks.push(work));
  refreshed.length = 0;
  callbacks = [];
  hand = undefined;
  [now, frame, focused] = [0, 0, {}];
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllGlobals();
});

/** @param cost milliseconds that its refreshing takes */
function partOf(name: string, cost = 0, everyFrame = false): Part {
  const element: Record<string, unknown> = {};
  element["contains"] = (other: unknown) => other === element;
  const refresh = (): void => {
    refreshed.push(name);
    now += cost;
  };
  return { element: element as never, watches: ["speed"], everyFrame, refresh };
}

function taken(): string[] {
  return refreshed.splice(0);
}

/** What a frame brings up to date after which a value has changed, if it has. */
function inFrame(parts?: Parts): string[] {
  frame += 1;
  for (const work of callbacks.splice(0)) work();
  parts?.refresh(["speed"]);
  return taken();
}

test("parts.refresh(keys) leaves what is off the screen until the hand has rested, or it comes near", () => {
  const parts = createParts(() => hand);
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
  const parts = createParts(() => hand);
  const gathering = parts.gathered({} as Element, (_, __, tell) => {
    tell(false);
    return () => {};
  });
  gathering.add(partOf("away"));
  expect([...parts.near()]).toEqual([]);
  parts.refresh(["speed"]);
  expect(taken()).toEqual([]);
});

test("while the hand moves, a frame brings what it has time for, the longest waiting first, and the next frames the others", () => {
  const parts = createParts(() => hand);
  for (const name of ["a", "b", "c", "d", "e"]) parts.add(partOf(name, 0.2));
  expect(inFrame(parts)).toEqual(["a", "b", "c", "d", "e"]);
  hand = "speed";
  expect(inFrame(parts)).toEqual(["a", "b"]);
  expect(inFrame(parts)).toEqual(["c", "d"]);
  expect(inFrame()).toEqual(["e", "a"]);
  expect(inFrame()).toEqual(["b", "c"]);
  expect(inFrame()).toEqual(["d"]);
  expect(inFrame()).toEqual([]);
});

test("a part that takes longer than a frame has for it comes alone, and every frame brings one", () => {
  const parts = createParts(() => hand);
  for (const name of ["long", "short"]) parts.add(partOf(name, name === "long" ? 50 : 0));
  hand = "speed";
  expect([inFrame(parts), inFrame(parts), inFrame(parts)]).toEqual([["long"], ["short", "long"], ["short", "long"]]);
});

test("what the hand holds, and what follows in every frame, come first in each and leave time for one more", () => {
  const parts = createParts(() => hand);
  for (const name of ["a", "b"]) parts.add(partOf(name, 0.2));
  parts.add(partOf("figure", 0.2, true));
  focused = parts.add(partOf("held", 0.2)).element;
  hand = "speed";
  expect(inFrame(parts)).toEqual(["held", "figure", "a"]);
  expect(inFrame(parts)).toEqual(["b", "held", "figure"]);
});

test("what waits while the hand rests follows in portions, and all at once when the hand is gone", () => {
  const parts = createParts(() => hand);
  const gathering = parts.gathered({} as Element, (_, __, tell) => {
    tell(false);
    return () => {};
  });
  for (const name of ["a", "b", "c"]) gathering.add(partOf(name, 0.7));
  hand = "speed";
  expect(inFrame(parts)).toEqual([]);
  vi.advanceTimersByTime(121);
  expect(taken()).toEqual(["a", "b"]);
  vi.advanceTimersByTime(20);
  expect(taken()).toEqual(["c"]);
  hand = undefined;
  parts.refresh(["speed"]);
  vi.advanceTimersByTime(121);
  expect(taken()).toEqual(["a", "b", "c"]);
});
