import fc from "fast-check";
import { describe, expect, test } from "vitest";
import {
  dewPoint,
  heatOfVaporization,
  humidityRatio,
  moistAir,
  relativeHumidity,
  saturationHumidityRatio,
  saturationTemperature,
  saturationTemperatureSpan,
  saturationVapourPressure,
  vapourPressure,
  wetBulbTemperature,
} from "../../../lib/fluid";
import published from "../../published/fluid-moist-air.json";
import { between, celsius, fraction, gap, kelvin, pascal, ratio, rises } from "./si";

const run = { seed: 20260101, numRuns: 200 };

describe("saturationVapourPressure(temperature)", () => {
  // The same equation to nine digits; the older ASHRAE equation is up to 0.02 % lower, IAPWS-95 up to 0.007 % higher.
  test.each(published.saturation.rows)("meets IAPWS-IF97 at $T_C °C", (row) => {
    const got = saturationVapourPressure(celsius(row.T_C));
    expect(gap(got, row.psat_Pa)).toBeLessThan(3e-9);
    expect(gap(got, row.psat_ashrae_Pa)).toBeLessThan(2e-4);
    if (row.psat_iapws95_Pa !== undefined) expect(gap(got, row.psat_iapws95_Pa)).toBeLessThan(1e-4);
  });

  // A table printed to four or five digits, of the older equation.
  test.each(published.saturationTable.rows)("meets the handbook's table at $T_C °C", (row) => {
    expect(gap(saturationVapourPressure(celsius(row.T_C)), row.psat_Pa)).toBeLessThan(3e-4);
  });

  test.each(published.saturationVerification.rows)("meets the standard's own check value at $T_K K", (row) => {
    expect(gap(saturationVapourPressure(kelvin(row.T_K)), row.psat_Pa)).toBeLessThan(3e-9);
  });

  test.each(published.waterSaturation.rows)("agrees with IAPWS-95 at $T_K K, as does heatOfVaporization", (row) => {
    expect(gap(saturationVapourPressure(kelvin(row.T_K)), row.p_sat_Pa)).toBeLessThan(1e-4);
    // Our fit is within 2e-5 of IAPWS-IF97, which is itself a fit to IAPWS-95.
    expect(gap(heatOfVaporization(kelvin(row.T_K)), row.h_fg_Jpkg)).toBeLessThan(5e-5);
  });

  test("and saturationTemperature undo each other over the whole line", () => {
    const [coldest, hottest] = saturationTemperatureSpan; // at 0 °C a gap of 0.01 % in pressure, 1e-3 K, is left to 0 °C
    const turn = fc.property(fc.double({ min: coldest + 1e-6, max: hottest - 1e-2, noNaN: true }).map(kelvin), (t) => {
      expect(gap(saturationTemperature(saturationVapourPressure(t)), t)).toBeLessThan(1e-8);
    });
    fc.assert(turn, run);
  });

  test("rises, while the heat of vaporization falls", () => {
    expect(rises(between(223.15, 647, 300).map((t) => saturationVapourPressure(kelvin(t))))).toBe(true);
    expect(rises(between(273.15, 423.15, 100).map((t) => -heatOfVaporization(kelvin(t))))).toBe(true);
  });

  // IAPWS R14-08, check value 8.94735 Pa at 230 K, and the ASHRAE (Hyland, Wexler) value 259.9 Pa at −10 °C: from memory.
  test("over ice meets the standard's check value, and the other formula at 0 °C within 0.01 %", () => {
    expect(gap(saturationVapourPressure(kelvin(230)), 8.94735)).toBeLessThan(1e-6);
    expect(gap(saturationVapourPressure(celsius(-10)), 259.9)).toBeLessThan(1e-3);
    const below = saturationVapourPressure(kelvin(273.15 - 1e-9));
    expect(below).toBeLessThan(saturationVapourPressure(kelvin(273.15)));
    expect(gap(below, saturationVapourPressure(kelvin(273.15)))).toBeLessThan(1.1e-4);
    expect(saturationTemperature(pascal(611.18))).toBe(273.15);
  });

  // Clausius and Clapeyron: L = R T² d(ln p)/dT with R = 461.52 J/(kg·K), vapour an ideal gas and the ice's volume nothing.
  test("heatOfVaporization of ice is what the slope of its vapour pressure asks for, within 0.1 %", () => {
    for (const t of between(230, 273, 12)) {
      const ratioOfPressures = saturationVapourPressure(kelvin(t + 0.05)) / saturationVapourPressure(kelvin(t - 0.05));
      expect(gap(heatOfVaporization(kelvin(t)), (461.52 * t * t * Math.log(ratioOfPressures)) / 0.1)).toBeLessThan(
        1e-3,
      );
    }
    const melting = heatOfVaporization(celsius(-1e-6)) - heatOfVaporization(celsius(0));
    expect(melting / 1e6).toBeCloseTo(0.3335, 2); // heat of melting, from memory
  });

  test("refuses deep frost, and all beyond the critical point", () => {
    expect(() => saturationVapourPressure(celsius(-51))).toThrow(
      "saturationVapourPressure: temperature is 222.15 K; it must be 223.15 to 647.096 K",
    );
    expect(() => saturationVapourPressure(kelvin(Number.NaN))).toThrow(RangeError);
    expect(() => saturationTemperature(pascal(1))).toThrow("saturationTemperature: pressure is 1 Pa");
    expect(() => saturationTemperature(pascal(Number.NaN))).toThrow(RangeError);
    expect(() => heatOfVaporization(celsius(151))).toThrow("heatOfVaporization: temperature is 424.15 K");
  });
});

