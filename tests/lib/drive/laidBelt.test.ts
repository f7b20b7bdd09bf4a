import { describe, expect, test } from "vitest";
import * as drive from "../../../lib/drive";
import { member } from "./member";
import { gap, mm, type Plain, plain } from "./plain";

const laidBelt = plain(drive.laidBelt<drive.DriveMember>);
const memberPitchRadius = plain(drive.memberPitchRadius);
const ratiosAllowed = plain(drive.ratiosAllowed);
const toothPairs = plain(drive.toothPairs);
const ribbedDriveRatio = plain(drive.ribbedDriveRatio);

const speeds = { idle: 13, cruise: 40, rated: 50, maximum: 55, overspeed: 60 };
const belt = (section: drive.BeltSection, members: readonly Plain<drive.DriveMember>[]) =>
  laidBelt({ name: "belt", section, members, crankRotation: "clockwise", speeds });

describe("laidBelt(drive)", () => {
  const crank = member("crank", { teeth: 40 });
  const pump = member("pump", { teeth: 50, y: 0.4 });
  const idler = member("idler", { contact: "back", diameter: 0.08, x: -0.09, y: 0.2 });

  test("turns toothed pulleys by their teeth, and a smooth one as its pitch circle rolls", () => {
    const laid = belt(drive.curvilinear8, [crank, idler, pump]);
    expect(laid.fault).toBeUndefined();
    expect(laid.members[2]!.at).toEqual({ idle: 10.4, cruise: 32, rated: 40, maximum: 44, overspeed: 48 });
    // Belt speed 40 · 8 mm · 50 per second = 16 m/s, over the circle at 40 + 1.934 mm.
    expect(laid.beltSpeed.rated).toBeCloseTo(16, 12);
    expect(laid.members[1]!.at.rated).toBeCloseTo(16 / (2 * Math.PI * 0.041934), 9);
  });

  test("tells which way each member turns, whether or not a belt can lie on it", () => {
    const wrong = { ...pump, mustTurn: "counterclockwise" as const };
    const far = { ...idler, x: -0.3 };
    for (const members of [
      [crank, idler, wrong],
      [crank, far, wrong],
    ]) {
      const laid = belt(drive.curvilinear8, members);
      expect(laid.members.map(({ turns }) => turns)).toEqual(["clockwise", "counterclockwise", "clockwise"]);
      expect(laid.members.map(({ turnsRightly }) => turnsRightly)).toEqual([true, true, false]);
    }
    const hung = belt(drive.curvilinear8, [crank, idler, { ...wrong, shaftEnd: "rearward" }]);
    expect(hung.members[2]!.turnsRightly).toBe(true);
  });

  test("gives a run or, in words, what keeps the belt from lying; the layout always", () => {
    const laid = belt(drive.curvilinear8, [crank, { ...idler, x: -0.3 }, pump]);
    expect(laid.run).toBeUndefined();
    expect(laid.fault).toMatch(/^idler does not reach the belt; it stands \d+(\.\d+)? mm short/);
    expect(laid.layout.pulleys).toHaveLength(3);
    expect(() => belt(drive.curvilinear8, [pump, crank])).toThrow("its first pulley is pump; it must be the crank's");
  });

  test("lays a ribbed belt at its cord, and lets it creep by 1 % at what it drives", () => {
    const laid = belt(drive.ribbedPK, [
      member("crank", { diameter: 0.18 }),
      member("fan", { diameter: 0.06, y: 0.4 }),
    ]);
    expect(laid.layout.pulleys[0]!.pitchRadius).toBeCloseTo(0.0915, 12);
    const ratio = ribbedDriveRatio({ driverDiameter: 0.18, drivenDiameter: 0.06, cordOffset: 0.0015, slip: 0.01 });
    expect(gap(laid.members[1]!.ratio, ratio)).toBeLessThan(1e-12);
    expect(laid.members[0]!.ratio).toBe(1);
    expect(() => belt(drive.ribbedPK, [crank, pump])).toThrow("crank: it has 40 teeth; on a ribbed belt");
  });
});

