import { expect, test } from "vitest";
import {
  boatTemperatureGuides,
  boilingMargin,
  boreForVelocity,
  engineRoomAir,
  expansionVolume,
  fireMainVelocity,
  flowAtVelocity,
  gearOilHeat,
  impellerPumpFlow,
  limitingAirTemperature,
  lowestSeaWaterVelocity,
  massFlowForHeat,
  openingArea,
  pipeVelocity,
  propellerPower,
  propellerTorque,
  pumpPointAtSpeed,
  radiatorPerformance,
  seaWaterVelocityGuides,
  shaftLine,
  shipVentilation,
  suctionHead,
  suctionMargin,
  volumeFlowForHeat,
} from "../../../lib/cooling";
import { glycolCoolant, seaWater, water } from "../../../lib/fluid";
import type {
  Count,
  Density,
  Fraction,
  GaugePressure,
  Length,
  MassFlow,
  Power,
  Pressure,
  PressureDifference,
  Ratio,
  RotationalSpeed,
  SpecificHeat,
  Temperature,
  TemperatureDifference,
  ThermalConductance,
  Velocity,
  Volume,
  VolumeFlow,
  VolumePerTurn,
} from "../../../lib/quantity";
import carried from "../../published/cooling-flow-for-heat.json";
import published from "../../published/cooling-boat-practice.json";

const celsius = (degrees: number) => (degrees + 273.15) as Temperature;
const perMinute = (speed: number) => (speed / 60) as RotationalSpeed;

// ISO 8861:1998, formula and numbers from memory on both sides: shows that the sum is done right. Nine digits are given.
test.each(published.ventilation)("engineRoomAir meets row $id", ({ inputs, expected }) => {
  const air = engineRoomAir({ power: (inputs.P_kW * 1000) as Power, strokes: inputs.stroke as Count });
  expect(air.combustionFlow).toBeCloseTo(expected.q_combustion_m3_s, 8);
  expect(air.engineHeat / 1000).toBeCloseTo(expected.heat_emission_kW, 6);
  expect(air.heatFlow).toBeCloseTo(expected.q_heat_m3_s, 8);
  expect(air.totalFlow).toBeCloseTo(expected.q_total_m3_s, 8);
  expect(shipVentilation.temperatureRise).toBe(inputs.dT_K);
  expect(shipVentilation.density).toBe(inputs.rho_kg_m3);
});

test("shipVentilation holds the constants of the standard (from memory)", () => {
  const value = (item: string) =>
    published.ventilationConstants.find(({ inputs }) => inputs.item.startsWith(item))!.expected.value;
  expect(shipVentilation.outsideTemperature).toBe(celsius(value("outside air")));
  expect(shipVentilation.temperatureRise).toBe(value("design temperature rise"));
});

test("engineRoomAir: the larger rule wins, and heat of other machines comes on top", () => {
  const power = 300000 as Power;
  const alone = engineRoomAir({ power, strokes: 4 as Count });
  expect(alone.setBy).toBe("sum");
  const hot = engineRoomAir({ power, strokes: 4 as Count, otherHeat: 10000 as Power });
  // By hand: 10 kW / (1.13 · 1.01 · 12.5) = 0.70096 m³/s.
  expect(hot.totalFlow - alone.totalFlow).toBeCloseTo(0.70096, 4);
  const breathing = engineRoomAir({ power, strokes: 4 as Count, combustionAir: 1.2 as MassFlow });
  expect(breathing.setBy).toBe("multiple");
  expect(breathing.totalFlow).toBeCloseTo((1.5 * 1.2) / 1.13, 12);
  expect(() => engineRoomAir({ power, strokes: 3 as Count })).toThrow("strokes is 3; it must be 2 or 4");
});

test("openingArea by hand", () => {
  const opening = { volumeFlow: 1.2 as VolumeFlow, velocity: 3 as Velocity, freeShare: 0.64 as Fraction };
  expect(openingArea(opening)).toBeCloseTo(0.625, 12);
  expect(() => openingArea({ ...opening, freeShare: 0 as Fraction })).toThrow("freeShare is 0");
});

// Definition; the rows are exact sums.
test.each(published.propeller)("propellerPower and propellerTorque meet row $id", ({ inputs, expected }) => {
  const law = {
    ratedPower: (inputs.P_rated_kW * 1000) as Power,
    ratedSpeed: perMinute(inputs.N_rated_rpm),
    speed: perMinute(inputs.N_rpm),
    exponent: inputs.exponent as Ratio,
  };
  expect(propellerPower(law) / 1000 / expected.P_kW).toBeCloseTo(1, 8);
  expect(propellerTorque(law) / expected.torque_Nm).toBeCloseTo(1, 8);
});