describe("moist air states", () => {
  // The library behind the rows uses the older saturation equation (0.02 % lower at 20 °C, more near 0 °C) and 0.621945.
  test.each(published.states.rows)("at $T_C °C, $p_Pa Pa and humidity $RH", (row) => {
    const state = { temperature: celsius(row.T_C), pressure: pascal(row.p_Pa) };
    const w = humidityRatio({ ...state, relativeHumidity: fraction(row.RH) });
    expect(gap(w, row.W)).toBeLessThan(5e-4);
    expect(gap(vapourPressure({ pressure: state.pressure, humidityRatio: w }), row.pv_Pa)).toBeLessThan(5e-4);
    expect(relativeHumidity({ ...state, humidityRatio: w })).toBeCloseTo(row.RH, 12);
    expect(Math.abs(dewPoint({ pressure: state.pressure, humidityRatio: w }) - 273.15 - row.Tdew_C)).toBeLessThan(0.01);
    expect(Math.abs(wetBulbTemperature({ ...state, humidityRatio: w }) - 273.15 - row.Twb_C)).toBeLessThan(0.01);
    // The row's density is also a perfect gas, with R of 287.042 for dry air: 3e-5, and what humidity leaves.
    expect(gap(moistAir(w).density(state.temperature, state.pressure), row.rho_kg_m3)).toBeLessThan(1e-4);
  });

  // CIPM-2007 counts compressibility (Z down to 0.9996) and 0.4 % more vapour; the check's own tolerance is 0.1 %.
  test.each(published.density.rows)("density within 0.1 % of CIPM-2007 at $T_C °C and $p_Pa Pa", (row) => {
    const state = { temperature: celsius(row.T_C), pressure: pascal(row.p_Pa) };
    const gas = moistAir(humidityRatio({ ...state, relativeHumidity: fraction(row.RH) }));
    expect(gap(gas.density(state.temperature, state.pressure), row.rho_kg_m3)).toBeLessThan(1e-3);
  });

  // Real air holds more vapour than a perfect mixture: 0.4 to 0.6 % at these states.
  test.each(published.saturatedAir.rows)("saturated air at $T_C °C within 1 % of the real gas's table", (row) => {
    const held = saturationHumidityRatio({ temperature: celsius(row.T_C), pressure: pascal(row.p_Pa) });
    expect(held).toBeLessThan(row.W);
    expect(gap(held, row.W)).toBeLessThan(0.01);
  });

  // The handbook reads its chart: two digits of W, whole kelvins of dew point (7.6 becomes 7).
  test.each(published.workedExample.rows)(
    "wet bulb $Twb_C °C in air of $T_C °C, a worked example turned round",
    (row) => {
      const pressure = pascal(row.p_Pa);
      const temperature = celsius(row.T_C);
      const w = humidityRatio({ temperature, pressure, relativeHumidity: fraction(row.RH) });
      expect(Math.abs(w - row.W)).toBeLessThan(2e-4);
      expect(Math.abs(dewPoint({ pressure, humidityRatio: ratio(row.W) }) - celsius(row.Tdew_C))).toBeLessThan(1);
      const wet = wetBulbTemperature({ temperature, pressure, humidityRatio: ratio(row.W) });
      expect(Math.abs(wet - celsius(row.Twb_C))).toBeLessThan(0.2);
    },
  );

  test("two worked examples of a regulation", () => {
    const [intake, dew] = published.regulation.rows;
    const w = humidityRatio({
      temperature: celsius(intake!.T_C),
      pressure: pascal(intake!.p_Pa!),
      relativeHumidity: fraction(intake!.RH),
    });
    const mole = vapourPressure({ pressure: pascal(intake!.p_Pa!), humidityRatio: w }) / intake!.p_Pa!;
    expect(gap(mole, intake!.xH2O_mol_mol!)).toBeLessThan(1e-3); // printed to five digits, older saturation equation
    const vapour = dew!.RH * saturationVapourPressure(celsius(dew!.T_C));
    expect(gap(vapour, dew!.pH2O_Pa!)).toBeLessThan(1e-3);
    expect(Math.abs(saturationTemperature(pascal(vapour)) - celsius(dew!.Tdew_C!))).toBeLessThan(0.06);
  });
});

