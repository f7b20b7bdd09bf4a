import fc from "fast-check";
import { describe, expect, test } from "vitest";
import * as drive from "../../../lib/drive";
import { randomLayouts } from "./layouts";
import { degrees, gap, mm, type Plain, plain } from "./plain";
import { beltRows } from "./published";

type Layout = Plain<drive.BeltLayout>;
const beltRun = plain(drive.beltRun);

interface TablePulley {
  readonly x_mm: number;
  readonly y_mm: number;
  readonly pitch_radius_mm: number;
  readonly contact: "inside" | "outside";
}

const fromTable = (pulleys: readonly TablePulley[]): Layout => ({
  travel: "counterclockwise",
  pulleys: pulleys.map(({ x_mm, y_mm, pitch_radius_mm, contact }, i) => ({
    name: `pulley ${i}`,
    x: mm(x_mm),
    y: mm(y_mm),
    pitchRadius: mm(pitch_radius_mm),
    contact: contact === "inside" ? "toothed" : "back",
  })),
});

/** The same run seen in a mirror: the engine looked at from behind. */
const mirrored = ({ travel, pulleys }: Layout): Layout => ({
  travel: travel === "clockwise" ? "counterclockwise" : "clockwise",
  pulleys: pulleys.map((pulley) => ({ ...pulley, x: -pulley.x })),
});

/** Length of the run as a polyline: straight spans, and arcs walked from contact point to contact point in equal steps. */
function polylineLength(run: drive.BeltRun, crankTurns: 1 | -1, steps: number): number {
  const straight = run.spans.reduce((sum, { start, end }) => sum + Math.hypot(end.x - start.x, end.y - start.y), 0);
  return run.pulleys.reduce((sum, { x, y, start, end, sense, pitchRadius }) => {
    const turns = sense * crankTurns;
    const from = Math.atan2(start.y - y, start.x - x);
    const to = Math.atan2(end.y - y, end.x - x);
    const arc = (((turns * (to - from)) % (2 * Math.PI)) + 2 * Math.PI) % (2 * Math.PI);
    let length = 0;
    let before = start as { x: number; y: number };
    for (let i = 1; i <= steps; i++) {
      const angle = from + (turns * arc * i) / steps;
      const here = { x: x + pitchRadius * Math.cos(angle), y: y + pitchRadius * Math.sin(angle) };
      length += Math.hypot(here.x - before.x, here.y - before.y);
      before = here;
    }
    return sum + length;
  }, straight);
}

/** Where a traveller ends who walks the belt by lengths and turns alone, relative to where he set out. */
function walkedTo({ spans, pulleys }: drive.BeltRun, crankTurns: 1 | -1): { x: number; y: number } {
  let [x, y, heading] = [0, 0, spans[0]!.direction as number];
  spans.forEach(({ length }, i) => {
    x += length * Math.cos(heading);
    y += length * Math.sin(heading);
    const { wrap, pitchRadius, sense } = pulleys[(i + 1) % pulleys.length]!;
    const turn = sense * crankTurns * wrap;
    // An arc's chord is 2 r sin(φ/2) long and points half way through the turn.
    const chord = 2 * pitchRadius * Math.sin(wrap / 2);
    x += chord * Math.cos(heading + turn / 2);
    y += chord * Math.sin(heading + turn / 2);
    heading += turn;
  });
  return { x, y };
}

/** Perimeter of the convex hull of points around the pulleys, by gift wrapping in order of angle (monotone chain). */
function hullPerimeter({ pulleys }: Layout): number {
  const points = pulleys.flatMap(({ x, y, pitchRadius }) =>
    Array.from({ length: 720 }, (_, i) => {
      const angle = (i * Math.PI) / 360;
      return [x + pitchRadius * Math.cos(angle), y + pitchRadius * Math.sin(angle)] as const;
    }),
  );
  const sorted = points.sort((a, b) => a[0] - b[0] || a[1] - b[1]);
  const half = (ordered: typeof sorted) => {
    const chain: (readonly [number, number])[] = [];
    for (const p of ordered) {
      while (chain.length > 1) {
        const [o, q] = [chain.at(-2)!, chain.at(-1)!];
        if ((q[0] - o[0]) * (p[1] - o[1]) - (q[1] - o[1]) * (p[0] - o[0]) > 0) break;
        chain.pop();
      }
      chain.push(p);
    }
    return chain.slice(0, -1);
  };
  const hull = [...half(sorted), ...half([...sorted].reverse())];
  return hull.reduce((sum, p, i) => sum + Math.hypot(p[0] - hull.at(i - 1)![0], p[1] - hull.at(i - 1)![1]), 0);
}