test("memberPitchRadius(…) refuses a pulley without teeth or size, and teeth on the back", () => {
  expect(memberPitchRadius(drive.curvilinear8, member("idler", { contact: "back", diameter: mm(80) }))).toBeCloseTo(
    mm(41.934),
    12,
  );
  expect(() => memberPitchRadius(drive.curvilinear8, member("idler", { diameter: 0 }))).toThrow("idler: its diameter");
  expect(() => memberPitchRadius(drive.curvilinear8, member("pump", { teeth: 30, contact: "back" }))).toThrow(
    "pump: it has 30 teeth on the back of its belt",
  );
});

test("ratiosAllowed(unit) is bounded by idle below, and above by whichever speed comes first", () => {
  const engine = { idle: 10, maximum: 50, overspeed: 60 };
  const unit = { lowestSpeed: 12, highestSpeed: 100, burstSpeed: 150, engine };
  expect(ratiosAllowed(unit)).toEqual({ lowest: 1.2, highest: 2, set: "highest speed", empty: false });
  expect(ratiosAllowed({ ...unit, burstSpeed: 90 })).toEqual({
    lowest: 1.2,
    highest: 1.5,
    set: "burst speed",
    empty: false,
  });
  expect(ratiosAllowed({ ...unit, lowestSpeed: 30 }).empty).toBe(true);
  expect(ratiosAllowed({ ...unit, highestSpeed: 0, burstSpeed: 0 })).toMatchObject({ set: "nothing", empty: false });
  expect(() => ratiosAllowed({ ...unit, engine: { ...engine, idle: 0 } })).toThrow("idle is 0 rev/s");
});

test("toothPairs(wanted) holds every pair within the bounds, and no other", () => {
  const wanted = { ratios: [1.7, 1.9], driver: [28, 60], driven: [22, 40] } as const;
  const found = toothPairs(wanted).map(({ driverTeeth, drivenTeeth }) => `${driverTeeth}/${drivenTeeth}`);
  const all: string[] = [];
  for (let z1 = 28; z1 <= 60; z1++) {
    for (let z2 = 22; z2 <= 40; z2++) if (z1 / z2 >= 1.7 && z1 / z2 <= 1.9) all.push(`${z1}/${z2}`);
  }
  expect(found).toEqual(all);
  expect(toothPairs({ ...wanted, ratios: [9, 10] })).toEqual([]);
  expect(() => toothPairs({ ...wanted, driver: [3, 60] })).toThrow("teeth is 3; it must be 6 to 400");
});

test("rotationCures(unit): each of the changes that it names turns the unit as it must", () => {
  const mustTurn = "clockwise" as const;
  for (const contact of ["toothed", "back"] as const) {
    for (const shaftEnd of ["forward", "rearward"] as const) {
      const turned = (own: { contact?: "toothed" | "back"; shaftEnd?: "forward" | "rearward" }) =>
        drive.rotationSeenOnShaftEnd({
          sense: (own.contact ?? contact) === "toothed" ? 1 : -1,
          crankRotation: "clockwise",
          shaftEnd: own.shaftEnd ?? shaftEnd,
        });
      const turns = turned({});
      const cures = drive.rotationCures({ unit: "Pump", contact, shaftEnd, mustTurn, teeth: 30 as never, turns });
      expect(cures.length).toBe(turns === mustTurn ? 0 : 3);
      if (cures.length === 0) continue;
      expect(turned({ shaftEnd: shaftEnd === "forward" ? "rearward" : "forward" })).toBe(mustTurn);
      expect(cures[0]).toContain(shaftEnd === "forward" ? "rearward" : "forward");
      expect(turned({ contact: contact === "toothed" ? "back" : "toothed" })).toBe(mustTurn);
      expect(cures[1]).toContain(contact === "toothed" ? "back" : "toothed");
      expect(cures[2]).toContain("built to turn counterclockwise");
    }
  }
});
