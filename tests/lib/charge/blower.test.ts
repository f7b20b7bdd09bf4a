import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  type Blower,
  blowerDelivery,
  blowerShaftPower,
  blowerVolumetricEfficiency,
  blowerWorkPerTurn,
} from "../../../lib/charge";
import { dryAir } from "../../../lib/fluid";
import type {
  Area,
  Fraction,
  Power,
  Pressure,
  Ratio,
  RotationalSpeed,
  SpecificHeat,
  Temperature,
  VolumePerTurn,
} from "../../../lib/quantity";
import published from "../../published/charge-blower.json" with { type: "json" };
import { close, type PublishedRow, rowsOf } from "../publishedRows";

const rows = rowsOf(published);
const given = (row: PublishedRow, name: string) => row.inputs[name] as number;
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const seed = 20260101;

const cycleOf = (row: PublishedRow, displacement: number, builtIn: number) => ({
  inletPressure: given(row, "p1_Pa") as Pressure,
  dischargePressure: (given(row, "p1_Pa") * given(row, "PR")) as Pressure,
  displacementPerTurn: displacement as VolumePerTurn,
  builtInVolumeRatio: builtIn as Ratio,
  ratioOfSpecificHeats: given(row, "gamma") as Ratio,
});

describe("blowerWorkPerTurn", () => {
  test.each(rows("roots-work"))("without internal compression it is a rectangle: $id", (row) => {
    const work = blowerWorkPerTurn(cycleOf(row, given(row, "V_per_cycle_m3"), 1));
    close(work, row.expected["W_J"], 1e-8);
    close((work * given(row, "cycles_per_min")) / 60, row.expected["power_W"], 1e-8);
  });

  // Checked in the table by quadrature of the diagram.
  test.each(rows("built-in-ratio-work"))("with a built-in volume ratio: $id", (row) => {
    close(blowerWorkPerTurn(cycleOf(row, given(row, "V_in_m3"), given(row, "Vi"))), row.expected["W_J"], 1e-8);
  });

  test("is least, and isentropic, where the built-in ratio suits the pressures", () => {
    const cycle = {
      inletPressure: 1e5 as Pressure,
      dischargePressure: 2e5 as Pressure,
      displacementPerTurn: 0.002 as VolumePerTurn,
      ratioOfSpecificHeats: 1.4 as Ratio,
    };
    const at = (builtIn: number) => blowerWorkPerTurn({ ...cycle, builtInVolumeRatio: builtIn as Ratio });
    const suited = 2 ** (1 / 1.4);
    close(at(suited), 3.5 * 200 * (2 ** (2 / 7) - 1), 1e-12);
    for (const builtIn of [1, 1.3, 1.6, 1.7, 2]) expect(at(builtIn)).toBeGreaterThan(at(suited));
  });
});

const machine = (row: PublishedRow): Blower => ({
  displacementPerTurn: given(row, "V_d_m3_per_rev") as VolumePerTurn,
  driveRatio: 1 as Ratio,
  builtInVolumeRatio: given(row, "Vi") as Ratio,
  filling: { kind: "fixed", volumetricEfficiency: given(row, "eta_vol") as Fraction },
  mechanicalEfficiency: given(row, "eta_mech") as Fraction,
});

// The table takes exponent 1.4 and constant cp; the air here has 1.400 to 1.397 on the way: 0.1 % in power of a
// built-in ratio, 1 % in the rise of temperature and in efficiency.
test.each(rows("blower-operating-point"))("blowerDelivery meets a worked point: $id", (row) => {
  const inletTemperature = given(row, "T1_K") as Temperature;
  const delivery = blowerDelivery(machine(row), {
    blowerSpeed: (given(row, "n_rpm") / 60) as RotationalSpeed,
    inletPressure: given(row, "p1_Pa") as Pressure,
    inletTemperature,
    pressureRatio: given(row, "PR") as Ratio,
  });
  close(delivery.massFlow, row.expected["m_kgps"], 1e-5);
  close(delivery.gasPower, row.expected["P_indicated_W"], 1e-3);
  close(delivery.shaftPower, row.expected["P_shaft_W"], 1e-3);
  close(delivery.outletTemperature - inletTemperature, (row.expected["T2_K"] as number) - inletTemperature, 0.01);
  close(delivery.isentropicEfficiency, row.expected["eta_isen_gas"], 0.01);
});

