import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { chargeCondensate, chargeCoolerOutlet } from "../../../lib/charge";
import { dryAir, humidityRatio } from "../../../lib/fluid";
import type {
  Density,
  Fraction,
  MassFlow,
  Pressure,
  PressureDifference,
  Ratio,
  Temperature,
} from "../../../lib/quantity";
import published from "../../published/charge-path.json" with { type: "json" };
import { close, type PublishedRow, rowsOf } from "../publishedRows";

const rows = rowsOf(published);
const given = (row: PublishedRow, name: string) => row.inputs[name] as number;
const within = (min: number, max: number) => fc.double({ min, max, noNaN: true });

// The table takes cp = 1005; that of air between 340 and 450 K is 1007 to 1020: 1.2 % in heat. R is 287.05 in both.
test.each(rows("cooler"))("chargeCoolerOutlet: temperature, heat and pressure loss: $id", (row) => {
  const outlet = chargeCoolerOutlet(
    {
      effectiveness: given(row, "effectiveness") as Fraction,
      sinkTemperature: given(row, "T_coolant_in_K") as Temperature,
      restriction: {
        massFlow: given(row, "m_ref_kgps") as MassFlow,
        density: given(row, "rho_ref") as Density,
        pressureLoss: given(row, "dp_ref_Pa") as PressureDifference,
      },
    },
    {
      massFlow: given(row, "m_kgps") as MassFlow,
      temperature: given(row, "T_in_K") as Temperature,
      pressure: given(row, "p_in_Pa") as Pressure,
    },
  );
  close(outlet.temperature, row.expected["T_out_K"], 1e-12);
  close(outlet.heat, row.expected["heat_W"], 0.012);
  close(outlet.pressureLoss, row.expected["dp_Pa"], 1e-5);
});

// Saturation by IAPWS in both; the table's molar ratio is rounded to 0.621945: 5e-4.
test.each(rows("condensation"))("chargeCondensate tells dew point and amount: $id", (row) => {
  const humidity = humidityRatio({
    temperature: given(row, "T_amb_K") as Temperature,
    pressure: given(row, "p_amb_Pa") as Pressure,
    relativeHumidity: given(row, "RH") as Fraction,
  });
  close(humidity, row.expected["W_in_kgpkg"], 5e-4);
  const water = chargeCondensate({
    dryAirFlow: 1 as MassFlow,
    humidityRatio: humidity,
    temperature: given(row, "T_cooler_out_K") as Temperature,
    pressure: given(row, "p_cooler_out_Pa") as Pressure,
  });
  const expected = row.expected["condensate_kg_per_kg_dry_air"] as number;
  expect(water.condenses).toBe(expected > 0);
  expect(Math.abs(water.condensateFlow - expected)).toBeLessThan(1e-5); // 5e-4 of humidities of 0.02
  close(water.dewPoint!, row.expected["dew_point_at_p2_K"], 5e-4);
});

describe("chargeCoolerOutlet", () => {
  const restriction = { massFlow: 1 as MassFlow, density: 2 as Density, pressureLoss: 6000 as PressureDifference };
  const cooler = { effectiveness: 0.8 as Fraction, sinkTemperature: 300 as Temperature, restriction };
  const inlet = { massFlow: 1 as MassFlow, temperature: 420 as Temperature, pressure: 2.5e5 as Pressure };

  test("a perfect cooler ends at its sink, a useless one changes nothing", () => {
    expect(chargeCoolerOutlet({ ...cooler, effectiveness: 1 as Fraction }, inlet).temperature).toBe(300);
    const useless = chargeCoolerOutlet({ ...cooler, effectiveness: 0 as Fraction }, inlet);
    expect(useless.temperature).toBe(420);
    expect(useless.heat).toBe(0);
  });

  test("first and second law: heat is enthalpy, and charge and sink together gain entropy", () => {
    const property = fc.property(within(0, 1), within(260, 480), within(0, 2), (effectiveness, temperature, flow) => {
      const massFlow = (flow + 0.01) as MassFlow;
      const outlet = chargeCoolerOutlet(
        { ...cooler, effectiveness: effectiveness as Fraction },
        { massFlow, temperature: temperature as Temperature, pressure: 2.5e5 as Pressure },
      );
      const ofCharge =
        dryAir.entropy(outlet.temperature) -
        dryAir.entropy(temperature as Temperature) -
        dryAir.gasConstant * Math.log(outlet.pressure / 2.5e5);
      expect(massFlow * ofCharge + outlet.heat / 300).toBeGreaterThan(-1e-9);
      const enthalpy = dryAir.enthalpy(temperature as Temperature) - dryAir.enthalpy(outlet.temperature);
      expect(Math.abs(outlet.heat - massFlow * enthalpy)).toBeLessThan(1e-6);
    });
    fc.assert(property, { seed: 20260101, numRuns: 200 });
  });

  test("refuses a flow that would lose more pressure than there is", () => {
    expect(() => chargeCoolerOutlet(cooler, { ...inlet, massFlow: 10 as MassFlow })).toThrow(
      "chargeCoolerOutlet: pressure left after the loss is",
    );
  });
});

test("chargeCondensate of dry air is nothing", () => {
  const dry = { dryAirFlow: 1 as MassFlow, temperature: 300 as Temperature, pressure: 3e5 as Pressure };
  expect(chargeCondensate({ ...dry, humidityRatio: 0 as Ratio })).toEqual({
    condenses: false,
    dewPoint: undefined,
    condensateFlow: 0,
    latentHeat: 0,
  });
});