describe("water out of charge air", () => {
  test.each(published.chargeAir.rows)("cooled to $T2_C °C at $p2_Pa Pa", (row) => {
    const w = humidityRatio({
      temperature: celsius(row.T1_C),
      pressure: pascal(row.p1_Pa),
      relativeHumidity: fraction(row.RH1),
    });
    const held = saturationHumidityRatio({ temperature: celsius(row.T2_C), pressure: pascal(row.p2_Pa) });
    expect(gap(w, row.W_in)).toBeLessThan(5e-4); // the older saturation equation
    expect(gap(held, row.W_sat_after_cooler)).toBeLessThan(5e-4);
    expect(Math.abs(Math.max(0, w - held) - row.condensate_kg_per_kgda)).toBeLessThan(2e-5);
  });

  test.each(published.condensation.rows)("cooled to $T_cooler_out_K K at $p_cooler_out_Pa Pa", (row) => {
    const w = humidityRatio({
      temperature: kelvin(row.T_amb_K),
      pressure: pascal(row.p_amb_Pa),
      relativeHumidity: fraction(row.RH),
    });
    const outlet = { temperature: kelvin(row.T_cooler_out_K), pressure: pascal(row.p_cooler_out_Pa) };
    expect(gap(w, row.W_in_kgpkg)).toBeLessThan(2e-4); // 0.62196 for 0.621945, and IAPWS-95 for IAPWS-IF97
    expect(gap(saturationHumidityRatio(outlet), row.W_sat_out_kgpkg)).toBeLessThan(2e-4);
    const dew = dewPoint({ pressure: outlet.pressure, humidityRatio: w });
    expect(Math.abs(dew - row.dew_point_at_p2_K)).toBeLessThan(2e-3);
    const dropped = Math.max(0, w - saturationHumidityRatio(outlet));
    expect(Math.abs(dropped - row.condensate_kg_per_kg_dry_air)).toBeLessThan(5e-6);
  });

  test("dewPoint rises with pressure", () => {
    const compressed = between(1e5, 5e5, 20).map((p) => dewPoint({ pressure: pascal(p), humidityRatio: ratio(0.01) }));
    expect(rises(compressed)).toBe(true);
  });
});

