import { describe, expect, test } from "vitest";
import * as drive from "../../../lib/drive";
import { randomLayouts } from "./layouts";
import { gap, mm, plain } from "./plain";
import { beltRows } from "./published";

const beltRun = plain(drive.beltRun);
const tensionerFit = plain(drive.tensionerFit);
const tensionerPosition = plain(drive.tensionerPosition);
const beltsNear = plain(drive.beltsNear);

// Root of the exact length of two pulleys.
test.each(beltRows("centre-distance-from-length"))("tensionerFit(…) meets the centre distance of $id", (row) => {
  const { inputs, expected } = row;
  const pitch = inputs.pitch_code === "8M" ? mm(8) : mm(14);
  const radius = (teeth: number) => (teeth * pitch) / (2 * Math.PI);
  const layout = {
    travel: "clockwise" as const,
    pulleys: [
      { name: "crank", x: 0, y: 0, pitchRadius: radius(inputs.Z_small), contact: "toothed" as const },
      { name: "blower", x: mm(expected.C_exact_mm) - 0.02, y: 0, pitchRadius: radius(inputs.Z_large), contact: "toothed" as const },
    ],
  };
  const fit = { layout, run: beltRun(layout), pulley: "blower", motion: { direction: 0 }, reach: 0.1 };
  const { travel, takeUp } = tensionerFit({ ...fit, beltLength: mm(inputs.L_mm) });
  expect(gap(travel + mm(expected.C_exact_mm) - 0.02, mm(expected.C_exact_mm))).toBeLessThan(1e-8);
  // The table's last column is dC/dL to four digits.
  expect(gap(1 / takeUp, expected.dC_dL)).toBeLessThan(1e-3);
});

describe("over random layouts", () => {
  const idlers = randomLayouts(300).flatMap((layout) => {
    const idler = layout.pulleys.find(({ contact }) => contact === "back");
    return idler === undefined ? [] : [{ layout, idler, run: beltRun(layout) }];
  });

  test("tensionerFit(…) closes the run on a belt a little longer, on a slide and on an arm alike", () => {
    let closed = 0;
    for (const { layout, idler, run } of idlers) {
      const inward = Math.atan2(-idler.y, -idler.x);
      const beltLength = run.length + 0.004;
      const slide = { layout, run, pulley: idler.name, motion: { direction: inward }, reach: 0.06, beltLength };
      // A pivot square to the slide: both set out in the same direction.
      const pivot = { x: idler.x + 0.15 * Math.sin(inward), y: idler.y - 0.15 * Math.cos(inward) };
      for (const fit of [slide, { ...slide, motion: { pivot } }]) {
        try {
          const found = tensionerFit(fit);
          expect(found.run.length).toBeCloseTo(beltLength, 9);
          if ("pivot" in fit.motion) {
            const moved = found.run.pulleys.find(({ name }) => name === idler.name)!;
            expect(Math.hypot(moved.x - pivot.x, moved.y - pivot.y)).toBeCloseTo(0.15, 12);
          }
          closed++;
        } catch (error) {
          // Some idlers cannot be pressed in so far: then the words say so.
          expect((error as Error).message).toMatch(/^tensionerFit: beltLength is [\d.]+ m; moving .* came to/);
        }
      }
    }
    expect(closed).toBeGreaterThan(idlers.length);
  });

  test("tensionerFit(…) stands where tensionerPosition says, when that lies on the near side of the least length", () => {
    let compared = 0;
    for (const { layout, idler, run } of idlers.slice(0, 60)) {
      const direction = Math.atan2(-idler.y, -idler.x);
      const reach = 0.03;
      const beltLength = run.length + 0.001;
      try {
        const slow = tensionerPosition({ layout, pulley: idler.name, direction, travel: [-reach, reach], beltLength });
        const quick = tensionerFit({ layout, run, pulley: idler.name, motion: { direction }, reach, beltLength });
        if (quick.takeUp * slow.takeUp <= 0) continue;
        expect(quick.travel).toBeCloseTo(slow.travel, 8);
        compared++;
      } catch (error) {
        expect(error).toBeInstanceOf(RangeError);
      }
    }
    expect(compared).toBeGreaterThan(20);
  });

  test("takeUp is the slope of the length along an arm's circle", () => {
    for (const { layout, idler, run } of idlers.slice(0, 40)) {
      const pivot = { x: idler.x + 0.1, y: idler.y + 0.05 };
      const fit = { layout, run, pulley: idler.name, motion: { pivot }, reach: 0.05 };
      const { takeUp } = tensionerFit({ ...fit, beltLength: run.length });
      const lengthAt = (distance: number) => {
        const angle = distance / Math.hypot(0.1, 0.05);
        const [cos, sin] = [Math.cos(angle), Math.sin(angle)];
        const place = { x: pivot.x - cos * 0.1 + sin * 0.05, y: pivot.y - sin * 0.1 - cos * 0.05 };
        return beltRun({
          ...layout,
          pulleys: layout.pulleys.map((pulley) => (pulley.name === idler.name ? { ...pulley, ...place } : pulley)),
        }).length;
      };
      try {
        // Central difference over 2 × 10 µm, good to some 1e-6.
        expect(takeUp).toBeCloseTo((lengthAt(1e-5) - lengthAt(-1e-5)) / 2e-5, 5);
      } catch (error) {
        if (!(error instanceof RangeError)) throw error; // an idler that only just touches
      }
    }
  });
});

test("beltsNear(section, length): the nearest whole teeth, and the standard belts on both sides", () => {
  // 14 mm: 1190, 1400 and 1610 stand in the list; 101 teeth are 1414 mm.
  expect(beltsNear(drive.curvilinear14, mm(1412)).map(({ length, standard }) => [Math.round(1000 * length), standard])).toEqual([
    [1400, true],
    [1414, false],
    [1610, true],
  ]);
  expect(beltsNear(drive.curvilinear14, mm(1402)).map(({ length }) => Math.round(1000 * length))).toEqual([1400, 1610]);
  expect(beltsNear(drive.curvilinear8, mm(9000)).map(({ standard }) => standard)).toEqual([true, false]);
  expect(beltsNear(drive.ribbedPK, 1.4)).toEqual([]);
  expect(() => beltsNear(drive.curvilinear8, 0)).toThrow("length is 0 m");
});