// Signed-radius tangents, checked in the table by tangency, rotation, closure and, where all inside, by the hull.
test.each(beltRows("multi-pulley"))("beltRun(layout) meets $inputs.layout", ({ inputs, expected }) => {
  const layout = fromTable(inputs.pulleys);
  for (const run of [beltRun(layout), beltRun(mirrored(layout))]) {
    expect(gap(run.length, mm(expected.L_mm))).toBeLessThan(1e-9);
    run.spans.forEach((span, i) => {
      expect(gap(span.length, mm(expected.spans_mm[i]))).toBeLessThan(1e-9);
    });
    run.pulleys.forEach((pulley, i) => {
      expect(degrees(pulley.wrap)).toBeCloseTo(expected.wraps_deg[i], 6);
    });
  }
  beltRun(layout).spans.forEach(({ direction }, i) => {
    expect(Math.cos(direction)).toBeCloseTo(Math.cos((expected.span_direction_deg[i] * Math.PI) / 180), 8);
    expect(Math.sin(direction)).toBeCloseTo(Math.sin((expected.span_direction_deg[i] * Math.PI) / 180), 8);
  });
});

// By hand: around equal pulleys a belt is as long as the polygon of their axes, and one circle: 3 + 4 + 5 + 2π·0.5.
test("beltRun(layout) around three equal pulleys at the corners of a 3-4-5 triangle", () => {
  const at = (x: number, y: number, name: string) => ({ name, x, y, pitchRadius: 0.5, contact: "toothed" as const });
  const run = beltRun({ travel: "counterclockwise", pulleys: [at(0, 0, "crank"), at(4, 0, "fan"), at(0, 3, "pump")] });
  expect(run.length).toBeCloseTo(12 + Math.PI, 12);
  // Each arc is what the triangle's corner leaves of a half turn.
  expect(run.pulleys.map(({ wrap }) => degrees(wrap))).toEqual([
    expect.closeTo(90, 9),
    expect.closeTo(180 - degrees(Math.atan2(3, 4)), 9),
    expect.closeTo(180 - degrees(Math.atan2(4, 3)), 9),
  ]);
});

describe("over 10,000 random layouts", () => {
  const all = randomLayouts(10000);
  const layouts = all.slice(0, 2000);

  test("there are runs of two to six pulleys, with and without back idlers, both ways round", () => {
    expect(layouts).toHaveLength(2000);
    expect(new Set(layouts.map(({ pulleys }) => pulleys.length))).toEqual(new Set([2, 3, 4, 5, 6]));
    const withBack = layouts.filter(({ pulleys }) => pulleys.some(({ contact }) => contact === "back"));
    expect(withBack.length).toBeGreaterThan(600);
    expect(withBack.length).toBeLessThan(1400);
    expect(layouts.filter(({ travel }) => travel === "clockwise").length).toBeGreaterThan(600);
  });

  test("beltRun(layout).length is that of a line laid along the belt and measured piece by piece", () => {
    for (const layout of all) {
      const run = beltRun(layout);
      const crankTurns = layout.travel === "clockwise" ? -1 : 1;
      const [coarse, fine] = [24, 48].map((steps) => polylineLength(run, crankTurns, steps)) as [number, number];
      // Chords fall short as the square of their angle; taking that off leaves (3π/2/48)⁴/480 = 2e-7 of the arc.
      expect(gap(fine + (fine - coarse) / 3, run.length)).toBeLessThan(2e-7);
      expect(fine).toBeLessThanOrEqual(run.length + 1e-12);
    }
  });

  test("who walks the belt by its lengths and arcs alone comes back to within 1e-9 m", () => {
    for (const layout of all) {
      const { x, y } = walkedTo(beltRun(layout), layout.travel === "clockwise" ? -1 : 1);
      expect(Math.hypot(x, y)).toBeLessThan(1e-9);
    }
  });

  test("beltRun(layout).length is the perimeter of the convex hull where no idler runs on the back", () => {
    const inside = layouts.filter(({ pulleys }) => pulleys.every(({ contact }) => contact === "toothed")).slice(0, 200);
    expect(inside).toHaveLength(200);
    for (const layout of inside) {
      // 720 points a circle: chords (2π/720)²/24 short, and tangents from point to point a little shorter still.
      expect(gap(hullPerimeter(layout), beltRun(layout).length)).toBeLessThan(2e-5);
    }
  });

  test("spans stand square on both radii, and the arcs turn the belt once, by contact", () => {
    for (const layout of layouts) {
      const run = beltRun(layout);
      const crankTurns = layout.travel === "clockwise" ? -1 : 1;
      run.pulleys.forEach((pulley, i) => {
        for (const [point, span] of [
          [pulley.start, run.spans.at(i - 1)!],
          [pulley.end, run.spans[i]!],
        ] as const) {
          const radius = { x: point.x - pulley.x, y: point.y - pulley.y };
          expect(Math.hypot(radius.x, radius.y)).toBeCloseTo(pulley.pitchRadius, 12);
          // Velocity of the pulley's rim, for a turn of +1 or −1 rad/s, lies along the span.
          const along =
            pulley.sense * crankTurns * (-radius.y * Math.cos(span.direction) + radius.x * Math.sin(span.direction));
          expect(along).toBeCloseTo(pulley.pitchRadius, 12);
        }
        expect(pulley.sense).toBe(pulley.contact === layout.pulleys[0]!.contact ? 1 : -1);
      });
      const turned = run.pulleys.reduce((sum, { wrap, sense }) => sum + sense * wrap, 0);
      expect(turned).toBeCloseTo(2 * Math.PI, 9);
      run.spans.forEach((span, i) => {
        expect(span.end).toEqual(run.pulleys[(i + 1) % run.pulleys.length]!.start);
      });
    }
  });

  test("a run keeps its length when turned, moved, mirrored or scaled", () => {
    const turn = fc.double({ min: -3, max: 3, noNaN: true });
    fc.assert(
      fc.property(
        fc.constantFrom(...layouts),
        turn,
        turn,
        fc.double({ min: 0.5, max: 2, noNaN: true }),
        (layout, angle, shift, scale) => {
          const [cos, sin] = [scale * Math.cos(angle), scale * Math.sin(angle)];
          const moved: Layout = {
            ...layout,
            pulleys: layout.pulleys.map((pulley) => ({
              ...pulley,
              x: shift + cos * pulley.x - sin * pulley.y,
              y: -shift + sin * pulley.x + cos * pulley.y,
              pitchRadius: scale * pulley.pitchRadius,
            })),
          };
          expect(gap(beltRun(moved).length, scale * beltRun(layout).length)).toBeLessThan(1e-9);
          expect(gap(beltRun(mirrored(layout)).length, beltRun(layout).length)).toBeLessThan(1e-12);
        },
      ),
      { seed: 20260101, numRuns: 200 },
    );
  });
});