test("propellerPower: cube unless told, nothing at standstill, refused outside its exponents", () => {
  const law = { ratedPower: 300000 as Power, ratedSpeed: perMinute(2400), speed: perMinute(1200) };
  expect(propellerPower(law)).toBeCloseTo(37500, 9);
  expect(propellerTorque({ ...law, speed: 0 as RotationalSpeed })).toBe(0);
  expect(propellerPower({ ...law, exponent: 2.5 as Ratio })).toBeGreaterThan(propellerPower(law));
  expect(() => propellerPower({ ...law, exponent: 5 as Ratio })).toThrow("exponent is 5; it must be 1.5 to 4");
});

test("shaftLine and gearOilHeat share out the engine's power", () => {
  const power = 300000 as Power;
  const gear = { engineSpeed: 40 as RotationalSpeed, gearRatio: 2 as Ratio, gearEfficiency: 0.97 as Fraction };
  const { shaftSpeed, shaftPower, shaftTorque } = shaftLine({ ...gear, enginePower: power });
  expect(shaftSpeed).toBe(20);
  expect(shaftPower + gearOilHeat({ power, efficiency: gear.gearEfficiency })).toBeCloseTo(300000, 9);
  expect(shaftTorque).toBeCloseTo(291000 / (2 * Math.PI * 20), 9);
  expect(gearOilHeat({ power, efficiency: 0.97 as Fraction, shareToOil: 0.8 as Fraction })).toBeCloseTo(7200, 8);
  expect(() => shaftLine({ ...gear, engineSpeed: 0 as RotationalSpeed, enginePower: power })).toThrow(
    "engineSpeed is 0",
  );
});

// TEOS-10 by another library. 0.3 %: our sea water rests on other correlations. Salinity by the ratio of TEOS-10.
test.each(published.rawWaterFlow)("massFlowForHeat of sea water meets row $id", ({ inputs, expected }) => {
  const sea = seaWater(((inputs.S_psu * 35.16504) / 35 / 1000) as Fraction);
  const temperature = celsius(inputs.T_C);
  const heat = {
    heat: (inputs.Q_kW * 1000) as Power,
    temperatureRise: inputs.dT_K as TemperatureDifference,
    specificHeat: sea.specificHeat(temperature),
  };
  expect(Math.abs(massFlowForHeat(heat) / expected.m_kg_s - 1)).toBeLessThan(0.003);
  const volume = volumeFlowForHeat({ ...heat, density: sea.density(temperature) });
  expect(Math.abs((volume * 60000) / expected.V_L_min - 1)).toBeLessThan(0.003);
});

test.each(carried.waterBrake)("massFlowForHeat of a water brake meets row $id", ({ inputs, expected }) => {
  const heat = {
    heat: (inputs.P_W * inputs.fraction_to_water) as Power,
    temperatureRise: inputs.dT_K as TemperatureDifference,
    specificHeat: inputs.cp as SpecificHeat,
  };
  expect(massFlowForHeat(heat)).toBeCloseTo(expected.m_kgps, 8);
  expect(volumeFlowForHeat({ ...heat, density: inputs.rho as Density }) * 60000).toBeCloseTo(expected.Lpmin, 6);
});

test.each(carried.ventilation)("volumeFlowForHeat of a test cell meets row $id", ({ inputs, expected }) => {
  const flow = volumeFlowForHeat({
    heat: inputs.heat_W as Power,
    temperatureRise: inputs.dT_K as TemperatureDifference,
    specificHeat: inputs.cp as SpecificHeat,
    density: inputs.rho as Density,
  });
  expect(flow).toBeCloseTo(expected.m3ps, 8);
});

// Definition; the rows are exact sums.
test.each(published.velocity)("flowAtVelocity meets row $id, and its inverses give back what went in", (row) => {
  const velocity = row.inputs.v_m_s as Velocity;
  const bore = row.inputs.d_m as Length;
  const flow = flowAtVelocity(velocity, bore);
  expect((flow * 60000) / row.expected.V_L_min).toBeCloseTo(1, 8);
  expect(pipeVelocity(flow, bore)).toBeCloseTo(velocity, 12);
  expect(boreForVelocity(flow, velocity)).toBeCloseTo(bore, 14);
});

