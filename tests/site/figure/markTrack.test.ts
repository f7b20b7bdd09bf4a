import fc from "fast-check";
import { expect, test } from "vitest";
import { placeOf, readTrack, valueNear } from "../../../site/figure/mark-track";

const bend = readTrack("10,0,100 20,100,100 40,100,0");

test("readTrack(words) reads values with their places, and leaves out what is none", () => {
  expect(bend).toEqual([
    { value: 10, x: 0, y: 100 },
    { value: 20, x: 100, y: 100 },
    { value: 40, x: 100, y: 0 },
  ]);
  expect(readTrack("")).toEqual([]);
  expect(readTrack("1,2 3,4,5,6 7,8,NaN 1,2,3")).toEqual([{ value: 1, x: 2, y: 3 }]);
});

test("placeOf(track, value) lies on the line between two places, and at the ends beyond them", () => {
  expect(placeOf(bend, 15)).toEqual({ x: 50, y: 100 });
  expect(placeOf(bend, 30)).toEqual({ x: 100, y: 50 });
  expect(placeOf(bend, 3)).toMatchObject({ x: 0, y: 100 });
  expect(placeOf(bend, 50)).toMatchObject({ x: 100, y: 0 });
});

test("valueNear(track, x, y) is the value at the nearest place of the line, wherever the hand is", () => {
  expect(valueNear(bend, 50, 180)).toBe(15);
  expect(valueNear(bend, 300, 50)).toBe(30);
  expect(valueNear(bend, -40, 90)).toBe(10);
  expect(valueNear(bend, 100, -70)).toBe(40);
});

test("valueNear(track, …) gives back any value whose place it is shown", () => {
  fc.assert(
    fc.property(fc.double({ min: 10, max: 40, noNaN: true }), (value) => {
      const { x, y } = placeOf(bend, value);
      expect(valueNear(bend, x, y)).toBeCloseTo(value, 9);
    }),
    { seed: 20260101, numRuns: 200 },
  );
});

test("valueNear(track, …) bears two speeds at one place", () => {
  expect(valueNear(readTrack("1,5,5 2,5,5 3,9,5"), 5, 5)).toBe(1);
});