describe("beltRun(layout) refuses by name", () => {
  const pulley = (
    name: string,
    x: number,
    y: number,
    pitchRadius: number,
    contact: "toothed" | "back" = "toothed",
  ) => ({
    name,
    x,
    y,
    pitchRadius,
    contact,
  });
  const crank = pulley("crank", 0, 0, 0.05);
  const blower = pulley("blower", 0.3, 0, 0.04);
  const of =
    (...pulleys: Layout["pulleys"]) =>
    () =>
      beltRun({ travel: "counterclockwise", pulleys });

  test("pulleys that overlap, and by how far", () => {
    expect(of(crank, pulley("blower", 0.08, 0, 0.04))).toThrow("crank and blower overlap by 10 mm");
  });
  test("neighbours that no straight belt joins", () => {
    expect(of(crank, pulley("idler", 0.08, 0, 0.03, "back"), blower)).toThrow("no straight belt joins crank and idler");
  });
  test("a back idler that does not reach the belt, and by how far", () => {
    // The upper span of two pulleys of 0.05 m lies at y = 0.05; an idler whose lower edge is at 0.062 is 12 mm short.
    const level = pulley("blower", 0.3, 0, 0.05);
    expect(of(crank, level, pulley("idler", 0.15, 0.092, 0.03, "back"))).toThrow(
      "idler does not reach the belt; it stands 12 mm short of the straight run from blower to crank",
    );
    expect(of(crank, level, pulley("idler", 0.15, 0.078, 0.03, "back"))).not.toThrow();
  });
  test("a toothed idler that lies wholly inside the belt", () => {
    const level = pulley("blower", 0.4, 0, 0.05);
    expect(of(crank, level, pulley("idler", 0.2, 0.025, 0.02))).toThrow(
      "idler does not reach the belt; it stands 5 mm short",
    );
  });
  test("a list against the travel", () => {
    const third = pulley("pump", 0.15, 0.3, 0.04);
    expect(of(crank, third, blower)).toThrow("listed against the counterclockwise travel of the belt");
    expect(of(crank, blower, third)).not.toThrow();
  });
  test("a crossed belt around two", () => {
    expect(of(crank, pulley("blower", 0.3, 0, 0.04, "back"))).toThrow("beltRun: the belt ");
  });
  // A square of pulleys, and an idler pressed from the right side so far that it meets the left span, at x = −0.05.
  const square = (x: number) =>
    of(
      crank,
      pulley("pump", 0.6, 0, 0.05),
      pulley("idler", x, 0.2, 0.03, "back"),
      pulley("alternator", 0.6, 0.4, 0.05),
      pulley("blower", 0, 0.4, 0.05),
    );
  test("a span that cuts another pulley, and by how far", () => {
    expect(square(0.2)).not.toThrow();
    expect(square(-0.03)).toThrow("the span from blower to crank cuts 10 mm deep into idler");
  });
  test("spans that cross, though they cut no pulley", () => {
    expect(square(-0.2)).toThrow("the span from pump to idler crosses the span from blower to crank");
  });
  test("lists that are no layout", () => {
    expect(of(crank)).toThrow("pulleys are 1; a belt needs at least two");
    expect(of(crank, { ...blower, name: "crank" })).toThrow("two pulleys are called crank");
    expect(of(crank, { ...blower, pitchRadius: Number.NaN })).toThrow("pitch radius of blower is NaN m");
    expect(of(crank, { ...blower, x: Number.NaN })).toThrow("centre of blower is (NaN, 0) m");
  });
});
