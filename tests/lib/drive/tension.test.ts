import { describe, expect, test } from "vitest";
import * as drive from "../../../lib/drive";
import { randomLayouts } from "./layouts";
import { gap, mm, type Plain, plain } from "./plain";
import { beltRows } from "./published";

const beltRun = plain(drive.beltRun);
const spanTensions = plain(drive.spanTensions);
const hubLoads = plain(drive.hubLoads);
const beltSpeed = plain(drive.beltSpeed);
const centrifugalTension = plain(drive.centrifugalTension);
const effectivePull = plain(drive.effectivePull);
const spanFrequency = plain(drive.spanFrequency);
const tensionFromFrequency = plain(drive.tensionFromFrequency);
const teethInMeshFactor = plain(drive.teethInMeshFactor);
const widthFactor = plain(drive.widthFactor);
const beltPowerRating = plain(drive.beltPowerRating);
const installationTension = plain(drive.installationTension);
const slackTensionUnderLoad = plain(drive.slackTensionUnderLoad);

// Vector sums of span pulls; a running hub carries the tensions less m′v².
test.each(beltRows("hub-load"))("spanTensions and hubLoads meet $id", ({ inputs, expected }) => {
  const layout: Plain<drive.BeltLayout> = {
    travel: "counterclockwise",
    pulleys: inputs.pulleys.map(
      (pulley: { x_mm: number; y_mm: number; pitch_radius_mm: number; contact: string }, i: number) => ({
        name: `${i}`,
        x: mm(pulley.x_mm),
        y: mm(pulley.y_mm),
        pitchRadius: mm(pulley.pitch_radius_mm),
        contact: pulley.contact === "inside" ? ("toothed" as const) : ("back" as const),
      }),
    ),
  };
  const run = beltRun(layout);
  const {
    spans,
    crankTorque,
    effectivePull: pull,
  } = spanTensions({ run, torques: inputs.load_torque_Nm, slackTension: inputs.slack_tension_N });
  spans.forEach((tension, i) => {
    expect(gap(tension, expected.span_tensions_N[i])).toBeLessThan(1e-8);
  });
  const load = inputs.load_torque_Nm["1"];
  expect(gap(effectivePull(load, 2 * layout.pulleys[1]!.pitchRadius), pull)).toBeLessThan(1e-12);
  // Power in equals power out: torque times speed at the crank and at the unit.
  const speed = inputs.driver_rpm / 60;
  expect(
    gap(crankTorque * speed, load * speed * (layout.pulleys[0]!.pitchRadius / layout.pulleys[1]!.pitchRadius)),
  ).toBeLessThan(1e-12);

  const velocity = beltSpeed(2 * layout.pulleys[0]!.pitchRadius, speed);
  expect(gap(velocity, expected.belt_speed_mps)).toBeLessThan(1e-8);
  const centrifugal = centrifugalTension(inputs.belt_mass_kgpm, velocity);
  expect(gap(centrifugal, expected.centrifugal_tension_N)).toBeLessThan(1e-8);
  const cases = [
    { loads: hubLoads({ run, spans }), table: expected.hub_force_from_span_tension_N },
    { loads: hubLoads({ run, spans, centrifugalTension: centrifugal }), table: expected.hub_force_less_centrifugal_N },
  ];
  for (const { loads, table } of cases) {
    loads.forEach(({ x, y, magnitude }, i) => {
      expect(gap(x, table[i][0])).toBeLessThan(1e-6);
      expect(gap(y, table[i][1])).toBeLessThan(1e-6);
      expect(magnitude).toBeCloseTo(Math.hypot(x, y), 9);
    });
  }
});

