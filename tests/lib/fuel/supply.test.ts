import fc from "fast-check";
import { expect, test } from "vitest";
import * as fuel from "../../../lib/fuel";
import { gap, mm, plain } from "../drive/plain";
import { fuelRows, litrePerMinute } from "./published";

const supplyFlow = plain(fuel.supplyFlow);
const fuelLineFlow = plain(fuel.fuelLineFlow);
const inletPressureMargin = plain(fuel.inletPressureMargin);
const throttlingRise = plain(fuel.throttlingRise);
const returnHeat = plain(fuel.returnHeat);
const mixedTemperature = plain(fuel.mixedTemperature);
const tankTemperature = plain(fuel.tankTemperature);
const settledTankTemperature = plain(fuel.settledTankTemperature);

test("supplyFlow splits into what is burnt and what returns, nothing lost", () => {
  const { supply, returned } = supplyFlow({ injected: 0.04, injectorReturn: 0.005, pumpReturn: 0.06 });
  expect(supply - returned).toBeCloseTo(0.04, 15);
  expect(() => supplyFlow({ injected: -1, injectorReturn: 0, pumpReturn: 0 })).toThrow("injected is -1 kg/s");
});

// The rows take 64/Re below 2300 and Blasius above. Ours is the same while laminar, and flags what lies between.
test.each(fuelRows("line-pressure-drop"))(
  "fuelLineFlow meets $id where it is laminar, and lies between the laws where not",
  ({ inputs, expected }) => {
    const line = fuelLineFlow({
      massFlow: inputs.Q_Lpmin * litrePerMinute * inputs.rho,
      density: inputs.rho,
      kinematicViscosity: inputs.nu_m2ps,
      diameter: mm(inputs.d_mm),
      length: inputs.L_m,
    });
    expect(gap(line.velocity, expected.v_mps)).toBeLessThan(1e-8);
    expect(gap(line.reynoldsNumber, expected.Re)).toBeLessThan(1e-8);
    expect(line.uncertain).toBe(expected.Re > 2300 && expected.Re < 4000);
    if (!line.uncertain) {
      expect(gap(line.loss, expected.dp_Pa)).toBeLessThan(1e-8);
    } else {
      const laminar = (expected.dp_Pa * 64) / expected.Re / expected.f_darcy;
      expect(line.loss).toBeGreaterThan(laminar);
      // Colebrook lies up to 3 % above Blasius at so low a Reynolds number.
      expect(line.loss).toBeLessThan(1.03 * expected.dp_Pa);
    }
  },
);
test("fuelLineFlow adds fittings as velocity heads", () => {
  const line = { massFlow: 0.06, density: 835, kinematicViscosity: 3e-6, diameter: 0.012, length: 4 };
  const { velocity, loss } = fuelLineFlow(line);
  const fitted = fuelLineFlow({ ...line, lossCoefficient: 6 });
  expect(fitted.loss - loss).toBeCloseTo((6 * 835 * velocity ** 2) / 2, 8);
});

test("inletPressureMargin counts height, losses and need, and answers below zero", () => {
  const inlet = {
    sourcePressure: 101325,
    height: 1,
    density: 835,
    lineLoss: 6000,
    filterLoss: 10000,
    leastPressure: 66000,
  };
  // By hand: 101325 − 8188.6 − 6000 − 10000 − 66000 = 11136 Pa.
  expect(inletPressureMargin(inlet)).toBeCloseTo(11136.4, 1);
  expect(inletPressureMargin({ ...inlet, height: -1 }) - inletPressureMargin(inlet)).toBeCloseTo(2 * 835 * 9.80665, 8);
  expect(inletPressureMargin({ ...inlet, filterLoss: 30000 })).toBeLessThan(0);
  expect(() => inletPressureMargin({ ...inlet, height: Number.NaN })).toThrow("height is NaN m");
});

test.each(fuelRows("throttling-temperature"))(
  "throttlingRise meets $id with and without expansion",
  ({ inputs, expected }) => {
    const throttling = {
      pressureDrop: inputs.dp_bar * 1e5,
      temperature: inputs.T_K,
      density: inputs.rho,
      specificHeat: inputs.cp,
      expansion: inputs.alpha_1perK,
    };
    expect(gap(throttlingRise(throttling), expected.dT_with_expansion_term_K)).toBeLessThan(1e-8);
    expect(gap(throttlingRise({ ...throttling, expansion: 0 }), expected.dT_incompressible_K)).toBeLessThan(1e-8);
  },
);

test("returnHeat of a stiff liquid that is spilled is the power that its pressure was worth", () => {
  const rise = throttlingRise({
    pressureDrop: 1.6e8,
    temperature: 313,
    density: 835,
    specificHeat: 2000,
    expansion: 0,
  });
  const heat = returnHeat({ massFlow: 0.02, specificHeat: 2000, temperatureRise: rise });
  expect(heat).toBeCloseTo((0.02 / 835) * 1.6e8, 6);
});

test("mixedTemperature keeps the heat of what is mixed and lies within it", () => {
  const stream = fc.record({
    massFlow: fc.double({ min: 1e-4, max: 0.2, noNaN: true }),
    temperature: fc.double({ min: 260, max: 400, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(stream, { minLength: 1, maxLength: 5 }), (streams) => {
      const mixed = mixedTemperature(streams);
      const temperatures = streams.map(({ temperature }) => temperature);
      expect(mixed).toBeGreaterThan(Math.min(...temperatures) - 1e-9);
      expect(mixed).toBeLessThan(Math.max(...temperatures) + 1e-9);
      expect(streams.reduce((sum, s) => sum + s.massFlow * (s.temperature - mixed), 0)).toBeCloseTo(0, 10);
    }),
    { seed: 20260101, numRuns: 200 },
  );
  expect(() => mixedTemperature([])).toThrow("sum of flows is 0 kg/s");
});

test("tankTemperature starts where it starts, rises by Q t/(m c) at first, and settles", () => {
  const tank = {
    heat: 3000,
    conductance: 60,
    surroundings: 298,
    fuelMass: 150,
    specificHeat: 2000,
    startTemperature: 305,
  };
  expect(tankTemperature({ ...tank, time: 0 })).toBe(305);
  expect(tankTemperature({ ...tank, time: 1e7 })).toBeCloseTo(settledTankTemperature(tank), 9);
  // One time constant, m c/UA = 5000 s, leaves 1/e of the way from 305 K to 348 K.
  expect(tankTemperature({ ...tank, time: 5000 })).toBeCloseTo(348 - 43 / Math.E, 9);
  const insulated = { ...tank, conductance: 0 };
  expect(tankTemperature({ ...insulated, time: 1000 })).toBeCloseTo(305 + 10, 12);
  expect(tankTemperature({ ...tank, conductance: 1e-9, time: 1000 })).toBeCloseTo(315, 8);
  expect(() => settledTankTemperature(insulated)).toThrow("conductance is 0 W/K");
});
