import { describe, expect, test } from "vitest";
import {
  inventedOperatingBuild,
  nozzleMassFlow,
  type TurbineField,
  turbineExpansionRatio,
  turbineWork,
  wastegateFraction,
} from "../../../lib/charge";
import { burntGas } from "../../../lib/fluid";
import published from "../../published/charge-parts.json" with { type: "json" };
import { close, rowsOf } from "../publishedRows";

const rows = rowsOf(published);
const turbine = (fields: object): TurbineField => {
  const bank = inventedOperatingBuild.path.find((element) => element.kind === "compressorBank")!;
  return { ...bank.turbine, entries: 1 as never, swallowing: "oneNozzle", ...fields };
};

describe("turbineExpansionRatio(turbine, gas)", () => {
  test.each(rows("turbine-nozzle-flow"))("swallows what the table's nozzle does: $id", ({ inputs, expected }) => {
    const ratio = inputs["expansion_ratio_total_static"] as number;
    const found = turbineExpansionRatio(turbine({ entryArea: inputs["A_eff_m2"] }), {
      massFlow: expected["m_kgps"] as number,
      temperature: inputs["T03_K"] as never,
      downstreamPressure: ((inputs["p03_Pa"] as number) / ratio) as never,
      gasConstant: inputs["R"] as number,
      ratioOfSpecificHeats: inputs["gamma"] as number,
    });
    // just below choke the flow hardly depends on the ratio: ten digits of flow are five of ratio
    close(found, ratio, 2e-4);
  });

  const gas = {
    temperature: 900 as never,
    downstreamPressure: 1e5 as never,
    gasConstant: 288,
    ratioOfSpecificHeats: 1.33,
  };
  test("is the inverse of nozzleMassFlow, and grows with flow", () => {
    let last = 1;
    for (let massFlow = 0.002; massFlow < 0.6; massFlow *= 1.3) {
      const ratio = turbineExpansionRatio(turbine({ entryArea: 1e-3 }), { ...gas, massFlow });
      expect(ratio).toBeGreaterThan(last);
      last = ratio;
      const back = nozzleMassFlow(1e-3 as never, { ...gas, pressure: (1e5 * ratio) as never } as never);
      close(back, massFlow, 1e-9);
    }
  });

  test("two nozzles in series swallow less and choke later; without flow there is no expansion", () => {
    const twice = turbine({ entryArea: 1e-3, swallowing: "twoNozzles" });
    for (const massFlow of [0.05, 0.15, 0.3]) {
      const one = turbineExpansionRatio(turbine({ entryArea: 1e-3 }), { ...gas, massFlow });
      const two = turbineExpansionRatio(twice, { ...gas, massFlow });
      expect(two).toBeGreaterThan(one);
      const between = { ...gas, pressure: (1e5 * two) as never, downstreamPressure: (1e5 * Math.sqrt(two)) as never };
      close(nozzleMassFlow(1e-3 as never, between as never), massFlow, 1e-9);
    }
    expect(turbineExpansionRatio(twice, { ...gas, massFlow: 0 })).toBe(1);
  });

  test("two entries swallow as one of twice the area", () => {
    const state = { ...gas, massFlow: 0.2 };
    const two = turbineExpansionRatio(turbine({ entryArea: 5e-4, entries: 2 }), state);
    expect(two).toBe(turbineExpansionRatio(turbine({ entryArea: 1e-3 }), state));
  });
});

describe("turbineWork(turbine, drop)", () => {
  // The table's cp is constant, 1154 J/(kg·K); with that of burnt gas the spouting velocity is up to 1 % off.
  test.each(rows("spouting-velocity"))("follows the parabola of the table: $id", ({ inputs, expected }) => {
    const wheelDiameter = 0.07;
    const { efficiency, idealDrop, speedRatio } = turbineWork(
      turbine({ wheelDiameter, peakEfficiency: inputs["eta_max"], peakSpeedRatio: inputs["x_opt"] }),
      {
        speed: ((inputs["U_tip_mps"] as number) / Math.PI / wheelDiameter) as never,
        temperature: inputs["T03_K"] as never,
        expansionRatio: inputs["expansion_ratio"] as never,
        gas: burntGas({ excessAirRatio: 1.8 as never }),
      },
    );
    close(Math.sqrt(2 * idealDrop), expected["C0_mps"], 0.015);
    close(speedRatio, expected["U_over_C0"], 0.015);
    close(efficiency, expected["eta_parabola"], 0.01);
  });

  test("is best at its speed ratio, nothing at standstill, and a brake without expansion", () => {
    const gas = burntGas({ excessAirRatio: 1.6 as never });
    const field = turbine({ wheelDiameter: 0.08 });
    const at = (speed: number, expansionRatio = 2) =>
      turbineWork(field, {
        speed: speed as never,
        temperature: 900 as never,
        expansionRatio: expansionRatio as never,
        gas,
      });
    const best = (field.peakSpeedRatio * Math.sqrt(2 * at(1).idealDrop)) / Math.PI / 0.08;
    close(at(best).efficiency, field.peakEfficiency, 1e-12);
    expect(at(0.9 * best).specificWork).toBeLessThan(at(best).specificWork);
    expect(at(1.1 * best).specificWork).toBeLessThan(at(best).specificWork);
    expect(at(0).specificWork).toBe(0);
    expect(at(1000, 1).specificWork).toBeLessThan(0);
  });
});

describe("wastegateFraction(wastegate, pressure)", () => {
  const gate = { kind: "sprung", opensAt: 2e5, fullyOpenAt: 3e5, mostFraction: 0.4 } as never;
  test("is shut below its first pressure, open above its second, and rises between", () => {
    expect(wastegateFraction(undefined, 9e5 as never)).toBe(0);
    expect(wastegateFraction(gate, 1.9e5 as never)).toBe(0);
    expect(wastegateFraction(gate, 3.1e5 as never)).toBe(0.4);
    let last = 0;
    for (let p = 2.05e5; p < 3e5; p += 5e3) {
      const now = wastegateFraction(gate, p as never);
      expect(now).toBeGreaterThan(last);
      last = now;
    }
  });
});
