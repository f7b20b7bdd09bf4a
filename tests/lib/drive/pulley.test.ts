import { expect, test } from "vitest";
import * as drive from "../../../lib/drive";
import { gap, mm, plain } from "./plain";
import { beltRows } from "./published";

const profileOf = (code: string) => (code.endsWith("14M") ? drive.curvilinear14 : drive.curvilinear8);
const pitchDiameter = plain(drive.pitchDiameter);
const outsideDiameter = plain(drive.outsideDiameter);
const backIdlerPitchRadius = plain(drive.backIdlerPitchRadius);
const flatIdlerPitchRadius = plain(drive.flatIdlerPitchRadius);
const nearestBeltTeeth = plain(drive.nearestBeltTeeth);
const nearestStandardLength = plain(drive.nearestStandardLength);

// ISO 13050 geometry, as restated by a public page; ten digits computed. Tolerance: the digits of the table.
test.each(beltRows("pulley-diameter"))("pitchDiameter and outsideDiameter meet $id", ({ inputs, expected }) => {
  const profile = profileOf(inputs.pitch_code);
  expect(gap(pitchDiameter(profile.pitch, inputs.Z), mm(expected.pitch_diameter_mm))).toBeLessThan(1e-9);
  expect(gap(outsideDiameter(profile, inputs.Z), mm(expected.outside_diameter_mm))).toBeLessThan(1e-9);
});

// ISO 13050 tables 1 and 2 as restated by a public page.
test.each(beltRows("tooth-thickness"))("toothProfiles hold the section of $id", ({ inputs, expected }) => {
  const profile = drive.toothProfiles.find(({ name }) => name === inputs.profile)!;
  expect(profile.thickness).toBeCloseTo(mm(expected.total_thickness_mm), 12);
  expect(profile.toothHeight).toBeCloseTo(mm(expected.tooth_height_mm), 12);
  expect(profile.pitchLineDistance).toBeCloseTo(mm(expected.a_mm), 12);
  expect(backIdlerPitchRadius(profile, 0.03)).toBeCloseTo(0.03 + mm(expected.back_to_pitch_line_mm), 12);
});
test.each(beltRows("standard-widths"))("toothProfiles hold the widths of $id", ({ inputs, expected }) => {
  expect(profileOf(inputs.pitch_code).standardWidths).toEqual(expected.widths_mm.map(mm));
});

// ISO 13050 length table from memory: plausibility, not truth.
test.each(beltRows("standard-lengths"))("toothProfiles hold the remembered lengths of $id, in whole teeth", (row) => {
  const profile = profileOf(row.inputs.pitch_code);
  expect(profile.standardLengths).toEqual(row.expected.pitch_lengths_mm.map(mm));
  expect(profile.standardLengths.map((length) => nearestBeltTeeth(length, profile.pitch))).toEqual(row.expected.teeth);
});

test("a belt is as thick between two idlers as its section says", () => {
  for (const profile of drive.toothProfiles) {
    const both = backIdlerPitchRadius(profile, 0.03) + flatIdlerPitchRadius(profile, 0.02);
    expect(both - 0.05).toBeCloseTo(profile.thickness, 12);
  }
});
test("nearestStandardLength(length, list) takes the nearest, of two the shorter, and keeps the list's order", () => {
  const list = [0.96, 0.8, 0.88];
  expect(nearestStandardLength(0.93, list)).toBe(0.96);
  expect(nearestStandardLength(0.5, list)).toBe(0.8);
  expect(nearestStandardLength(0.75, [1, 0.5])).toBe(0.5);
  expect(list).toEqual([0.96, 0.8, 0.88]);
});
test("pitchDiameter(pitch, teeth) refuses parts of a tooth and NaN", () => {
  expect(() => pitchDiameter(0.008, 30.5)).toThrow("pitchDiameter: teeth is 30.5; it must be a whole number");
  expect(() => pitchDiameter(0.008, 4)).toThrow("pitchDiameter: teeth is 4; it must be 6 to 400");
  expect(() => pitchDiameter(Number.NaN, 30)).toThrow("pitchDiameter: pitch is NaN m");
  expect(() => nearestStandardLength(1, [])).toThrow("list is empty");
});
