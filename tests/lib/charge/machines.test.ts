import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  compressorOutlet,
  compressorPower,
  correctedFlow,
  correctedSpeed,
  criticalPressureRatio,
  mapReferences,
  nozzleArea,
  nozzleMassFlow,
  pressureAfterTurbine,
  turbineBalance,
} from "../../../lib/charge";
import { burntGas, dryAir } from "../../../lib/fluid";
import type {
  Area,
  Density,
  Fraction,
  MassFlow,
  Power,
  Pressure,
  PressureDifference,
  Ratio,
  RotationalSpeed,
  SpecificHeat,
  Temperature,
} from "../../../lib/quantity";
import published from "../../published/charge-compressor-turbine.json" with { type: "json" };
import { close, type PublishedRow, rowsOf } from "../publishedRows";

const rows = rowsOf(published);
const given = (row: PublishedRow, name: string) => row.inputs[name] as number;
const seed = 20260101;
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

describe("map quantities", () => {
  const names = [
    ["m_corr_100kPa_298K_kgps", "N_corr_100kPa_298K_rpm"],
    ["m_corr_ISA_101.325kPa_288.15K_kgps", "N_corr_ISA_101.325kPa_288.15K_rpm"],
    ["m_corr_96kPa_302.8K_kgps", "N_corr_96kPa_302.8K_rpm"],
  ] as const;

  // Definitions. The third pair was rounded in the table (28.4 inHg by another column): 1e-4.
  test.each(rows("corrected-flow-speed"))("correctedFlow and correctedSpeed on three references: $id", (row) => {
    const inlet = { temperature: given(row, "T_K") as Temperature, pressure: given(row, "p_Pa") as Pressure };
    mapReferences.forEach((reference, i) => {
      const [flow, speed] = names[i]!;
      close(correctedFlow(given(row, "m_kgps") as MassFlow, inlet, reference), row.expected[flow], 1e-4);
      const turns = correctedSpeed((given(row, "N_rpm") / 60) as RotationalSpeed, inlet.temperature, reference);
      close(turns * 60, row.expected[speed], 1e-4);
    });
  });
});

describe("compressorOutlet", () => {
  // Saravanamuttoo, Rogers & Cohen, Gas Turbine Theory, ex. 4.1 (from memory): rise 193.3 K, ratio 4.24. The book
  // takes cp = 1005; air's cp grows by 1.5 % on the way, which lowers the rise for a given ratio by about 1 %.
  test("meets a textbook stage of ratio 4.24 within the growth of cp", () => {
    const [row] = rows("textbook-stage").filter(({ id }) => id.endsWith("s13"));
    const outlet = compressorOutlet({
      inletTemperature: given(row!, "T01_K") as Temperature,
      pressureRatio: row!.expected["p03_over_p01"] as Ratio,
      isentropicEfficiency: given(row!, "eta_c") as Fraction,
    });
    close(outlet.outletTemperature - given(row!, "T01_K"), row!.expected["dT0_K"], 0.015);
    close(given(row!, "m_kgps") * outlet.specificWork, row!.expected["power_W"], 0.015);
  });

  test("first and second law: work is enthalpy, and entropy never falls", () => {
    const property = fc.property(within(230, 450), within(1, 6), within(0.4, 1), (temperature, ratio, efficiency) => {
      const inletTemperature = temperature as Temperature;
      const compression = {
        inletTemperature,
        pressureRatio: ratio as Ratio,
        isentropicEfficiency: efficiency as Fraction,
      };
      const { outletTemperature, specificWork } = compressorOutlet(compression);
      const rise = dryAir.enthalpy(outletTemperature) - dryAir.enthalpy(inletTemperature);
      expect(Math.abs(rise - specificWork)).toBeLessThan(1e-6); // J/kg, rounding of enthalpies of 1e5
      const entropy =
        dryAir.entropy(outletTemperature) - dryAir.entropy(inletTemperature) - dryAir.gasConstant * Math.log(ratio);
      expect(entropy).toBeGreaterThan(-1e-9);
    });
    fc.assert(property, { seed, numRuns: 200 });
  });

  test("at efficiency 1 the entropy stays", () => {
    const ideal = {
      inletTemperature: 300 as Temperature,
      pressureRatio: 3 as Ratio,
      isentropicEfficiency: 1 as Fraction,
    };
    const { outletTemperature } = compressorOutlet(ideal);
    const entropy = dryAir.entropy(outletTemperature) - dryAir.entropy(300 as Temperature);
    close(entropy, dryAir.gasConstant * Math.log(3), 1e-12);
  });

  test("at ratio 1 nothing happens", () => {
    const idle = {
      inletTemperature: 300 as Temperature,
      pressureRatio: 1 as Ratio,
      isentropicEfficiency: 0.7 as Fraction,
    };
    close(compressorOutlet(idle).outletTemperature, 300, 1e-14);
    expect(Math.abs(compressorPower(1 as MassFlow, idle))).toBeLessThan(1e-6);
  });

  test("below ratio 1 it refuses", () => {
    const backwards = { inletTemperature: 300 as Temperature, isentropicEfficiency: 0.7 as Fraction };
    expect(() => compressorOutlet({ ...backwards, pressureRatio: 0.9 as Ratio })).toThrow("pressureRatio is 0.9");
  });
});