describe("inverses and order", () => {
  const anyState = fc.record({
    temperature: fc.double({ min: 262, max: 350, noNaN: true }).map(kelvin),
    pressure: fc.double({ min: 6e4, max: 5e5, noNaN: true }).map(pascal),
    relativeHumidity: fc.double({ min: 0.05, max: 1, noNaN: true }).map(fraction),
  });

  test("air cooled to its dew point is saturated", () => {
    const saturated = fc.property(anyState, (state) => {
      const w = humidityRatio(state);
      const dew = dewPoint({ pressure: state.pressure, humidityRatio: w });
      expect(gap(saturationHumidityRatio({ temperature: dew, pressure: state.pressure }), w)).toBeLessThan(1e-9);
    });
    fc.assert(saturated, run);
  });

  test("dew point, wet bulb and dry bulb stand in this order, and meet at saturation", () => {
    const ordered = fc.property(anyState, (state) => {
      const w = humidityRatio(state);
      const dew = dewPoint({ pressure: state.pressure, humidityRatio: w });
      const wet = wetBulbTemperature({ ...state, humidityRatio: w });
      expect(dew).toBeLessThanOrEqual(wet + 1e-6);
      expect(wet).toBeLessThanOrEqual(state.temperature + 1e-6);
      const full = saturationHumidityRatio(state);
      const atFull = wetBulbTemperature({ ...state, humidityRatio: full });
      expect(Math.abs(atFull - state.temperature)).toBeLessThan(1e-6);
    });
    fc.assert(ordered, run);
  });

  test("dry air has no vapour", () => {
    const state = { temperature: celsius(25), pressure: pascal(1e5) };
    expect(humidityRatio({ ...state, relativeHumidity: fraction(0) })).toBe(0);
    expect(vapourPressure({ pressure: state.pressure, humidityRatio: ratio(0) })).toBe(0);
  });
});

describe("moist air refuses by name", () => {
  const state = { temperature: celsius(25), pressure: pascal(1e5) };

  test("relative humidity in per cent", () => {
    expect(() => humidityRatio({ ...state, relativeHumidity: fraction(60) })).toThrow(
      "humidityRatio: relativeHumidity is 60; it must be 0 to 1",
    );
    expect(() => humidityRatio({ ...state, relativeHumidity: fraction(Number.NaN) })).toThrow(RangeError);
  });

  test("water that boils", () => {
    const boiling = { temperature: celsius(120), pressure: pascal(1e5) };
    expect(() => saturationHumidityRatio(boiling)).toThrow(
      "pressure is 100000 Pa; it must be above the vapour pressure",
    );
  });

  test("air too dry for dew, or too wet for its temperature", () => {
    expect(() => dewPoint({ pressure: pascal(1e5), humidityRatio: ratio(1e-5) })).toThrow(
      "or there is neither dew nor frost",
    );
    expect(() => wetBulbTemperature({ ...state, humidityRatio: ratio(0.05) })).toThrow("cannot hold so much");
  });

  test("a wet bulb colder than the frost it knows", () => {
    const cold = { temperature: celsius(-50), pressure: pascal(1e5), humidityRatio: ratio(0) };
    expect(() => wetBulbTemperature(cold)).toThrow(
      "wetBulbTemperature: temperature of the wet bulb [K] is not between",
    );
  });

  test("no pressure, and negative humidity", () => {
    expect(() => vapourPressure({ pressure: pascal(0), humidityRatio: ratio(0.01) })).toThrow("pressure is 0 Pa");
    expect(() => vapourPressure({ pressure: pascal(1e5), humidityRatio: ratio(-1) })).toThrow(
      "humidityRatio is -1 kg/kg",
    );
  });
});