// Public page on copper–nickel quoting BS MA 18 (read); copper from memory.
test("seaWaterVelocityGuides say what the practice says, and from which bore on", () => {
  const limit = (item: string) =>
    published.rawWaterLimits.find(({ inputs }) => inputs.item.startsWith(item))!.expected.value;
  const guide = (item: string) => seaWaterVelocityGuides.find((each) => each.item === item)!;
  expect(guide("90/10 copper–nickel pipe").highestVelocity).toBe(limit("90/10 Cu-Ni pipe >=100 mm"));
  expect(guide("90/10 copper–nickel pipe").smallestBore).toBe(0.1);
  expect(guide("70/30 copper–nickel exchanger tube").highestVelocity).toBe(limit("70/30 Cu-Ni heat-exchanger tubes"));
  expect(guide("copper pipe").highestVelocity).toBe(limit("copper sea-water pipe"));
  expect(lowestSeaWaterVelocity).toBe(limit("Cu-Ni preferred minimum"));
  expect(fireMainVelocity).toBe(limit("fire-main"));
});

// ABYC P-1 and classification rules as quoted by public pages (read); the rest general practice, from memory. 0.05 K: rounding.
test("boatTemperatureGuides say what the practice says", () => {
  const row = (id: string) => published.temperatures.find((each) => each.id === id)!.expected;
  const highest = (guide: keyof typeof boatTemperatureGuides) => boatTemperatureGuides[guide].span[1] - 273.15;
  expect(highest("unguardedExhaustSurface")).toBeCloseTo(row("11-021").T_C!, 1);
  expect(highest("mixedExhaust")).toBeCloseTo(row("11-023").T_C!, 9);
  expect(highest("wetExhaustHose")).toBeCloseTo(row("11-026").T_C_max!, 9);
  expect(boatTemperatureGuides.wetExhaustHose.span[0]).toBeCloseTo(celsius(row("11-026").T_C_min!), 9);
  expect(highest("jacketOutlet")).toBeCloseTo(row("11-028").T_C_max!, 9);
  expect(boatTemperatureGuides.jacketOutlet.span[0]).toBeCloseTo(celsius(row("11-028").T_C_min!), 9);
  expect(highest("seaDischarge")).toBeCloseTo(row("11-030").T_C!, 9);
  const pipe = (item: string) =>
    published.rawWaterLimits.find(({ inputs }) => inputs.item.startsWith(item))!.expected.value;
  expect(highest("copperPipe")).toBeCloseTo(pipe("copper and aluminium-brass pipe"), 9);
  expect(highest("copperNickelPipe")).toBeCloseTo(pipe("copper-nickel pipe max service"), 9);
});

test("impellerPumpFlow by hand, in proportion to speed", () => {
  const pump = { displacement: 1.2e-4 as VolumePerTurn, volumetricEfficiency: 0.85 as Fraction };
  expect(impellerPumpFlow({ ...pump, speed: 30 as RotationalSpeed })).toBeCloseTo(0.00306, 12);
  expect(impellerPumpFlow({ ...pump, speed: 0 as RotationalSpeed })).toBe(0);
  expect(() =>
    impellerPumpFlow({ ...pump, speed: 30 as RotationalSpeed, volumetricEfficiency: 1.1 as Fraction }),
  ).toThrow("volumetricEfficiency is 1.1; it must be 0 to 1");
});

test("pumpPointAtSpeed keeps hydraulic efficiency, and comes back", () => {
  const measured = {
    speed: 30 as RotationalSpeed,
    volumeFlow: 0.004 as VolumeFlow,
    pressureRise: 90000 as PressureDifference,
    power: 600 as Power,
  };
  const slower = pumpPointAtSpeed(measured, 20 as RotationalSpeed);
  expect(slower.pressureRise).toBeCloseTo(40000, 8);
  expect((slower.volumeFlow * slower.pressureRise) / slower.power).toBeCloseTo((0.004 * 90000) / 600, 12);
  const back = pumpPointAtSpeed(slower, measured.speed);
  expect(back.power).toBeCloseTo(600, 9);
  expect(back.volumeFlow).toBeCloseTo(0.004, 14);
});

const suction = {
  surfacePressure: 101325 as Pressure,
  levelAbovePump: -1 as Length,
  liquid: water,
  temperature: celsius(32),
  lineLoss: 6000 as PressureDifference,
  strainerLoss: 4000 as PressureDifference,
};

