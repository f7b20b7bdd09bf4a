import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { operatingHeatBalance } from "../../lib/charge";
import { isRefusal } from "../../lib/graph";
import { ratedPower } from "../../worksheets/brief/cells";
import { inputsOf } from "../../worksheets/build/build";
import { balanceSetup, marineBalance } from "../../worksheets/marine-cooling/balance";
import type { MarineBalance } from "../../worksheets/marine-cooling/balanceOf";
import { balanceRun, balanceThere } from "../../worksheets/marine-cooling/balanceRuns";
import type { BalancePoint } from "../../worksheets/marine-cooling/fullLoad";
import { attainablePower } from "../../worksheets/matching/cells";
import { matched } from "../../worksheets/matching/solved";
import { program } from "../../worksheets/model";
import { demo, demoInstallations } from "./demo";

type Solved = Extract<BalancePoint, { balance: unknown }>;

const evaluations = demoInstallations.map((key) => program.run(inputsOf(demo, key)));
const boat = evaluations[demoInstallations.indexOf("boat")]!;

function pointIn(evaluation: typeof boat, flowsAlong: "propeller" | "fullLoad", flowsSpeed: number, flowsLoad = 1) {
  const moved = program.rerun(evaluation, { flowsAlong, flowsSpeed, flowsLoad } as never).evaluation;
  return moved.require(balanceThere).answer();
}
function solvedIn(...asked: Parameters<typeof pointIn>): Solved {
  const point = pointIn(...asked);
  if ("refused" in point) throw new Error(point.refused);
  return point;
}
const power = ({ lines }: MarineBalance, key: string): number => lines.find((line) => line.key === key)!.power;
const heat = ({ lines }: MarineBalance, goal: string) =>
  lines.reduce((sum, line) => sum + (line.goal === goal ? line.power : 0), 0);

