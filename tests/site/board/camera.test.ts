import fc from "fast-check";
import { expect, test } from "vitest";
import { panned, steady, toBoard, toDrawing, zoomed, zooms } from "../../../site/board/camera";

const camera = { x: 0.02, y: 0.2, scale: 800, height: 500 };
const width = 760;
const place = fc.record({ x: fc.double({ min: -1, max: 1, noNaN: true }), y: fc.double({ min: -1, max: 1, noNaN: true }) });

test("toBoard() undoes toDrawing(), and y runs up on the board", () => {
  const property = fc.property(place, (at) => {
    const back = toBoard(camera, width, toDrawing(camera, width, at));
    expect(back.x).toBeCloseTo(at.x, 12);
    expect(back.y).toBeCloseTo(at.y, 12);
  });
  fc.assert(property, { seed: 20260101, numRuns: 100 });
  expect(toDrawing(camera, width, { x: 0.02, y: 0.2 })).toEqual({ x: 380, y: 250 });
  expect(toDrawing(camera, width, { x: 0.02, y: 0.3 }).y).toBeCloseTo(170, 9);
});

test("zoomed(camera, fit, times, about) keeps the place under the pointer, and stays within the zooms allowed", () => {
  const property = fc.property(place, fc.double({ min: 0.01, max: 100, noNaN: true }), (about, times) => {
    const nearer = zoomed(camera, camera, times, about);
    const [before, after] = [toDrawing(camera, width, about), toDrawing(nearer, width, about)];
    expect(after.x).toBeCloseTo(before.x, 6);
    expect(after.y).toBeCloseTo(before.y, 6);
    const share = nearer.scale / camera.scale;
    expect(share).toBeGreaterThanOrEqual(zooms.least - 1e-12);
    expect(share).toBeLessThanOrEqual(zooms.most + 1e-12);
  });
  fc.assert(property, { seed: 20260101, numRuns: 100 });
});

test("panned(camera, by) carries the ground along with the hand", () => {
  const at = { x: 0.1, y: 0.1 };
  const [before, after] = [toDrawing(camera, width, at), toDrawing(panned(camera, { x: 30, y: -12 }), width, at)];
  expect(after.x - before.x).toBeCloseTo(30, 9);
  expect(after.y - before.y).toBeCloseTo(-12, 9);
});

test("steady(before, fit) holds the picture while little would be gained, and gives way to much", () => {
  expect(steady(undefined, camera)).toBe(camera);
  expect(steady(camera, { ...camera, scale: 810 })).toBe(camera);
  const wider = { ...camera, scale: 700 };
  expect(steady(camera, wider)).toBe(wider);
  const aside = { ...camera, x: 0.06 };
  expect(steady(camera, aside)).toBe(aside);
});
