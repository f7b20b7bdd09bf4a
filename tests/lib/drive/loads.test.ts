import { describe, expect, test } from "vitest";
import * as drive from "../../../lib/drive";
import { randomLayouts } from "./layouts";
import { gap, mm, plain } from "./plain";
import { beltRows } from "./published";

const beltRun = plain(drive.beltRun);
const runningTensions = plain(drive.runningTensions);
const restTensionNeeded = plain(drive.restTensionNeeded);
const installationTension = plain(drive.installationTension);
const beltWidthNeeded = plain(drive.beltWidthNeeded);
const standardWidth = plain(drive.standardWidth);
const beltPowerRating = plain(drive.beltPowerRating);
const toothLoad = plain(drive.toothLoad);
const grips = plain(drive.grips);
const deflectionForce = plain(drive.deflectionForce);
const bending = plain(drive.bending);
const meanCurrent = plain(drive.meanCurrent);
const hydraulicHeat = plain(drive.hydraulicHeat);

describe("over random layouts and loads", () => {
  const cases = randomLayouts(300).map((layout, i) => {
    const run = beltRun(layout);
    const driven = run.pulleys.slice(1).filter(({ contact }) => contact === "toothed");
    const torques = Object.fromEntries(driven.map(({ name }, j) => [name, 5 + ((7 * i + 13 * j) % 40)]));
    const idler = run.pulleys.find(({ contact }) => contact === "back");
    return { run, torques, restTension: 300 + (i % 7) * 100, centrifugalTension: (i % 5) * 30, idler };
  });

  test("runningTensions(held): every pulley is in equilibrium, whichever way the belt is held", () => {
    for (const { idler, ...held } of cases) {
      for (const sprung of [undefined, idler?.name]) {
        const { spans, effectivePull } = runningTensions({ ...held, ...(sprung !== undefined && { sprung }) });
        held.run.pulleys.forEach(({ name, pitchRadius }, i) => {
          const rise = (spans[i]! - spans.at(i - 1)!) * pitchRadius;
          expect(rise).toBeCloseTo(i === 0 ? -effectivePull * pitchRadius : (held.torques[name] ?? 0), 8);
        });
      }
    }
  });

  test("locked centres keep the mean tension: installationTension gives back what was set", () => {
    let tight = 0;
    for (const { idler: _, ...held } of cases) {
      const { spans } = runningTensions(held);
      if (Math.min(...spans) <= 0) continue;
      tight++;
      expect(installationTension({ run: held.run, spans, takeUp: "fixed" })).toBeCloseTo(held.restTension, 8);
    }
    expect(tight).toBeGreaterThan(100);
  });

  test("a sprung pulley keeps the force on its hub, at rest and running", () => {
    let found = 0;
    for (const { idler, ...held } of cases) {
      if (idler === undefined) continue;
      const { spans } = runningTensions({ ...held, sprung: idler.name });
      const at = held.run.pulleys.findIndex(({ name }) => name === idler.name);
      expect(spans[at]).toBeCloseTo(held.restTension + held.centrifugalTension, 9);
      expect(spans.at(at - 1)).toBeCloseTo(held.restTension + held.centrifugalTension, 9);
      found++;
    }
    expect(found).toBeGreaterThan(80);
  });

  test("restTensionNeeded(held, least) leaves just that in the loosest span: no span is ever slack", () => {
    for (const { idler: _, ...held } of cases) {
      const restTension = restTensionNeeded(held, 40);
      const { pressing, spans, loosest } = runningTensions({ ...held, restTension });
      expect(pressing).toBeCloseTo(40, 8);
      expect(Math.min(...spans)).toBe(spans[loosest]);
      expect(spans[loosest]! - held.centrifugalTension).toBeCloseTo(40, 8);
    }
  });
});