test("suctionHead by hand with steam-table figures", () => {
  // 32 °C: 4.759 kPa and 995.0 kg/m³ (steam tables, from memory). (101325 − 4759 − 10000)/(995.0 · 9.80665) − 1.
  expect(suctionHead(suction)).toBeCloseTo(7.872, 2);
  expect(suctionMargin(suction, 4 as Length)).toBeCloseTo(suctionHead(suction) - 4, 12);
});

test("suctionHead shrinks with heat, lift and dirt, and is negative where water would boil", () => {
  const head = (change: Partial<typeof suction>) => suctionHead({ ...suction, ...change });
  expect(head({ temperature: celsius(60) })).toBeLessThan(head({}) - 1);
  expect(head({ levelAbovePump: 1 as Length }) - head({})).toBeCloseTo(2, 12);
  expect(head({ strainerLoss: 20000 as PressureDifference })).toBeLessThan(head({}) - 1.5);
  expect(head({ temperature: celsius(100), levelAbovePump: 0 as Length })).toBeLessThan(0);
});

test("suctionHead has no step where sea water is colder than ice", () => {
  const sea = seaWater(0.035 as Fraction);
  const at = (degrees: number) => suctionHead({ ...suction, liquid: sea, temperature: celsius(degrees) });
  expect(Math.abs(at(-0.001) - at(0.001))).toBeLessThan(1e-4);
  expect(at(-1.5)).toBeGreaterThan(at(2));
});

test("expansionVolume of water by hand with steam-table figures", () => {
  // 999.10 kg/m³ at 15 °C, 965.31 at 90 °C (steam tables, from memory): 3.500 %.
  const circuit = { coolant: water, circuitVolume: 0.05 as Volume, coldTemperature: celsius(15) };
  expect(expansionVolume({ ...circuit, hotTemperature: celsius(90) }) / 0.05).toBeCloseTo(0.035, 4);
  expect(expansionVolume({ ...circuit, hotTemperature: celsius(15) })).toBe(0);
  expect(() => expansionVolume({ ...circuit, hotTemperature: celsius(10) })).toThrow("hotTemperature is 283.15 K");
});

test("expansionVolume and boilingMargin of half glycol", () => {
  // ASHRAE 2001 by volume: 1089.04 kg/m³ at −30 °C, 1052.04 at 60 °C (read in public data), so 3.517 %.
  // 0.2 % of either density, the tolerance of the fit, is worth 0.004 of the volume.
  const coolant = glycolCoolant(0.5 as Fraction);
  const expansion = expansionVolume({
    coolant,
    circuitVolume: 0.05 as Volume,
    coldTemperature: celsius(-30),
    hotTemperature: celsius(60),
  });
  expect(Math.abs(expansion / 0.05 - 0.03517)).toBeLessThan(0.004);
  const circuit = { ambientPressure: 101325 as Pressure, capPressure: 0 as GaugePressure, temperature: celsius(95) };
  expect(boilingMargin({ ...circuit, coolant })).toBeGreaterThan(boilingMargin({ ...circuit, coolant: water }) + 3);
});

test("boilingMargin of water: 0 at 100 °C in the open, 20 K more for a bar of cap", () => {
  const circuit = { coolant: water, ambientPressure: 101325 as Pressure, temperature: celsius(100) };
  // Water boils at 99.974 °C at 101.325 kPa and 120.43 °C at 201.325 kPa (steam tables, from memory).
  expect(boilingMargin({ ...circuit, capPressure: 0 as GaugePressure })).toBeCloseTo(-0.026, 2);
  expect(boilingMargin({ ...circuit, capPressure: 100000 as GaugePressure })).toBeCloseTo(20.43, 1);
  expect(() => boilingMargin({ ...circuit, capPressure: -1 as GaugePressure })).toThrow("capPressure is -1 Pa");
});

test("limitingAirTemperature gives back the trial's air at the trial's heat", () => {
  const trial = { heat: 200000 as Power, coolantInlet: celsius(90), airInlet: celsius(30) };
  const performance: ThermalConductance = radiatorPerformance(trial);
  expect(limitingAirTemperature(performance, trial.heat, trial.coolantInlet)).toBeCloseTo(trial.airInlet, 9);
  // By hand: at 100 °C allowed the air may be 40 °C.
  expect(limitingAirTemperature(performance, trial.heat, celsius(100))).toBeCloseTo(celsius(40), 9);
});