describe("nozzle", () => {
  // Two closed forms agree in the table; 1e-8 as printed.
  test.each(rows("turbine-nozzle-flow"))("nozzleMassFlow, choked or not: $id", (row) => {
    const pressure = given(row, "p03_Pa") as Pressure;
    const state = {
      pressure,
      temperature: given(row, "T03_K") as Temperature,
      downstreamPressure: (pressure / given(row, "expansion_ratio_total_static")) as Pressure,
      gasConstant: given(row, "R") as SpecificHeat,
      ratioOfSpecificHeats: given(row, "gamma") as Ratio,
    };
    const flow = nozzleMassFlow(given(row, "A_eff_m2") as Area, state);
    close(flow, row.expected["m_kgps"], 1e-8);
    close(nozzleArea(flow, state), given(row, "A_eff_m2"), 1e-12);
    close(criticalPressureRatio(state.ratioOfSpecificHeats), row.expected["critical_ratio"], 1e-8);
  });
});

describe("turbineBalance", () => {
  const duty = {
    compressorPower: 120e3 as Power,
    exhaustFlow: 1.1 as MassFlow,
    inletTemperature: 900 as Temperature,
    isentropicEfficiency: 0.68 as Fraction,
    mechanicalEfficiency: 0.97 as Fraction,
    gas: burntGas({ excessAirRatio: 1.65 as Ratio }),
  };

  // Watson & Janota form with cp 1150 and exponent 1.33; the gas here has cp 1140 to 1160 and exponent about 1.33
  // at these temperatures: 1.5 % in ratio, 3 K in temperature.
  test.each(rows("turbo-power-balance"))("meets the constant-property form: $id", (row) => {
    const airFlow = given(row, "m_air_kgps");
    const airFuelRatio = given(row, "AFR");
    const balance = turbineBalance({
      compressorPower: row.expected["P_c_W"] as Power,
      exhaustFlow: (airFlow * (1 + 1 / airFuelRatio)) as MassFlow,
      inletTemperature: given(row, "T3_K") as Temperature,
      isentropicEfficiency: given(row, "eta_t") as Fraction,
      mechanicalEfficiency: given(row, "eta_mech") as Fraction,
      gas: burntGas({ excessAirRatio: (airFuelRatio / 14.57) as Ratio }),
    });
    close(balance.expansionRatio, row.expected["expansion_ratio"], 0.015);
    expect(Math.abs(balance.outletTemperature - (row.expected["T4_K"] as number))).toBeLessThan(3);
    const compressor = compressorPower(airFlow as MassFlow, {
      inletTemperature: given(row, "T1_K") as Temperature,
      pressureRatio: given(row, "PR_c") as Ratio,
      isentropicEfficiency: given(row, "eta_c") as Fraction,
    });
    close(compressor, row.expected["P_c_W"], 0.01);
  });

  test("first and second law, wastegate or not", () => {
    const property = fc.property(within(1e3, 150e3), within(0.4, 1), within(0, 0.5), (power, efficiency, gate) => {
      const { expansionRatio, turbinePower, outletTemperature, mechanicalLoss } = turbineBalance({
        ...duty,
        compressorPower: power as Power,
        isentropicEfficiency: efficiency as Fraction,
        wastegateFraction: gate as Fraction,
      });
      const { gas, inletTemperature, exhaustFlow } = duty;
      const drop = exhaustFlow * (gas.enthalpy(inletTemperature) - gas.enthalpy(outletTemperature));
      close(drop, turbinePower, 1e-9); // small difference of enthalpies of 7e5 J/kg
      close(turbinePower - mechanicalLoss, power, 1e-12);
      const entropy =
        gas.entropy(outletTemperature) - gas.entropy(inletTemperature) + gas.gasConstant * Math.log(expansionRatio);
      expect(entropy).toBeGreaterThan(-1e-9);
    });
    fc.assert(property, { seed, numRuns: 200 });
  });

  test("no power, no expansion", () => {
    const idle = turbineBalance({ ...duty, compressorPower: 0 as Power });
    close(idle.expansionRatio, 1, 1e-14);
    close(idle.outletTemperature, 900, 1e-14);
  });

  test("a duty beyond the exhaust is refused with what is needed and available", () => {
    expect(() => turbineBalance({ ...duty, compressorPower: 900e3 as Power })).toThrow(
      /not enough exhaust energy; the compressors need 900\.0 kW, the exhaust at 900 K gives at most \d+\.\d kW/,
    );
  });

  test("the power called available is the last that is not refused", () => {
    const { availablePower } = turbineBalance(duty);
    expect(() => turbineBalance({ ...duty, compressorPower: (availablePower * 0.9999) as Power })).not.toThrow();
    expect(() => turbineBalance({ ...duty, compressorPower: (availablePower * 1.0001) as Power })).toThrow();
  });
});

test("pressureAfterTurbine meets its own loss at the density it leads to", () => {
  const pipe = {
    ambientPressure: 1e5 as Pressure,
    exhaustFlow: 1.3 as MassFlow,
    temperature: 820 as Temperature,
    ratedFlow: 1.1 as MassFlow,
    ratedDensity: 0.45 as Density,
    ratedLoss: 8000 as PressureDifference,
    gas: dryAir,
  };
  const pressure = pressureAfterTurbine(pipe);
  const density = dryAir.density(pipe.temperature, pressure);
  close(pressure - 1e5, 8000 * (1.3 / 1.1) ** 2 * (0.45 / density), 1e-10);
  expect(pressureAfterTurbine({ ...pipe, ratedLoss: 0 as PressureDifference })).toBe(1e5);
});
