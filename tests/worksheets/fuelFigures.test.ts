/** What the fuel sheet's figures say, against the cells that they are drawn from. */
import { describe, expect, test } from "vitest";
import { figureUnits } from "../../site/state/figureUnits";
import { declaredValues } from "../../worksheets/build/build";
import { ratedSpeed } from "../../worksheets/brief/cells";
import { injectionAngle } from "../../worksheets/fuel-delivery/cells";
import { deliverySweep } from "../../worksheets/fuel-delivery/deliverySweep";
import { burntBetween, burntByParts, piecesOf } from "../../worksheets/fuel-delivery/figures/airBurns";
import { injectionTimeline } from "../../worksheets/fuel-delivery/figures/injectionTimeline";
import { pumpOverSpeed } from "../../worksheets/fuel-delivery/figures/pumpOverSpeed";
import { injectionStart, injectionWindow } from "../../worksheets/fuel-delivery/inputs";
import { runFrom } from "../../worksheets/matching/figures/run";
import { attained } from "../../worksheets/matching/solved";
import { graph, program } from "../../worksheets/model";
import type { Figure } from "../../worksheets/sheet";

const metric = figureUnits({ system: "SI", own: {} });
const declared = declaredValues(graph);
const run = (changes: Readonly<Record<string, unknown>> = {}) => program.run({ ...declared, ...changes });
const valuesOf = ({ from }: Pick<Figure, "from">, at = run()): never =>
  Object.fromEntries(Object.entries(from).map(([name, ref]) => [name, at.require(ref)])) as never;

describe("fuel that the map asks for and the parts can burn", () => {
  const at = run();
  const sweep = at.require(deliverySweep);
  const parts = burntByParts(valuesOf({ from: runFrom }, at), sweep);

  test("burntByParts meets the match and the map at the promised speed", () => {
    const here = parts.find(({ speed }) => speed === at.require(ratedSpeed))!;
    // Solved from another speed than the match's own cell: to the solver's tolerance.
    expect(here.burnt / at.require(attained).point.fuelFlow).toBeCloseTo(1, 4);
    expect(here.mapped).toBe(sweep.find(({ engineSpeed }) => engineSpeed === at.require(ratedSpeed))!.burnt);
  });

  test("burntBetween gives points back, lies between neighbours, and leaves gaps open", () => {
    for (const { speed, burnt } of parts) expect(burntBetween(parts, speed)).toBe(burnt);
    for (const piece of piecesOf(parts)) {
      piece.slice(1).forEach((to, i) => {
        const from = piece[i]!;
        const middle = burntBetween(parts, (from.speed + to.speed) / 2)!;
        expect(middle).toBeCloseTo((from.burnt + to.burnt) / 2, 9);
      });
    }
    expect(burntBetween(parts, parts[0]!.speed - 1)).toBeUndefined();
    const [first, second] = [{ ...parts[0]! }, { ...parts[1]!, apart: true }];
    expect(burntBetween([first, second], (first.speed + second.speed) / 2)).toBeUndefined();
  });

  test("pumpOverSpeed says at how many speeds the map asks for more, and that it never does where it asks for little", () => {
    const much = [
      { speed: 0.2, quantity: 0.6, pressure: 0.5 },
      { speed: 1.1, quantity: 1, pressure: 1 },
    ];
    const asking = run({ fuelCurve: much });
    const asked = burntByParts(valuesOf({ from: runFrom }, asking), asking.require(deliverySweep));
    const over = asked.filter(({ burnt, mapped }) => mapped > burnt * (1 + 1e-6)).length;
    expect(over).toBeGreaterThan(0);
    expect(over).toBeLessThan(asked.length);
    expect(pumpOverSpeed.describe(valuesOf(pumpOverSpeed, asking), metric)).toContain(
      `At ${over} of ${asked.length} speeds the map asks for more fuel than the match's parts can burn`,
    );
    const little = [
      { speed: 0.2, quantity: 0.05, pressure: 0.5 },
      { speed: 1.1, quantity: 0.05, pressure: 0.5 },
    ];
    expect(pumpOverSpeed.describe(valuesOf(pumpOverSpeed, run({ fuelCurve: little })), metric)).toContain(
      "The match's parts can burn all that the map asks for, wherever they give power.",
    );
  });

  test("pumpOverSpeed lists beside the map what the parts burn", () => {
    const { columns, rows } = pumpOverSpeed.table(valuesOf(pumpOverSpeed), metric);
    const place = columns.findIndex((column) => column[0] === "Parts burn at most");
    const column = rows.map((row) => row[place]);
    expect(column).toEqual(sweep.map(({ engineSpeed }) => {
      const burnt = burntBetween(parts, engineSpeed);
      return burnt === undefined ? "nothing" : metric.number("massFlow", burnt, "fuel");
    }));
  });
});

describe("the window of the injections", () => {
  const degrees = (angle: number) => Number(((angle * 180) / Math.PI).toPrecision(3));

  test.each([12, 36])("injectionTimeline shows %s degrees from the main injection's start, and what all fuel at one go takes", (wide) => {
    const at = run({ [injectionWindow.key]: (wide * Math.PI) / 180 });
    const { rows } = injectionTimeline.table(valuesOf(injectionTimeline, at), metric);
    const [, from, to] = rows.find(([what]) => what === "Window for all fuel at one go")! as readonly [string, number, number];
    expect(from).toBeCloseTo((-at.require(injectionStart) * 180) / Math.PI, 9);
    expect(to - from).toBeCloseTo(wide, 9);
    expect(injectionTimeline.describe(valuesOf(injectionTimeline, at), metric)).toContain(
      `From the main injection's start ${wide}° are allowed, up to ${degrees((to * Math.PI) / 180)}°: all fuel at one go takes ${degrees(at.require(injectionAngle))}°.`.replace("-", "−"),
    );
  });
});
