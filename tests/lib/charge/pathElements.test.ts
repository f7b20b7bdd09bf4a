import { describe, expect, test } from "vitest";
import { coolingEffectiveness, ratedCooling, sprayOutlet } from "../../../lib/charge";
import { exchangerEffectiveness } from "../../../lib/cooling";
import {
  burntGas,
  moistAir,
  roadDiesel,
  saturationHumidityRatio,
  stoichiometricAirFuelRatio,
} from "../../../lib/fluid";
import published from "../../published/charge-parts.json" with { type: "json" };
import { close, rowsOf } from "../publishedRows";

const rows = rowsOf(published);

// The table's cp of dry air is constant, 1006 J/(kg·K); with that of the gas tables the charge comes out 0.4 K warmer, and
// the saturated state with it.
describe.each(rows("water-spray-in-charge"))("sprayOutlet as tabled: $id", ({ inputs, expected }) => {
  const charge = {
    dryAirFlow: 1,
    temperature: inputs["T_in_K"],
    pressure: inputs["p_Pa"],
    humidityRatio: inputs["W_in"],
  } as never;
  const spray = (waterFlow: number) =>
    sprayOutlet({ waterFlow, waterTemperature: inputs["T_water_K"], evaporationEfficiency: 1 } as never, charge);

  test("cools by what evaporates", () => {
    const outlet = spray(inputs["spray_kg_per_kg_dry_air"] as number);
    close(outlet.temperature, expected["T_out_with_spray_K"], 0.0015);
    expect(outlet.saturated).toBe(false);
    expect(outlet.liquidFlow).toBe(0);
  });

  test("stops at saturation, and drains the rest", () => {
    const outlet = spray(0.1);
    close(outlet.temperature, expected["T_saturation_limit_K"], 0.001);
    close(outlet.evaporatedFlow, expected["max_evaporated_kgpkg"], 0.015);
    close(outlet.evaporatedFlow + outlet.liquidFlow, 0.1, 1e-12);
    const held = saturationHumidityRatio({ temperature: outlet.temperature, pressure: inputs["p_Pa"] as never });
    close(outlet.humidityRatio, held, 1e-9);
    expect(outlet.saturated).toBe(true);
  });

  test("keeps its energy", () => {
    const outlet = spray(0.1);
    const before =
      (1 + (inputs["W_in"] as number)) * moistAir(inputs["W_in"] as never).enthalpy(inputs["T_in_K"] as never);
    const after = (1 + outlet.humidityRatio) * outlet.gas.enthalpy(outlet.temperature);
    close(after, before + outlet.waterEnthalpy, 1e-9);
  });
});

describe("ratedCooling(rating, sink)", () => {
  const arrangements = ["counterflow", "crossflowUnmixed", "crossflowMaximumMixed"] as const;
  test.each(arrangements)("gives its rated point back, and cools better at less flow: %s", (arrangement) => {
    const law = (transferUnits: number, capacityRatio: number) =>
      exchangerEffectiveness({
        arrangement,
        transferUnits: transferUnits as never,
        capacityRatio: capacityRatio as never,
      });
    const rating = {
      massFlow: 1,
      effectiveness: 0.75,
      chargeCapacityRate: 1010,
      sinkCapacityRate: 4000,
      chargeSideShare: 0.8,
      law,
    };
    const cooling = ratedCooling(rating as never, 300 as never);
    close(coolingEffectiveness(cooling, 1 as never, 1010), 0.75, 1e-10);
    let last = 1;
    for (const flow of [0.1, 0.3, 1, 2, 4]) {
      const now = coolingEffectiveness(cooling, flow as never, 1010 * flow);
      expect(now).toBeLessThan(last);
      last = now;
    }
  });

  // NTU rows of the table: effectiveness of counterflow without scaling of UA.
  test.each(rows("ntu"))("meets the table: $id", ({ inputs, expected }) => {
    const ratio = inputs["C_ratio"] as number;
    const law = (transferUnits: number, capacityRatio: number) =>
      exchangerEffectiveness({
        arrangement: "counterflow",
        transferUnits: transferUnits as never,
        capacityRatio: capacityRatio as never,
      });
    const effectiveness = expected["eps_counterflow"] as number;
    const rating = {
      massFlow: 1,
      effectiveness,
      chargeCapacityRate: 1000,
      sinkCapacityRate: 1000 / ratio,
      chargeSideShare: 0.8,
      law,
    };
    close(ratedCooling(rating as never, 300 as never).conductance, 1000 * (inputs["NTU"] as number), 1e-6);
  });

  test("refuses what its arrangement cannot reach", () => {
    const law = (n: number, c: number) =>
      exchangerEffectiveness({ arrangement: "parallelFlow", transferUnits: n as never, capacityRatio: c as never });
    const rating = {
      massFlow: 1,
      effectiveness: 0.9,
      chargeCapacityRate: 1000,
      sinkCapacityRate: 2000,
      chargeSideShare: 1,
      law,
    };
    // parallel flow with half as much charge as sink ends at 1/(1 + 0.5)
    expect(() => ratedCooling(rating as never, 300 as never)).toThrow(
      "ratedCooling: effectiveness is 90.0 %; this arrangement reaches no more than 66.7 % with these flows",
    );
  });
});

describe("air blendedWith(products, share)", () => {
  const humidityRatio = 0.012 as never;
  test.each([1.05, 1.6, 4, 30])("is burnt gas of excess air %s", (excessAirRatio) => {
    const airPerFuel = stoichiometricAirFuelRatio(roadDiesel) * 1.012;
    const share = (1 + airPerFuel) / (1 + excessAirRatio * airPerFuel);
    const products = burntGas({ excessAirRatio: 1 as never, humidityRatio });
    const blend = moistAir(humidityRatio).blendedWith(products, share as never);
    const whole = burntGas({ excessAirRatio: excessAirRatio as never, humidityRatio });
    close(blend.gasConstant, whole.gasConstant, 1e-12);
    for (const t of [280, 600, 1000, 1500] as never[]) {
      close(blend.specificHeat(t), whole.specificHeat(t), 1e-12);
      close(blend.enthalpy(t), whole.enthalpy(t), 1e-10);
      close(blend.temperatureAtEnthalpy(whole.enthalpy(t)), t, 1e-12);
      close(blend.isentropicTemperature(t, 0.6 as never), whole.isentropicTemperature(t, 0.6 as never), 1e-12);
    }
  });
});