describe("the heat balance at the speed and load set", () => {
  test("is that of the promised power at the promised speed of the propeller's curve", () => {
    for (const evaluation of evaluations) {
      const promised = evaluation.require(marineBalance);
      const { balance, brakePower } = solvedIn(evaluation, "propeller", 1);
      expect(brakePower).toBeCloseTo(evaluation.require(ratedPower), 6);
      for (const { key, power: own } of promised.lines) {
        expect(Math.abs(power(balance, key) - own) / promised.fuel, key).toBeLessThan(1e-6);
      }
    }
  });

  test("closes to the last watt at any speed and load, and its shaft is the power less the gear's loss", () => {
    const share = fc.double({ min: 0, max: 1, noNaN: true });
    const anywhere = fc.record({ place: fc.integer({ min: 0, max: 2 }), speed: share, load: share, full: fc.boolean() });
    let solved = 0;
    fc.assert(
      fc.property(anywhere, ({ place, speed, load, full }) => {
        const at = evaluations[place]!;
        const point = pointIn(at, full ? "fullLoad" : "propeller", 0.45 + speed * 0.55, 0.3 + 0.7 * load);
        if ("refused" in point) return expect(point.refused.length).toBeGreaterThan(20);
        solved++;
        const { fuel, lines, unaccounted } = point.balance;
        expect(Math.abs(fuel - lines.reduce((sum, line) => sum + line.power, 0))).toBeLessThan(1e-3);
        expect(Math.abs(unaccounted)).toBeLessThan(1e-3);
        const gear = power(point.balance, "gear");
        expect((power(point.balance, "shaft") + gear) / point.brakePower).toBeCloseTo(1, 6);
        expect(gear / point.brakePower).toBeCloseTo(1 - at.require(balanceSetup).gearEfficiency, 9);
      }),
      { seed: 20260301, numRuns: 40 },
    );
    expect(solved).toBeGreaterThan(30);
  });

  test("is the same on both curves for the same speed and power", () => {
    for (const speed of [0.5, 0.75, 0.9]) {
      const propeller = solvedIn(boat, "propeller", speed);
      const most = solvedIn(boat, "fullLoad", speed);
      const { balance } = solvedIn(boat, "fullLoad", speed, propeller.brakePower / most.brakePower);
      for (const { key, power: own } of propeller.balance.lines) {
        expect(Math.abs(power(balance, key) - own) / balance.fuel, key).toBeLessThan(1e-6);
      }
    }
  });

  test("on full load has the power of the match at the promised speed", () => {
    for (const evaluation of evaluations) {
      expect(solvedIn(evaluation, "fullLoad", 1).brakePower).toBeCloseTo(evaluation.require(attainablePower), 6);
    }
  });

  // The match takes the stated share of wall heat, the point here the correlation's, which is the same at the promised mixture alone.
  test("under the promised power is the match's own balance, but for a hundredth of the fuel in the walls", () => {
    const load = boat.require(ratedPower) / boat.require(attainablePower);
    const { balance } = solvedIn(boat, "fullLoad", 1, load);
    const own = operatingHeatBalance(boat.require(matched), boat.require(balanceSetup).split);
    const part = (key: string) => own.parts.find((each) => each.key === key)!.power;
    const gap = (mine: number, theirs: number) => Math.abs(mine - theirs) / balance.fuel;
    expect(gap(power(balance, "jacket"), part("jacket"))).toBeLessThan(0.01);
    expect(gap(power(balance, "exhaustGas") + power(balance, "exhaustVapour"), part("exhaust"))).toBeLessThan(0.01);
    expect(gap(power(balance, "intercooler") + power(balance, "aftercooler"), part("chargeCoolers"))).toBeLessThan(0.002);
    expect(gap(power(balance, "shaft") + power(balance, "gear"), part("brake"))).toBeLessThan(1e-6);
  });

  test("burns more and warms sea and exhaust more with every step of load, and about the same share of the fuel in the walls", () => {
    for (const along of ["propeller", "fullLoad"] as const) {
      const steps = [0.4, 0.6, 0.8, 1].map((load) => solvedIn(boat, along, 0.9, load));
      for (const [i, { balance }] of steps.slice(1).entries()) {
        const before = steps[i]!;
        expect(balance.fuel).toBeGreaterThan(before.balance.fuel);
        expect(heat(balance, "sea")).toBeGreaterThan(heat(before.balance, "sea"));
        expect(power(balance, "exhaustGas")).toBeGreaterThan(power(before.balance, "exhaustGas"));
      }
      // At one speed the gas has the same time for every load: the share of the fuel in the walls moves by less than a tenth.
      const shares = steps.map(({ wallShare }) => wallShare);
      expect(Math.max(...shares) / Math.min(...shares)).toBeLessThan(1.1);
    }
  });

  test("burns more along the propeller's curve with every step of speed", () => {
    const fuels = [0.4, 0.55, 0.7, 0.85, 1].map((speed) => solvedIn(boat, "propeller", speed).balance.fuel);
    expect(fuels).toEqual([...fuels].sort((a, b) => a - b));
  });

  test("has no answer below idle, and beyond the end of either curve, and says so", () => {
    const words = (...asked: Parameters<typeof pointIn>) => {
      try {
        pointIn(...asked);
        return "";
      } catch (error) {
        return (error as Error).message;
      }
    };
    expect(words(boat, "propeller", 0.2)).toContain("below idle");
    expect(words(boat, "propeller", 1.01)).toContain("takes all of the promised power");
    expect(words(boat, "fullLoad", 1.3)).toContain("the highest speed of the engine");
  });
});

test("the run over speed holds at each speed what is solved there alone", () => {
  for (const [flowsAlong, flowsLoad] of [
    ["propeller", 0.7],
    ["fullLoad", 0.8],
  ] as const) {
    const { evaluation } = program.rerun(boat, { flowsAlong, flowsLoad } as never);
    const run = evaluation.require(balanceRun).get();
    if (isRefusal(run)) throw new Error(run.message);
    const points = run.filter((point): point is Solved => "balance" in point);
    expect(points.length).toBeGreaterThan(6);
    const speed = points.at(-3)!;
    const rated = points.find(({ speed }) => Math.abs(speed - 40) < 1e-9)!.speed;
    const alone = solvedIn(boat, flowsAlong, speed.speed / rated, flowsLoad);
    for (const { key, power: own } of alone.balance.lines) {
      expect(Math.abs(power(speed.balance, key) - own) / alone.balance.fuel, key).toBeLessThan(1e-5);
    }
  }
});
