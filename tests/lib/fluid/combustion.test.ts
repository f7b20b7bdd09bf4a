import { describe, expect, test } from "vitest";
import {
  burntGas,
  burntGasComposition,
  type DieselFuel,
  dieselFuels,
  dryAir,
  marineDistillate,
  methylEster,
  moistAir,
  paraffinicDiesel,
  roadDiesel,
  species,
  speciesNames,
  stoichiometricAirFuelRatio,
} from "../../../lib/fluid";
import published from "../../published/fluid-combustion.json";
import { between, gap, joulePerKilogram, kelvin, ratio, rises } from "./si";

const hydrocarbon = (hydrogenToCarbon: number): DieselFuel => ({
  ...roadDiesel,
  hydrogenToCarbon: ratio(hydrogenToCarbon),
  oxygenToCarbon: ratio(0),
});

describe("stoichiometricAirFuelRatio(fuel)", () => {
  // The source takes carbon as 12.011, we take 12.0107 out of the molecules of the gas table: 2e-5.
  test.each(published.stoichiometry.rows)("meets the balance of $fuel", (row) => {
    expect(gap(stoichiometricAirFuelRatio(hydrocarbon(row.H_to_C)), row.AFR_st)).toBeLessThan(3e-5);
  });

  // From memory, and printed to three digits for air of 21 % oxygen: 1 to 1.5 %.
  test.each(published.textbookStoichiometry.rows)("is near the textbook's for $fuel (from memory)", (row) => {
    expect(gap(stoichiometricAirFuelRatio(hydrocarbon(row.H_to_C)), row.AFR_st)).toBeLessThan(0.015);
  });

  test("rises with hydrogen, falls with oxygen", () => {
    expect(rises(between(1.5, 2.3, 9).map((h) => stoichiometricAirFuelRatio(hydrocarbon(h))))).toBe(true);
    const oxygenated = between(0, 0.2, 9).map((o) => ({ ...roadDiesel, oxygenToCarbon: ratio(o) }));
    expect(rises(oxygenated.map((fuel) => -stoichiometricAirFuelRatio(fuel)))).toBe(true);
  });

  test("by hand for methane: 2/0.209476 · 28.96512/16.04246 = 17.2385", () => {
    expect(stoichiometricAirFuelRatio(hydrocarbon(4))).toBeCloseTo(17.2385, 3);
  });

  test("refuses a fuel that is none", () => {
    expect(() => stoichiometricAirFuelRatio(hydrocarbon(5))).toThrow(
      "road diesel: hydrogenToCarbon is 5; it must be 0.5 to 4",
    );
    expect(() => stoichiometricAirFuelRatio(hydrocarbon(Number.NaN))).toThrow(RangeError);
    expect(() => stoichiometricAirFuelRatio({ ...roadDiesel, oxygenToCarbon: ratio(-0.1) })).toThrow("oxygenToCarbon");
  });
});

