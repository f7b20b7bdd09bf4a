import { expect, test } from "vitest";
import * as drive from "../../../lib/drive";
import { randomLayouts } from "./layouts";
import { type Plain, plain } from "./plain";

const tensionerPosition = plain(drive.tensionerPosition);
const beltRun = plain(drive.beltRun);

/** Invented front of an engine: crank, blower above it, back idler on the slack side. */
const front: Plain<drive.BeltLayout> = {
  travel: "clockwise",
  pulleys: [
    { name: "crank", x: 0, y: 0, pitchRadius: 0.0916732, contact: "toothed", teeth: 72 },
    { name: "blower", x: 0, y: 0.45, pitchRadius: 0.0458366, contact: "toothed", teeth: 36 },
    { name: "idler", x: 0.09, y: 0.25, pitchRadius: 0.037, contact: "back" },
  ],
};

test("tensionerPosition(…) closes the run on the wanted length, and says how fast the slide takes up belt", () => {
  const slide = { layout: front, pulley: "idler", direction: Math.PI, travel: [-0.02, 0.06] } as const;
  const { travel, takeUp, run } = tensionerPosition({ ...slide, beltLength: 1.36 });
  expect(run.length).toBeCloseTo(1.36, 10);
  expect(run.pulleys[2]!.x).toBeCloseTo(0.09 - travel, 12);
  expect(run.pulleys[2]!.y).toBeCloseTo(0.25, 12);
  const lengthAt = (x: number) =>
    beltRun({ ...front, pulleys: front.pulleys.map((pulley) => (pulley.name === "idler" ? { ...pulley, x } : pulley)) })
      .length;
  // A central difference over 2 × 10 µm: its own error is of the order of 1e-8.
  const slope = (lengthAt(0.09 - travel - 1e-5) - lengthAt(0.09 - travel + 1e-5)) / 2e-5;
  expect(takeUp).toBeCloseTo(slope, 6);
  expect(takeUp).toBeGreaterThan(0);
});

test("tensionerPosition(…) gives back the place of an idler that already fits, for every random layout", () => {
  let tried = 0;
  for (const layout of randomLayouts(120)) {
    const idler = layout.pulleys.find(({ contact }) => contact === "back");
    if (idler === undefined) continue;
    tried++;
    const found = tensionerPosition({
      layout,
      pulley: idler.name,
      direction: Math.atan2(-idler.y, -idler.x),
      travel: [-0.01, 0.0101],
      beltLength: beltRun(layout).length,
    });
    expect(found.run.length).toBeCloseTo(beltRun(layout).length, 10);
    expect(Math.abs(found.travel)).toBeLessThan(1e-7);
  }
  expect(tried).toBeGreaterThan(30);
});

test("tensionerPosition(…) names the lengths that the slide reaches, from the very point where the idler meets the belt", () => {
  const slide = { layout: front, pulley: "idler", direction: Math.PI, travel: [-0.1, 0.02] } as const;
  const without = beltRun({ ...front, pulleys: front.pulleys.slice(0, 2) }).length;
  expect(() => tensionerPosition({ ...slide, beltLength: 1.2 })).toThrow(
    new RegExp(`beltLength is 1.2 m; moving idler reaches ${without.toPrecision(6).replace(/0+$/, "")} to 1\\.\\d+ m`),
  );
  expect(() => tensionerPosition({ ...slide, beltLength: 1.6 })).toThrow("beltLength is 1.6 m; moving idler reaches");
  expect(tensionerPosition({ ...slide, beltLength: without + 1e-7 }).run.pulleys[2]!.wrap).toBeLessThan(0.02);
});

test("tensionerPosition(…) refuses a slide on which no belt can lie, an unknown pulley and a travel turned round", () => {
  const slide = { layout: front, pulley: "idler", direction: 0, beltLength: 1.36 } as const;
  expect(() => tensionerPosition({ ...slide, travel: [0.3, 0.4] })).toThrow(
    "no belt can lie anywhere along the way of idler; at its start beltRun: idler does not reach the belt",
  );
  expect(() => tensionerPosition({ ...slide, pulley: "pump", travel: [0, 0.1] })).toThrow(
    "no pulley of the layout is called pump",
  );
  expect(() => tensionerPosition({ ...slide, travel: [0.1, 0] })).toThrow("travel is 0.1 to 0 m");
  expect(() => tensionerPosition({ ...slide, direction: Number.NaN, travel: [0, 0.1] })).toThrow(
    "direction is NaN rad",
  );
});