describe("over random layouts and loads", () => {
  const loaded = randomLayouts(300).map((layout, i) => {
    const run = beltRun(layout);
    const torques = Object.fromEntries(
      run.pulleys
        .slice(1)
        .flatMap(({ name, contact }, j) => (contact === "toothed" ? [[name, 5 + ((7 * i + 13 * j) % 40)]] : [])),
    );
    return { run, torques, ...spanTensions({ run, torques, slackTension: 250 }) };
  });

  test("every pulley is in equilibrium: the difference of its tensions at its radius is its torque", () => {
    for (const { run, torques, spans, crankTorque } of loaded) {
      run.pulleys.forEach(({ name, pitchRadius }, i) => {
        const torque = (spans[i]! - spans.at(i - 1)!) * pitchRadius;
        expect(torque).toBeCloseTo(i === 0 ? -crankTorque : (torques[name] ?? 0), 9);
      });
      expect(spans[0]).toBe(250);
      expect(Math.min(...spans)).toBe(250);
    }
  });

  test("the pulls on all hubs add to nothing, in force and in moment about the origin", () => {
    for (const { run, torques, spans, crankTorque } of loaded) {
      const loads = hubLoads({ run, spans, centrifugalTension: 80 as drive.HubLoad["x"] });
      expect(loads.reduce((sum, { x }) => sum + x, 0)).toBeCloseTo(0, 8);
      expect(loads.reduce((sum, { y }) => sum + y, 0)).toBeCloseTo(0, 8);
      // Belt and pulleys as one body: moments of hub pulls and of the shafts' torques balance, too.
      const turn = Math.sign(
        run.pulleys.reduce(
          (area, p, i) => area + cross(p.start, p.end) + cross(p.end, run.pulleys[(i + 1) % run.pulleys.length]!.start),
          0,
        ),
      );
      const moments = run.pulleys.reduce((sum, { x, y, name, sense }, i) => {
        const shaft = i === 0 ? -crankTorque : sense * (torques[name] ?? 0);
        return sum + x * loads[i]!.y - y * loads[i]!.x + turn * shaft;
      }, 0);
      expect(moments).toBeCloseTo(0, 8);
    }
  });

  test("slackTensionUnderLoad undoes installationTension with fixed centres", () => {
    for (const { run, torques, spans } of loaded) {
      const atRest = installationTension({ run, spans, takeUp: "fixed" });
      expect(slackTensionUnderLoad({ run, torques, installationTension: atRest })).toBeCloseTo(250, 8);
      expect(atRest).toBeGreaterThan(Math.min(...spans) - 1e-9);
      expect(atRest).toBeLessThan(Math.max(...spans) + 1e-9);
    }
  });
});

const cross = (a: drive.Point, b: drive.Point) => a.x * b.y - a.y * b.x;

test("installationTension on a loaded tensioner is less by the centrifugal tension", () => {
  const run = beltRun({
    travel: "clockwise",
    pulleys: [
      { name: "crank", x: 0, y: 0, pitchRadius: 0.05, contact: "toothed" },
      { name: "blower", x: 0, y: 0.3, pitchRadius: 0.05, contact: "toothed" },
    ],
  });
  const running = { run, spans: [400, 1200], centrifugalTension: 90 };
  expect(installationTension({ ...running, takeUp: "fixed" })).toBeCloseTo(800, 9);
  expect(installationTension({ ...running, takeUp: "loaded" })).toBeCloseTo(710, 9);
  expect(() => slackTensionUnderLoad({ run, torques: { blower: 40 }, installationTension: 399 })).toThrow(
    "installationTension is 399 N; it must be above 400 N",
  );
  expect(() => spanTensions({ run, torques: { pump: 1 }, slackTension: 300 })).toThrow(
    "torque of pump has no pulley in the run",
  );
  expect(() => spanTensions({ run, torques: { crank: 1 }, slackTension: 300 })).toThrow("crank drives the belt");
  expect(() => spanTensions({ run, torques: { blower: -20 }, slackTension: 300 })).toThrow(
    "tension from blower to crank is -100 N; slackTension must exceed 400 N",
  );
  expect(() => hubLoads({ run, spans: [300] })).toThrow("spans are 1; the run has 2");
});

