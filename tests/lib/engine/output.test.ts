import { expect, test } from "vitest";
import {
  brakeEfficiency,
  brakeMeanEffectivePressure,
  brakeSpecificFuelConsumption,
  brakeTorque,
  frictionMeanEffectivePressure,
  meanPistonSpeed,
  powerFromMeanEffectivePressure,
  powerFromTorque,
  sweptVolume,
} from "../../../lib/engine";
import type {
  Count,
  Length,
  MassFlow,
  Power,
  Pressure,
  RotationalSpeed,
  SpecificEnergy,
  SpecificFuelConsumption,
  Torque,
  Velocity,
  Volume,
} from "../../../lib/quantity";
import published from "../../published/engine-output.json" with { type: "json" };
import { close, type PublishedRow, rowsOf } from "../publishedRows";

// Definitions, computed from exact constants; 1e-5 as the printed digits allow.
const rows = rowsOf(published);
const speed = (rpm: number) => (rpm / 60) as RotationalSpeed;
const given = (row: PublishedRow, name: string) => row.inputs[name] as number;

test.each(rows("torque-power"))("torque and power turn into each other: $id", (row) => {
  const power = powerFromTorque(given(row, "torque_Nm") as Torque, speed(given(row, "n_rpm")));
  close(power / 1000, row.expected["kW"], 1e-8);
  close(brakeTorque(power, speed(given(row, "n_rpm"))), given(row, "torque_Nm"), 1e-12);
});

test.each(rows("bmep-bsfc"))("mean effective pressure, consumption and efficiency: $id", (row) => {
  const engineSpeed = speed(given(row, "n_rpm"));
  const power = powerFromTorque(given(row, "torque_Nm") as Torque, engineSpeed);
  const displacement = given(row, "V_engine_m3") as Volume;
  close(brakeMeanEffectivePressure({ power, displacement, engineSpeed }), row.expected["bmep_Pa"], 1e-8);
  const consumption = brakeSpecificFuelConsumption((given(row, "fuel_kgph") / 3600) as MassFlow, power);
  close(consumption * 3.6e9, row.expected["bsfc_g_per_kWh"], 1e-8);
  close(brakeEfficiency(consumption, given(row, "LHV_Jpkg") as SpecificEnergy), row.expected["eta_brake"], 1e-8);
});

test.each(rows("bmep and torque identity, 4-stroke"))("mean effective pressure and torque of a power: $id", (row) => {
  const power = (1000 * given(row, "power_kW")) as Power;
  const engineSpeed = speed(given(row, "speed_rpm"));
  const displacement = (given(row, "displacement_L") / 1000) as Volume;
  const meanEffectivePressure = brakeMeanEffectivePressure({ power, displacement, engineSpeed });
  close(meanEffectivePressure / 1e5, row.expected["bmep_bar"], 1e-8);
  close(brakeTorque(power, engineSpeed), row.expected["torque_Nm"], 1e-8);
  close(powerFromMeanEffectivePressure({ meanEffectivePressure, displacement, engineSpeed }), power, 1e-12);
});

test.each(rows("mean piston speed identity"))("meanPistonSpeed is two strokes a turn: $id", (row) => {
  close(
    meanPistonSpeed(given(row, "stroke_m") as Length, speed(given(row, "speed_rpm"))),
    row.expected["Sp_m_s"],
    1e-9,
  );
});

test.each(rows("efficiency from bsfc"))("brakeEfficiency from consumption and heating value: $id", (row) => {
  const consumption = (given(row, "bsfc_g_kWh") / 3.6e9) as SpecificFuelConsumption;
  const heatingValue = (1e6 * given(row, "LHV_MJ_kg")) as SpecificEnergy;
  close(brakeEfficiency(consumption, heatingValue), row.expected["brake_thermal_efficiency"], 1e-8);
});

test.each(rows("Chen-Flynn fmep"))("frictionMeanEffectivePressure follows the published line: $id", (row) => {
  const friction = frictionMeanEffectivePressure({
    peakPressure: (1e5 * given(row, "pmax_bar")) as Pressure,
    meanPistonSpeed: given(row, "Sp_m_s") as Velocity,
  });
  close(friction / 1e5, row.expected["fmep_bar"], 1e-9);
});

test("sweptVolume of six cylinders of 124 mm by 141 mm is 10.2 litres", () => {
  // by hand: 6 × 0.785398 × 0.015376 × 0.141 = 0.0102165
  const volume = sweptVolume({ bore: 0.124 as Length, stroke: 0.141 as Length, cylinders: 6 as Count });
  close(volume, 0.0102165, 1e-5);
});

test("an engine that does not turn is refused by name", () => {
  expect(() => brakeTorque(1000 as Power, 0 as RotationalSpeed)).toThrow("brakeTorque: engineSpeed is 0 rev/s");
  expect(() => meanPistonSpeed(Number.NaN as Length, speed(1000))).toThrow("meanPistonSpeed: stroke is NaN m");
});
