import { expect, test } from "vitest";
import * as drive from "../../../lib/drive";
import { gap, plain, radians } from "./plain";
import { beltRows } from "./published";

const grooveFriction = plain(drive.grooveFriction);
const tensionRatioLimit = plain(drive.tensionRatioLimit);
const leastSlackTension = plain(drive.leastSlackTension);
const frictionBeltPower = plain(drive.frictionBeltPower);
const greatestPull = plain(drive.greatestPull);
const frictionInUse = plain(drive.frictionInUse);
const centrifugalTension = plain(drive.centrifugalTension);
const twoPulleyWraps = plain(drive.twoPulleyWraps);
const beltSpeed = plain(drive.beltSpeed);
const ribbedDriveRatio = plain(drive.ribbedDriveRatio);

test.each(beltRows("euler-belt"))(
  "grooveFriction, leastSlackTension and frictionBeltPower meet $id",
  ({ inputs, expected }) => {
    const friction = grooveFriction(inputs.mu, radians(inputs.groove_angle_deg));
    const contact = { friction, wrap: radians(inputs.wrap_deg) };
    const centrifugal = centrifugalTension(inputs.mass_kgpm, inputs.v_mps);
    const tensions = { ...contact, tightTension: inputs.T_tight_N, centrifugalTension: centrifugal };
    expect(gap(friction, expected.mu_eff)).toBeLessThan(1e-8);
    expect(gap(tensionRatioLimit(contact), expected.ratio_limit)).toBeLessThan(1e-8);
    expect(gap(centrifugal, expected.Tc_N)).toBeLessThan(1e-9);
    expect(gap(leastSlackTension(tensions), expected.T_slack_min_N)).toBeLessThan(1e-8);
    expect(gap(frictionBeltPower({ ...tensions, beltSpeed: inputs.v_mps }), expected.P_max_W)).toBeLessThan(1e-8);
  },
);

test.each(beltRows("initial-tension"))("greatestPull meets $id", ({ inputs, expected }) => {
  const pull = greatestPull({ friction: inputs.f, wrap: inputs.wrap_rad, installationTension: inputs.Fi });
  expect(gap(pull, expected.F1_minus_F2_max)).toBeLessThan(1e-8);
});

// Shigley, Mechanical Engineering Design, ch. 17, first flat-belt example, from memory. The book's numbers, where
// printed, are rounded to three digits; the row's are computed from its inputs.
test.each(beltRows("flat-belt-textbook"))("the flat belt of $id, in SI and back", ({ inputs, expected }) => {
  const inch = 0.0254;
  const poundForce = 0.45359237 * 9.80665;
  const pulleys = {
    firstDiameter: inputs.d_in * inch,
    secondDiameter: inputs.D_in * inch,
    centreDistance: inputs.C_in * inch,
  };
  const wrap = twoPulleyWraps(pulleys).smaller;
  expect(gap(wrap, expected.wrap_rad)).toBeLessThan(1e-8);
  const speed = beltSpeed(pulleys.firstDiameter, inputs.n_rpm / 60);
  expect(gap((speed / 0.3048) * 60, expected.V_ftmin)).toBeLessThan(1e-8);
  const massPerLength = (inputs.gamma_lbf_in3 * 0.45359237 * inputs.b_in * inputs.thickness_in) / inch;
  // The book takes 32.17 ft/s² for gravity: 1.4e-4 below the standard value that turns pounds-force into newtons.
  const centrifugal = centrifugalTension(massPerLength, speed);
  expect(gap(centrifugal / poundForce, expected.Fc_lbf)).toBeLessThan(2e-4);
  const tight = expected.F1_lbf * poundForce;
  // The book's 63,025 hp·rev/min to lbf·in is 5e-6 from 33,000 · 12/(2π), and 550 ft·lbf/s is a horsepower.
  const torque = (inputs.H_hp * inputs.Ks * 550 * 12) / (2 * Math.PI * (inputs.n_rpm / 60));
  expect(gap(torque, expected.T_lbf_in)).toBeLessThan(1e-5);
  const slack = tight - plain(drive.effectivePull)(torque * poundForce * inch, pulleys.firstDiameter);
  expect(gap(slack / poundForce, expected.F2_lbf)).toBeLessThan(1e-5);
  expect(gap(((tight + slack) / 2 - centrifugal) / poundForce, expected.Fi_lbf)).toBeLessThan(2e-5);
  const used = frictionInUse({ tightTension: tight, slackTension: slack, centrifugalTension: centrifugal, wrap });
  expect(gap(used, expected.f_developed)).toBeLessThan(2e-5);
});

test("a back contact is flat: grooveFriction(μ, π) is μ", () => {
  expect(grooveFriction(0.3, Math.PI)).toBeCloseTo(0.3, 12);
  expect(tensionRatioLimit({ friction: 0.3, wrap: 0 })).toBe(1);
});
test("frictionInUse at the least slack tension is all the friction there is", () => {
  const contact = { friction: 0.9, wrap: 2.6, centrifugalTension: 60 };
  const slackTension = leastSlackTension({ ...contact, tightTension: 800 });
  expect(frictionInUse({ ...contact, tightTension: 800, slackTension })).toBeCloseTo(0.9, 12);
});
test("ribbedDriveRatio(…) of equal pulleys is 1 less the slip, and the cord's offset draws ratios toward 1", () => {
  expect(ribbedDriveRatio({ driverDiameter: 0.1, drivenDiameter: 0.1, cordOffset: 0.0015, slip: 0.02 })).toBeCloseTo(
    0.98,
    12,
  );
  const at = (cordOffset: number) =>
    ribbedDriveRatio({ driverDiameter: 0.18, drivenDiameter: 0.06, cordOffset, slip: 0 });
  expect(at(0)).toBeCloseTo(3, 12);
  expect(at(0.0015)).toBeLessThan(3);
});
test("friction belts refuse a tension that centrifugal tension has taken up", () => {
  const contact = { friction: 0.9, wrap: 2.6, centrifugalTension: 60 };
  expect(() => leastSlackTension({ ...contact, tightTension: 60 })).toThrow(
    "leastSlackTension: tightTension is 60 N; it must exceed the centrifugal tension, 60 N",
  );
  expect(() => frictionInUse({ ...contact, tightTension: 90, slackTension: 100 })).toThrow(
    "tightTension is 90 N; it must be at least 100 N",
  );
  expect(() => grooveFriction(0.3, 4)).toThrow("groove is 4 rad");
});
