import { afterEach, beforeEach, expect, test, vi } from "vitest";
import { restTimes, whenAtRest } from "../../site/page/rest";

beforeEach(() => vi.useFakeTimers());
afterEach(() => vi.useRealTimers());

function watched(work = () => {}) {
  const told: (boolean | "work")[] = [];
  const rest = whenAtRest(
    () => {
      told.push("work");
      work();
    },
    (long) => told.push(long),
  );
  return { told, rest };
}

test("whenAtRest(work) works once, after the last of many changes", () => {
  const { told, rest } = watched();
  for (let i = 0; i < 10; i += 1) {
    rest.ask();
    vi.advanceTimersByTime(50);
  }
  expect(told).toEqual([true]);
  vi.advanceTimersByTime(restTimes.begun - 50);
  expect(told).toEqual([true, "work", false]);
  vi.advanceTimersByTime(1000);
  expect(told).toHaveLength(3);
});

test("whenAtRest(work) tells a wait once, counted from the first change", () => {
  const { told, rest } = watched();
  rest.ask();
  vi.advanceTimersByTime(restTimes.told - 1);
  rest.ask();
  expect(told).toEqual([]);
  vi.advanceTimersByTime(1);
  expect(told).toEqual([true]);
  rest.ask();
  vi.advanceTimersByTime(restTimes.begun);
  expect(told).toEqual([true, "work", false]);
});

test("whenAtRest(work) ends the wait even if the work fails, and begins anew at the next change", () => {
  const { told, rest } = watched(() => {
    throw new Error("no picture");
  });
  rest.ask();
  expect(() => vi.advanceTimersByTime(restTimes.begun)).toThrow("no picture");
  expect(told.at(-1)).toBe(false);
  rest.ask();
  expect(() => vi.advanceTimersByTime(restTimes.begun)).toThrow("no picture");
  expect(told.filter((each) => each === "work")).toHaveLength(2);
});