test("runningTensions(held) tells a loose span rather than refusing it, and refuses names that are not there", () => {
  const run = beltRun({
    travel: "clockwise",
    pulleys: [
      { name: "crank", x: 0, y: 0, pitchRadius: 0.05, contact: "toothed" },
      { name: "blower", x: 0, y: 0.3, pitchRadius: 0.05, contact: "toothed" },
    ],
  });
  const held = { run, torques: { blower: 40 }, restTension: 300, centrifugalTension: 50 };
  // By hand: pull 40/0.05 = 800 N, half of it off the set tension: 300 − 400 = −100, and 50 more for the inertia.
  const { pressing, loosest, effectivePull } = runningTensions(held);
  expect([pressing, effectivePull]).toEqual([expect.closeTo(-150, 9), expect.closeTo(800, 9)]);
  expect(loosest).toBe(0);
  expect(() => runningTensions({ ...held, sprung: "idler" })).toThrow("no pulley of the run is called idler");
  expect(() => runningTensions({ ...held, restTension: 0 })).toThrow("restTension is 0 N");
});

// ISO 5295 form; exponent and mesh factor from memory.
test.each(beltRows("rating-shape"))("beltWidthNeeded(…) gives back the width that $id rates", ({ inputs, expected }) => {
  const maker = {
    allowablePull: inputs.Ta_base_width_N,
    baseWidth: mm(inputs.base_width_mm),
    baseMassPerLength: inputs.mass_base_width_kgpm,
    beltSpeed: inputs.v_mps,
    teethInMesh: inputs.z_m,
  };
  const pull = expected.P_W / inputs.v_mps;
  const width = beltWidthNeeded({ ...maker, section: drive.curvilinear14, pull });
  expect(gap(width, mm(inputs.width_mm))).toBeLessThan(1e-7);
  expect(gap(beltPowerRating({ ...maker, width }), expected.P_W)).toBeLessThan(1e-6);
});

test("beltWidthNeeded(…) grows with the pull, in proportion for ribs, and says where no width helps", () => {
  const maker = { allowablePull: 500, baseWidth: mm(20), baseMassPerLength: 0.1, beltSpeed: 20, teethInMesh: 8 };
  const ribbed = (pull: number) => beltWidthNeeded({ ...maker, section: drive.ribbedPK, pull });
  // By hand: 20 mm carries 500 − 0.1 · 400 = 460 N.
  expect(ribbed(460)).toBeCloseTo(mm(20), 9);
  expect(ribbed(920)).toBeCloseTo(mm(40), 9);
  expect(ribbed(0)).toBe(0);
  const toothed = (pull: number) => beltWidthNeeded({ ...maker, section: drive.curvilinear8, pull });
  expect(toothed(920)).toBeLessThan(mm(40));
  expect(toothed(920)).toBeGreaterThan(toothed(460));
  expect(() => beltWidthNeeded({ ...maker, section: drive.ribbedPK, pull: 100, beltSpeed: 80 })).toThrow(
    "with 640 N of centrifugal tension on 500 N allowed at the base width no belt carries it",
  );
});

// Widths of ISO 13050 as a public page restates them.
test("standardWidth(section, width) is the next that is sold", () => {
  expect(standardWidth(drive.curvilinear8, mm(20))).toBe(mm(20));
  expect(standardWidth(drive.curvilinear8, mm(20.1))).toBe(mm(30));
  expect(standardWidth(drive.curvilinear14, mm(100))).toBe(mm(115));
  expect(standardWidth(drive.curvilinear14, mm(171))).toBeUndefined();
  expect(standardWidth(drive.ribbedPK, mm(14))).toBeCloseTo(mm(4 * 3.56), 12);
});

test("toothLoad(…) shares the pull alike, whichever way it goes", () => {
  expect(toothLoad({ pull: -1200, teethInMesh: 10 })).toBe(120);
  expect(() => toothLoad({ pull: 100, teethInMesh: 0 })).toThrow("teethInMesh is 0; it must be at least 1");
});

