import { expect, test } from "vitest";
import * as drive from "../../../lib/drive";
import { member } from "./member";
import { mm, type Plain, plain } from "./plain";

const drawnBelt = plain(drive.drawnBelt<drive.DriveMember>);
const drivePicks = plain(drive.drivePicks);
const beltRun = plain(drive.beltRun);

/** Invented: a crank, an idler on the slack side and a blower on 14 mm pitch. */
const front = {
  name: "belt",
  section: drive.curvilinear14,
  crankRotation: "clockwise" as const,
  members: [
    member("crank", { teeth: 50 }),
    member("idler", { contact: "back", diameter: mm(120), x: mm(-106), y: mm(240) }),
    member("blower", { teeth: 30, y: mm(420) }),
  ],
};
const wanted: Plain<drive.PickInputs> = {
  drawn: drawnBelt(front),
  unit: "blower",
  ratio: 1.7,
  tolerance: 0.03,
  driver: [40, 60],
  driven: [28, 40],
  tensioner: { pulley: "idler", motion: { direction: 0 }, reach: mm(45), fittingSlack: mm(8), stretch: mm(3) },
  highestSpeed: 55,
  limits: { teethInMesh: 6, clearance: mm(10), beltSpeed: 50, ratios: {} },
  load: {
    torques: { blower: 100 },
    serviceFactor: 1.5,
    speed: 50,
    allowablePull: 1900,
    baseWidth: mm(40),
    baseMassPerLength: 0.36,
    width: mm(85),
  },
};

/** Every pair with every standard belt that 45 mm of idler could ever reach, by the slow search along the whole slide. */
function byBruteForce(): readonly string[] {
  const found: string[] = [];
  // The runs are 1.3 to 1.45 m long, and a pulley takes up at most twice its way.
  const lengths = (drive.curvilinear14.standardLengths as readonly number[]).filter((length) => length > 1.2 && length < 1.55);
  for (let z1 = 40; z1 <= 60; z1++) {
    for (let z2 = 28; z2 <= 40; z2++) {
      if (Math.abs(z1 / z2 / 1.7 - 1) > 0.03) continue;
      const radius = (teeth: number) => (teeth * mm(14)) / (2 * Math.PI);
      const layout = {
        ...wanted.drawn.layout,
        pulleys: wanted.drawn.layout.pulleys.map((pulley, i) =>
          i === 0
            ? { ...pulley, teeth: z1, pitchRadius: radius(z1) }
            : i === 2
              ? { ...pulley, teeth: z2, pitchRadius: radius(z2) }
              : pulley,
        ),
      } as Plain<drive.BeltLayout>;
      for (const beltLength of lengths) {
        try {
          const drawn = beltRun(layout);
          const { travel, takeUp } = plain(drive.tensionerPosition)({
            layout,
            pulley: "idler",
            direction: 0,
            travel: [-mm(45), mm(45)],
            beltLength,
          });
          const way = Math.max(Math.abs(travel - mm(8) / takeUp), Math.abs(travel + mm(3) / takeUp));
          if (way <= mm(45) && drawn.length > 0) found.push(`${z1}/${z2} ${Math.round(1000 * beltLength)}`);
        } catch (error) {
          if (!(error instanceof RangeError)) throw error;
        }
      }
    }
  }
  return found;
}

test("drivePicks(wanted) finds the very standard belts that a search of every place finds", () => {
  const { picks } = drivePicks(wanted);
  const listed = picks
    .filter(({ belt }) => belt.standard)
    .map(({ driverTeeth, drivenTeeth, belt }) => `${driverTeeth}/${drivenTeeth} ${Math.round(1000 * belt.length)}`);
  const slow = byBruteForce();
  expect(slow.length).toBeGreaterThan(3);
  expect([...listed].sort()).toEqual([...slow].sort());
});

test("drivePicks(wanted) keeps every limit, closes every run, and stands best first", () => {
  const { picks, pairs, refused } = drivePicks(wanted);
  expect(picks.length).toBeGreaterThan(5);
  for (const pick of picks) {
    expect(Math.abs(pick.off)).toBeLessThanOrEqual(0.03 + 1e-12);
    expect(pick.ratio).toBe(pick.driverTeeth / pick.drivenTeeth);
    expect(pick.beltSpeed).toBeLessThanOrEqual(50);
    expect(pick.beltSpeed).toBeCloseTo(pick.driverTeeth * mm(14) * 55, 12);
    expect(pick.teethInMesh).toBeGreaterThanOrEqual(6);
    expect(pick.widthNeeded).toBeLessThanOrEqual(mm(85));
    expect(pick.belt.length).toBeCloseTo(pick.belt.teeth * mm(14), 12);
    const drawn = drawnBelt({
      ...front,
      members: [
        { ...front.members[0]!, teeth: pick.driverTeeth },
        { ...front.members[1]!, x: front.members[1]!.x + pick.travel },
        { ...front.members[2]!, teeth: pick.drivenTeeth },
      ],
    });
    expect(drawn.run!.length).toBeCloseTo(pick.belt.length, 9);
  }
  const costs = picks.map(({ cost }) => cost);
  expect(costs).toEqual([...costs].sort((a, b) => a - b));
  // Every pair is either picked, perhaps with several belts, or refused for one reason.
  const picked = new Set(picks.map(({ driverTeeth, drivenTeeth }) => `${driverTeeth}/${drivenTeeth}`)).size;
  expect(picked + Object.values(refused).reduce((sum, count) => sum + count, 0)).toBe(pairs);
});

test("drivePicks(wanted): each limit, drawn tight, leaves out pairs for its own reason", () => {
  const { limits, load } = wanted;
  const refusedBy = (change: Partial<Plain<drive.PickInputs>>) => drivePicks({ ...wanted, ...change }).refused;
  expect(refusedBy({ limits: { ...limits, beltSpeed: 35 } })["belt speed"]).toBeGreaterThan(0);
  expect(refusedBy({ limits: { ...limits, teethInMesh: 16 } })["teeth in mesh"]).toBeGreaterThan(0);
  expect(refusedBy({ limits: { ...limits, clearance: mm(90) } }).room).toBeGreaterThan(0);
  expect(refusedBy({ load: { ...load, torques: { blower: 300 } } }).width).toBeGreaterThan(0);
  expect(refusedBy({ limits: { ...limits, ratios: { blower: [1.7, 1.7] } } })["another unit's speed"]).toBeGreaterThan(0);
  const { tensioner } = wanted;
  expect(refusedBy({ tensioner: { ...tensioner, reach: mm(12) } })["no belt in reach"]).toBeGreaterThan(0);
});

test("drivePicks(wanted) refuses what cannot be picked, and answers with none where none do", () => {
  expect(() => drivePicks({ ...wanted, unit: "idler" })).toThrow("belt has no toothed unit called idler");
  expect(() => drivePicks({ ...wanted, ratio: 0 })).toThrow("ratio is 0; it must be above 0");
  expect(drivePicks({ ...wanted, ratio: 5 }).picks).toEqual([]);
});