describe("blowerVolumetricEfficiency", () => {
  const stateOf = (row: PublishedRow) => ({
    pressureRatio: given(row, "PR") as Ratio,
    blowerSpeed: (given(row, "n_rpm") / 60) as RotationalSpeed,
    displacementPerTurn: given(row, "V_d_m3_per_rev") as VolumePerTurn,
    inletTemperature: given(row, "T1_K") as Temperature,
    gasConstant: given(row, "R") as SpecificHeat,
    ratioOfSpecificHeats: given(row, "gamma") as Ratio,
  });

  test.each(rows("leakage-orifice"))("with clearances that leak like a nozzle: $id", (row) => {
    const filling = { kind: "clearance", area: given(row, "A_leak_eff_m2") as Area } as const;
    close(blowerVolumetricEfficiency(filling, stateOf(row)), row.expected["eta_vol"], 1e-8);
  });

  const state = stateOf(rows("leakage-orifice")[0]!);

  test("a fitted line by hand: 1 − (0.05 √0.6 + 0.1 × 0.6)/2 − 0.01 × 4 at twice the reference speed", () => {
    const filling = {
      kind: "fitted",
      slipPerRoot: 0.05 as Ratio,
      slipPerRatio: 0.1 as Ratio,
      inletLoss: 0.01 as Ratio,
      referenceSpeed: 100 as RotationalSpeed,
    } as const;
    close(blowerVolumetricEfficiency(filling, state), 1 - (0.05 * Math.sqrt(0.6) + 0.06) / 2 - 0.04, 1e-12);
  });

  test("slow blowers lose the more, and one that loses all is refused", () => {
    const filling = { kind: "clearance", area: 7e-5 as Area } as const;
    const at = (speed: number) =>
      blowerVolumetricEfficiency(filling, { ...state, blowerSpeed: speed as RotationalSpeed });
    close(1 - at(50), 2 * (1 - at(100)), 1e-12); // the leak does not know the speed
    expect(() => at(5)).toThrow("blowerVolumetricEfficiency: leakage at pressure ratio 1.600 and 5.000 rev/s leaves");
  });
});

describe("blowerDelivery", () => {
  const blower = machine(rows("blower-operating-point")[0]!);
  const duty = {
    blowerSpeed: 200 as RotationalSpeed,
    inletPressure: 2.4e5 as Pressure,
    inletTemperature: 325 as Temperature,
  };

  test("first and second law", () => {
    const property = fc.property(within(1, 3), within(1, 1.6), within(0.6, 1), (ratio, builtIn, filled) => {
      const { massFlow, gasPower, outletTemperature } = blowerDelivery(
        {
          ...blower,
          builtInVolumeRatio: builtIn as Ratio,
          filling: { kind: "fixed", volumetricEfficiency: filled as Fraction },
        },
        { ...duty, pressureRatio: ratio as Ratio },
      );
      const rise = dryAir.enthalpy(outletTemperature) - dryAir.enthalpy(duty.inletTemperature);
      expect(Math.abs(massFlow * rise - gasPower)).toBeLessThan(1e-6);
      const entropy =
        dryAir.entropy(outletTemperature) -
        dryAir.entropy(duty.inletTemperature) -
        dryAir.gasConstant * Math.log(ratio);
      // the diagram's exponent is that of the inlet; its cp grows by 0.3 % while 3 bar are made
      expect(entropy).toBeGreaterThan(-0.05);
    });
    fc.assert(property, { seed, numRuns: 200 });
  });

  test("at ratio 1 and no built-in ratio it takes no gas power and warms nothing", () => {
    const idle = blowerDelivery(blower, { ...duty, pressureRatio: 1 as Ratio });
    expect(idle.gasPower).toBe(0);
    expect(idle.shaftPower).toBe(0);
    close(idle.outletTemperature, 325, 1e-14);
  });

  test("below ratio 1 it says what to do", () => {
    expect(() => blowerDelivery(blower, { ...duty, pressureRatio: 0.95 as Ratio })).toThrow(
      "blowerDelivery: pressureRatio is 0.9500; the blower would be a restriction: open its bypass",
    );
  });

  test("blowerShaftPower adds windage with the cube of speed", () => {
    const windy = { ...blower, mechanicalEfficiency: 0.9 as Fraction, windage: 0.001 };
    close(blowerShaftPower(windy, 100 as RotationalSpeed, 9000 as Power), 11000, 1e-12);
    close(blowerShaftPower(windy, 200 as RotationalSpeed, 9000 as Power), 18000, 1e-12);
  });
});