describe("burntGas(mix)", () => {
  // Amounts to nine digits from the same balance, with carbon 12.011 in the molar mass of the fuel only.
  test.each(published.products.rows)("has the published make-up for $fuel at lambda $lambda", (row) => {
    const mix = { excessAirRatio: ratio(row.lambda), fuel: hydrocarbon(row.H_to_C) };
    const amounts = burntGasComposition(mix);
    const total = speciesNames.reduce((sum, name) => sum + amounts[name], 0);
    expect(Math.abs(amounts.carbonDioxide / total - row.x_CO2)).toBeLessThan(2e-9);
    expect(Math.abs(amounts.waterVapour / total - row.x_H2O)).toBeLessThan(2e-9);
    expect(Math.abs(amounts.oxygen / total - row.x_O2)).toBeLessThan(2e-9);
    expect(Math.abs(amounts.nitrogen / total - row.x_N2)).toBeLessThan(2e-9);
    expect(Math.abs(amounts.argon / total - row.x_AR)).toBeLessThan(2e-9);
    const dry = total - amounts.waterVapour;
    expect(Math.abs(amounts.oxygen / dry - row.x_O2_dry)).toBeLessThan(2e-9);
    const gas = burntGas(mix);
    expect(gap(1000 * gas.molarMass, row.M_g_mol)).toBeLessThan(1e-6);
    expect(gap(gas.gasConstant, row.R_J_kgK)).toBeLessThan(1e-6);
    expect(gap(row.lambda * stoichiometricAirFuelRatio(mix.fuel), row.AFR)).toBeLessThan(3e-5);
  });

  // Same polynomials, printed to nine digits.
  test.each(published.specificHeat.rows)("has the published cp and γ at lambda $lambda and $T_K K", (row) => {
    const gas = row.lambda === null ? dryAir : burntGas({ excessAirRatio: ratio(row.lambda), fuel: hydrocarbon(1.8) });
    expect(gap(gas.specificHeat(kelvin(row.T_K)) / 1000, row.cp_kJ_kgK)).toBeLessThan(1e-6);
    expect(gap(gas.ratioOfSpecificHeats(kelvin(row.T_K)), row.gamma)).toBeLessThan(1e-6);
  });

  // Heats of formation of the products from the gas table: CO₂ −393 510, H₂O −241 826 J/mol. Without dissociation both
  // sides solve the same balance; 0.05 K is left for the atomic mass of carbon and those two rounded figures.
  test.each(published.flameTemperature.rows)("burns $fuel at lambda $lambda to the published temperature", (row) => {
    const [carbon, hydrogen] = row.fuel.startsWith("C8H18") ? [8, 18] : [12, 23];
    const fuel = hydrocarbon(hydrogen / carbon);
    const heat = (row.hf_J_mol - carbon * -393510 - (hydrogen / 2) * -241826) / carbon; // J per mol of carbon
    const mix = { excessAirRatio: ratio(row.lambda), fuel };
    const amounts = burntGasComposition(mix);
    const burnt = speciesNames.reduce((sum, name) => sum + amounts[name] * species[name].molarMass, 0);
    const fuelMass = carbonMass + fuel.hydrogenToCarbon * hydrogenMass;
    const airMass = burnt - fuelMass;
    const brought = (heat + airMass * dryAir.enthalpy(kelvin(row.air_K))) / burnt;
    expect(Math.abs(burntGas(mix).temperatureAtEnthalpy(joulePerKilogram(brought)) - row.T_ad_K)).toBeLessThan(0.05);
  });

  const carbonMass = 44.0095e-3 - 31.9988e-3;
  const hydrogenMass = (18.01528e-3 - 31.9988e-3 / 2) / 2;

  test("loses no mass: products weigh what fuel and moist air did", () => {
    for (const fuel of dieselFuels) {
      for (const humidityRatio of [0, 0.03]) {
        const amounts = burntGasComposition({ excessAirRatio: ratio(1.7), humidityRatio: ratio(humidityRatio), fuel });
        const burnt = speciesNames.reduce((sum, name) => sum + amounts[name] * species[name].molarMass, 0);
        const fuelMass = carbonMass + fuel.hydrogenToCarbon * hydrogenMass + fuel.oxygenToCarbon * 15.9994e-3;
        const air = 1.7 * stoichiometricAirFuelRatio(fuel) * fuelMass * (1 + humidityRatio);
        expect(gap(burnt, fuelMass + air)).toBeLessThan(1e-14);
      }
    }
  });

  test("tends to air as the air grows: within 0.1 % at lambda 1000", () => {
    const thin = burntGas({ excessAirRatio: ratio(1000) });
    const moist = burntGas({ excessAirRatio: ratio(1000), humidityRatio: ratio(0.02) });
    for (const t of between(250, 2400, 12).map(kelvin)) {
      expect(gap(thin.specificHeat(t), dryAir.specificHeat(t))).toBeLessThan(1e-3);
      expect(gap(moist.specificHeat(t), moistAir(ratio(0.02)).specificHeat(t))).toBeLessThan(1e-3);
    }
  });

  test("stores less heat per kilogram the leaner it is", () => {
    const lean = between(1, 20, 39).map((lambda) => burntGas({ excessAirRatio: ratio(lambda) }));
    for (const t of [300, 900, 2000].map(kelvin)) expect(rises(lean.map((gas) => -gas.specificHeat(t)))).toBe(true);
  });

  test("takes road diesel and dry air when not told", () => {
    const told = burntGas({ excessAirRatio: ratio(2), humidityRatio: ratio(0), fuel: roadDiesel });
    const untold = burntGas({ excessAirRatio: ratio(2) });
    expect(untold.specificHeat(kelvin(800))).toBe(told.specificHeat(kelvin(800)));
  });

  test("refuses rich mixtures and wet ones by name", () => {
    expect(() => burntGas({ excessAirRatio: ratio(0.99) })).toThrow(
      "burntGas: excessAirRatio is 0.99; it must be 1 to 1000",
    );
    expect(() => burntGas({ excessAirRatio: ratio(Number.NaN) })).toThrow(RangeError);
    const wet = { excessAirRatio: ratio(2), humidityRatio: ratio(0.3) };
    expect(() => burntGas(wet)).toThrow("burntGas: humidityRatio is 0.3 kg/kg; it must be 0 to 0.2 kg/kg");
  });
});

describe("the fuels", () => {
  // Spans of EN 590, EN 15940, EN 14214 and ISO 8217, and typical heats, all from memory.
  test.each([
    [roadDiesel, [820, 845], [2.0, 4.5], [42.5, 43.2]],
    [marineDistillate, [830, 890], [2.0, 6.0], [42, 43]],
    [paraffinicDiesel, [765, 800], [2.0, 4.5], [43.5, 44.5]],
    [methylEster, [860, 900], [3.5, 5.0], [37, 38]],
  ] as const)("$name lies inside its standard", (fuel, [lightest, heaviest], [thinnest, thickest], [least, most]) => {
    expect(fuel.densityAt15C).toBeGreaterThanOrEqual(lightest);
    expect(fuel.densityAt15C).toBeLessThanOrEqual(heaviest);
    expect(1e6 * fuel.kinematicViscosityAt40C).toBeGreaterThanOrEqual(thinnest);
    expect(1e6 * fuel.kinematicViscosityAt40C).toBeLessThanOrEqual(thickest);
    expect(fuel.lowerHeatingValue / 1e6).toBeGreaterThanOrEqual(least);
    expect(fuel.lowerHeatingValue / 1e6).toBeLessThanOrEqual(most);
  });

  test("give about 3 MJ per kilogram of air they burn with, whatever they are made of", () => {
    for (const fuel of dieselFuels) {
      const heatPerAir = fuel.lowerHeatingValue / stoichiometricAirFuelRatio(fuel) / 1e6;
      expect(heatPerAir).toBeGreaterThan(2.9);
      expect(heatPerAir).toBeLessThan(3.05);
    }
  });
});
