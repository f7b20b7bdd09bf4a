import fc from "fast-check";
import { expect, test } from "vitest";
import * as drive from "../../../lib/drive";
import { degrees, gap, mm, plain } from "./plain";
import { beltRows } from "./published";

const twoPulleyLength = plain(drive.twoPulleyLength);
const twoPulleyWraps = plain(drive.twoPulleyWraps);
const centreDistanceForLength = plain(drive.centreDistanceForLength);
const beltRun = plain(drive.beltRun);
const pitchDiameter = plain(drive.pitchDiameter);
const pitchOf = (code: string) => (code === "14M" ? 0.014 : 0.008);
const diameters = ({ pitch_code, Z_small, Z_large }: { pitch_code: string; Z_small: number; Z_large: number }) => ({
  firstDiameter: pitchDiameter(pitchOf(pitch_code), Z_small),
  secondDiameter: pitchDiameter(pitchOf(pitch_code), Z_large),
});

// Exact tangent geometry; the table's lengths were checked against the perimeter of the convex hull of two circles.
test.each(beltRows("two-pulley-open"))(
  "twoPulleyLength, twoPulleyWraps and beltRun meet $id",
  ({ inputs, expected }) => {
    const drawn = { ...diameters(inputs), centreDistance: mm(inputs.C_mm) };
    expect(gap(twoPulleyLength(drawn), mm(expected.L_exact_mm))).toBeLessThan(1e-9);
    expect(degrees(twoPulleyWraps(drawn).smaller)).toBeCloseTo(expected.wrap_small_deg, 6);
    expect(degrees(twoPulleyWraps(drawn).larger)).toBeCloseTo(expected.wrap_large_deg, 6);

    const run = beltRun({
      travel: "clockwise",
      pulleys: [
        { name: "large", x: 0, y: 0, pitchRadius: drawn.secondDiameter / 2, contact: "toothed", teeth: inputs.Z_large },
        {
          name: "small",
          x: 0,
          y: mm(inputs.C_mm),
          pitchRadius: drawn.firstDiameter / 2,
          contact: "toothed",
          teeth: inputs.Z_small,
        },
      ],
    });
    const small = run.pulleys[1]!;
    expect(gap(run.length, mm(expected.L_exact_mm))).toBeLessThan(1e-9);
    expect(gap(run.spans[0]!.length, mm(expected.span_mm))).toBeLessThan(1e-9);
    expect(gap((inputs.Z_small * small.wrap) / (2 * Math.PI), expected.teeth_in_mesh_real)).toBeLessThan(1e-8);
    expect(small.teethInMesh).toBe(expected.teeth_in_mesh_floor);
  },
);

test.each(beltRows("centre-distance-from-length"))("centreDistanceForLength meets $id", ({ inputs, expected }) => {
  const pulleys = diameters(inputs);
  const at = (length: number) => centreDistanceForLength({ ...pulleys, length });
  expect(gap(at(mm(inputs.L_mm)), mm(expected.C_exact_mm))).toBeLessThan(1e-9);
  // The table's slope is a difference quotient: 1e-3 of it, as it says itself.
  const slope = (at(mm(inputs.L_mm) + 1e-4) - at(mm(inputs.L_mm) - 1e-4)) / 2e-4;
  expect(gap(slope, expected.dC_dL)).toBeLessThan(1e-3);
});

test("centreDistanceForLength undoes twoPulleyLength", () => {
  const size = fc.double({ min: 0.03, max: 0.4, noNaN: true });
  fc.assert(
    fc.property(size, size, fc.double({ min: 0, max: 2, noNaN: true }), (firstDiameter, secondDiameter, more) => {
      const centreDistance = (firstDiameter + secondDiameter) / 2 + more;
      const length = twoPulleyLength({ firstDiameter, secondDiameter, centreDistance });
      // A double carries 16 digits; the root is asked to 12 of the larger bracket end.
      expect(centreDistanceForLength({ firstDiameter, secondDiameter, length })).toBeCloseTo(centreDistance, 10);
    }),
    { seed: 20260101, numRuns: 300 },
  );
});
test("two pulleys refuse to overlap, by name", () => {
  expect(() => twoPulleyLength({ firstDiameter: 0.1, secondDiameter: 0.2, centreDistance: 0.08 })).toThrow(
    "twoPulleyLength: centreDistance is 0.08 m; it must be at least 0.15 m, half the sum of the pulley diameters",
  );
  expect(() => centreDistanceForLength({ firstDiameter: 0.1, secondDiameter: 0.2, length: 0.5 })).toThrow(
    "centreDistanceForLength: length is 0.5 m; pulleys that touch already need",
  );
});