// Euler's belt: (T₁ − T_c)/(T₂ − T_c) = e^(μ φ) at the limit of slip, in the table for half a turn.
test.each(beltRows("euler-belt").slice(0, 1))("grips(…): at the tensions of $id the belt is about to slip", (row) => {
  const { inputs, expected } = row;
  const run = beltRun({
    travel: "clockwise",
    pulleys: [
      { name: "crank", x: 0, y: 0, pitchRadius: 0.05, contact: "toothed" },
      { name: "fan", x: 0, y: 0.3, pitchRadius: 0.05, contact: "toothed" },
    ],
  });
  const belt = {
    run,
    centrifugalTension: expected.Tc_N,
    friction: inputs.mu,
    groove: (inputs.groove_angle_deg * Math.PI) / 180,
  };
  for (const { pull, slipsAt } of grips({ ...belt, spans: [expected.T_slack_min_N, inputs.T_tight_N] })) {
    expect(gap(pull, slipsAt)).toBeLessThan(1e-6);
  }
  for (const { pull, slipsAt } of grips({ ...belt, spans: [expected.T_slack_min_N + 5, inputs.T_tight_N] })) {
    expect(pull).toBeLessThan(slipsAt);
  }
  expect(grips({ ...belt, spans: [expected.Tc_N - 1, 500] })[0]!.slipsAt).toBe(0);
});

test("grips(…): the back of a ribbed belt holds as a flat belt does", () => {
  const run = beltRun({
    travel: "clockwise",
    pulleys: [
      { name: "crank", x: 0, y: 0, pitchRadius: 0.08, contact: "toothed" },
      { name: "pump", x: -0.1, y: 0.25, pitchRadius: 0.04, contact: "back" },
      { name: "fan", x: 0, y: 0.5, pitchRadius: 0.08, contact: "toothed" },
    ],
  });
  const [, pump] = grips({ run, spans: [300, 340, 600], centrifugalTension: 20, friction: 0.3, groove: 0.7 });
  const { wrap } = run.pulleys[1]!;
  expect(pump!.slipsAt).toBeCloseTo(280 * (Math.exp(0.3 * wrap) - 1), 9);
  expect(pump!.pull).toBe(40);
});

test("deflectionForce(…) is the statics of a string, and nearly 4 T δ/l for a small push", () => {
  // By hand: a 3-4-5 triangle on each side, T = 500 N: 2 · 500 · 3/5 = 600 N.
  expect(deflectionForce({ tension: 500, spanLength: 0.8, deflection: 0.3 })).toBeCloseTo(600, 9);
  expect(gap(deflectionForce({ tension: 640, spanLength: 0.32, deflection: 0.005 }), 640 / 16)).toBeLessThan(5e-4);
  expect(deflectionForce({ tension: 640, spanLength: 0.32, deflection: 0 })).toBe(0);
});

test("bending(run, beltSpeed) counts every pulley once a turn of the belt, and finds the sharpest", () => {
  const run = beltRun({
    travel: "clockwise",
    pulleys: [
      { name: "crank", x: 0, y: 0, pitchRadius: 0.08, contact: "toothed" },
      { name: "idler", x: -0.1, y: 0.25, pitchRadius: 0.03, contact: "back" },
      { name: "fan", x: 0, y: 0.5, pitchRadius: 0.08, contact: "toothed" },
    ],
  });
  const bent = bending(run, 10 * run.length);
  expect(bent.bends).toBeCloseTo(30, 9);
  expect(bent.backBends).toBeCloseTo(10, 9);
  expect(bent).toMatchObject({ sharpest: "idler", smallestDiameter: 0.06 });
});

test("meanCurrent(loads) and hydraulicHeat(shaft, useful) refuse what cannot be", () => {
  expect(meanCurrent([])).toBe(0);
  expect(() => meanCurrent([{ current: 5, share: 1.2 }])).toThrow("share is 1.2; it must be 0 to 1");
  expect(hydraulicHeat(2777.778, 0)).toBe(2777.778);
  expect(() => hydraulicHeat(100, 101)).toThrow("usefulPower is 101 W; the pump's shaft takes only 100 W");
});