test.each(beltRows("span-frequency"))("spanFrequency and tensionFromFrequency meet $id", ({ inputs, expected }) => {
  const span = { massPerLength: inputs.mass_per_m_kgpm, spanLength: inputs.span_m };
  expect(gap(spanFrequency({ ...span, tension: inputs.tension_N }), expected.f1_Hz)).toBeLessThan(1e-8);
  expect(
    gap(tensionFromFrequency({ ...span, frequency: expected.f1_Hz }), expected.tension_from_f_check_N),
  ).toBeLessThan(1e-8);
});
test("spanFrequency falls as the belt runs faster, to nothing at the speed of its waves", () => {
  const at = (beltSpeed: number) => spanFrequency({ tension: 600, massPerLength: 0.15, spanLength: 0.3, beltSpeed });
  const waves = Math.sqrt(600 / 0.15);
  expect(at(0)).toBe(spanFrequency({ tension: 600, massPerLength: 0.15, spanLength: 0.3 }));
  // By hand: c = 63.25 m/s, v = 30 m/s: (4000 − 900)/(2 · 0.3 · 63.25) = 81.7 Hz.
  expect(at(30)).toBeCloseTo(81.69, 2);
  expect(at(30)).toBeGreaterThan(at(40));
  expect(at(0.999999 * waves)).toBeLessThan(1e-3);
  expect(() => at(64)).toThrow("beltSpeed is 64 m/s; it must be below 63.25 m/s");
});

test.each(beltRows("centrifugal-tension"))("centrifugalTension meets $id", ({ inputs, expected }) => {
  const mass = inputs.width_mm * inputs.specific_mass_kg_per_m_per_mm;
  expect(gap(mass, expected.mass_kgpm)).toBeLessThan(1e-9);
  expect(gap(centrifugalTension(mass, inputs.v_mps), expected.Tc_N)).toBeLessThan(1e-9);
});

// ISO 5295 from memory: plausibility, not truth.
test.each(beltRows("teeth-in-mesh-factor"))("teethInMeshFactor meets the remembered $id", ({ inputs, expected }) => {
  expect(teethInMeshFactor(inputs.z_m)).toBeCloseTo(expected.factor, 12);
});
test.each(beltRows("rating-shape"))("beltPowerRating meets the remembered shape of $id", ({ inputs, expected }) => {
  const belt = {
    allowablePull: inputs.Ta_base_width_N,
    baseWidth: mm(inputs.base_width_mm),
    width: mm(inputs.width_mm),
    baseMassPerLength: inputs.mass_base_width_kgpm,
    beltSpeed: inputs.v_mps,
    teethInMesh: inputs.z_m,
  };
  expect(teethInMeshFactor(inputs.z_m)).toBeCloseTo(expected.k_z, 12);
  expect(gap(widthFactor(belt.width, belt.baseWidth), expected.k_w)).toBeLessThan(1e-8);
  expect(gap(beltPowerRating(belt), expected.P_W)).toBeLessThan(1e-8);
});
test("beltPowerRating has a best speed, and refuses one at which inertia takes up all of the pull", () => {
  const at = (beltSpeed: number) =>
    beltPowerRating({
      allowablePull: 1200,
      baseWidth: 0.02,
      width: 0.02,
      baseMassPerLength: 0.15,
      beltSpeed,
      teethInMesh: 8,
    });
  // dP/dv = 0 at v = √(T_a / (3 m′)) = 51.6 m/s; nothing is left at √(T_a / m′) = 89.4 m/s.
  const best = Math.sqrt(1200 / 0.45);
  expect(at(best)).toBeGreaterThan(at(best - 1));
  expect(at(best)).toBeGreaterThan(at(best + 1));
  expect(() => at(90)).toThrow("centrifugal tension takes 1215 N of the 1200 N");
  expect(() => teethInMeshFactor(1)).toThrow("teethInMesh is 1; it must be at least 2");
});
