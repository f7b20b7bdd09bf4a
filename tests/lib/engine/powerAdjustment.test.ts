import { describe, expect, test } from "vitest";
import { adjustmentExponents, powerAdjustment } from "../../../lib/engine";
import published from "../../published/engine-power-adjustment.json" with { type: "json" };
import { close, rowsOf } from "../publishedRows";

const kind = "ISO 3046-1 power adjustment (memory formula)";

/** Vapour pressure of saturated air in Pa, Magnus form: within 0.5 % of the tables between 20 and 45 °C. */
const saturated = (kelvin: number) => 611.2 * Math.exp((17.62 * (kelvin - 273.15)) / (243.12 + kelvin - 273.15));

describe("powerAdjustment(site)", () => {
  // 5e-4 as the rows state; the vapour pressure counts in one line of exponents only.
  test.each(rowsOf(published)(kind))("meets row $id", ({ inputs, expected }) => {
    const at = inputs as Record<string, number>;
    const exponents = { name: "", humidity: at.a!, pressure: at.m!, air: at.n!, coolant: at.q! };
    const adjusted = powerAdjustment({
      pressure: at.px_kPa! * 1000,
      temperature: at.Tx_K,
      relativeHumidity: at.phi_x,
      saturationPressure: saturated(at.Tx_K!),
      chargeCoolant: at.Tcx_K,
      exponents,
      mechanicalEfficiency: at.eta_mech,
    } as never);
    close(adjusted.indicated, expected.k, 5e-4);
    close(adjusted.power, expected.alpha, 1e-3);
    close(adjusted.consumption, expected.beta, 1e-3);
  });

  test("has the exponents of the rows", () => {
    const tabled = rowsOf(published)(kind).map(({ inputs }) => [inputs.a, inputs.m, inputs.n, inputs.q].join());
    const ours = Object.values(adjustmentExponents).map((each) =>
      [each.humidity, each.pressure, each.air, each.coolant].join(),
    );
    expect(new Set(tabled)).toEqual(new Set(ours));
  });

  test("gives less power in warm air, thin air and warm coolant, and refuses what is not a site", () => {
    const site = {
      pressure: 1e5,
      temperature: 298,
      relativeHumidity: 0.3,
      saturationPressure: 3169,
      chargeCoolant: 298,
      exponents: adjustmentExponents.turbochargedCooled,
      mechanicalEfficiency: 0.8,
    };
    const power = (change: object) => powerAdjustment({ ...site, ...change } as never).power;
    expect(power({})).toBeCloseTo(1, 12);
    expect(power({ temperature: 318 })).toBeLessThan(1);
    expect(power({ pressure: 9e4 })).toBeLessThan(1);
    expect(power({ chargeCoolant: 305 })).toBeLessThan(1);
    expect(() => power({ pressure: Number.NaN })).toThrow("pressure is NaN Pa");
    expect(() => power({ temperature: 1500 })).toThrow("power left");
  });
});
