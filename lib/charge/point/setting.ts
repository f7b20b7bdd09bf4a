import { stoichiometricAirFuelRatio } from "../../fluid";
import { requireNotNegative, requirePositive, requireWithin } from "../../quantity/guard";
import type { RotationalSpeed } from "../../quantity/kinds";
import type { BlowerElement, ChargeElement, CompressorBankElement, CoolerElement } from "../path/elements";
import { requireTurbine } from "../turbineField";
import { buildAtSpeed, requireOverSpeed } from "./buildAtSpeed";
import { type GasSource, keptGases, plainGases } from "./gasSource";
import { limitsOf } from "./limits";
import type { OperatingBuild } from "./operatingBuild";
import type { OperatingSetting } from "./operatingState";

export function banksOf(path: readonly ChargeElement[]): readonly CompressorBankElement[] {
  return path.filter((element) => element.kind === "compressorBank");
}

export function blowersOf(path: readonly ChargeElement[]): readonly BlowerElement[] {
  return path.filter((element) => element.kind === "blower");
}

/** Of each cooler: the place among the coolers of the one that its cooling stream has passed before, or −1. */
function warmersOf(path: readonly ChargeElement[]): readonly number[] {
  const coolers = path.filter((element) => element.kind === "cooler");
  return coolers.map(({ warmedBy }) => (warmedBy ? coolers.findIndex(({ name }) => name === warmedBy.cooler) : -1));
}

/** How a blower's bypass stands before anybody has looked at the balance. */
export function bypassOf({ bypass, blower }: BlowerElement): "closed" | "open" | "automatic" {
  return bypass ?? (blower.bypassOpen ? "open" : "closed");
}

/** A build at a speed, ready to be solved, once it is known to make sense. */
export function operatingSetting(
  build: OperatingBuild,
  engineSpeed: RotationalSpeed,
  source: GasSource = plainGases,
): OperatingSetting {
  requireBuild(build, engineSpeed);
  const gases = keptGases(source, build.fuel);
  const there = buildAtSpeed(build, engineSpeed);
  return {
    build: there,
    surroundings: build.surroundings,
    engineSpeed,
    gas: gases.charge(build.surroundings.humidityRatio),
    moistGas: gases.charge,
    burnt: gases.burnt,
    stoichiometric: stoichiometricAirFuelRatio(build.fuel),
    limits: limitsOf(there),
    warmers: warmersOf(build.path),
    bypassesOpen: blowersOf(build.path).map((element) => bypassOf(element) === "open"),
    tolerance: tolerances.answer,
  };
}

/** Residuals left in an answer, in what is only compared with one, and in a step on the way to one [–]. */
export const tolerances = { answer: 1e-10, comparison: 1e-6, step: 1e-4 } as const;

/** The setting of a build at another speed, the build known to make sense, its gases made. */
export function atSpeed(
  setting: OperatingSetting,
  build: OperatingBuild,
  engineSpeed: RotationalSpeed,
): OperatingSetting {
  requirePositive("operatingPoint: engineSpeed", engineSpeed, "rev/s");
  if (!build.overSpeed) return { ...setting, engineSpeed };
  const there = buildAtSpeed(build, engineSpeed);
  return { ...setting, engineSpeed, build: there, limits: limitsOf(there) };
}

function requireBuild(build: OperatingBuild, engineSpeed: RotationalSpeed): void {
  const { engine, exhaustPipe, limits } = build;
  requirePositive("operatingPoint: engineSpeed", engineSpeed, "rev/s");
  requirePositive("operatingPoint: ambient pressure", build.surroundings.pressure, "Pa");
  requireNotNegative("operatingPoint: accessoryPower", build.accessoryPower, "W");
  requireNotNegative("operatingPoint: fuelPumpWork", build.fuelPumpWork, "J/kg");
  requireWithin("operatingPoint: volumetricEfficiency", engine.volumetricEfficiency, [0.3, 1.3]);
  requireWithin("operatingPoint: grossIndicatedEfficiency", engine.grossIndicatedEfficiency, [0.05, 0.65]);
  requireWithin("operatingPoint: heatToWallsShare", engine.heatToWallsShare, [0, 0.6]);
  requireWithin(
    "operatingPoint: grossIndicatedEfficiency and heatToWallsShare together",
    engine.grossIndicatedEfficiency + engine.heatToWallsShare,
    [0, 1],
  );
  requirePositive("operatingPoint: exhaustPipe massFlow", exhaustPipe.massFlow, "kg/s");
  requirePositive("operatingPoint: exhaustPipe density", exhaustPipe.density, "kg/m³");
  requireNotNegative("operatingPoint: exhaustPipe pressureLoss", exhaustPipe.pressureLoss, "Pa");
  requireWithin("operatingPoint: leastExcessAirRatio", limits.leastExcessAirRatio, [1, 5]);
  if (build.overSpeed) requireOverSpeed(build.overSpeed);
  for (const bank of banksOf(build.path)) requireBank(bank);
  for (const element of build.path) if (element.kind === "cooler") requireCooler(element);
  for (const blower of blowersOf(build.path)) {
    requirePositive(`operatingPoint: driveRatio of ${blower.name}`, blower.blower.driveRatio);
    requireWithin(
      `operatingPoint: mechanicalEfficiency of ${blower.name}`,
      blower.blower.mechanicalEfficiency,
      [0.5, 1],
    );
    requireWithin(`operatingPoint: bypassShare of ${blower.name}`, blower.bypassShare ?? 0, [0, 0.9]);
  }
}

function requireCooler({ name, warmedBy }: CoolerElement): void {
  if (!warmedBy) return;
  requireWithin(`operatingPoint: warming of the stream of ${name}`, warmedBy.perWatt, [0, 1], "K/W");
  if (warmedBy.cooler === name) throw new RangeError(`operatingPoint: the stream of ${name} is said to pass itself before`);
}

function requireBank({ name, count, mechanicalEfficiency, turbine, wastegate }: CompressorBankElement): void {
  requirePositive(`operatingPoint: count of ${name}`, count);
  requireWithin(`operatingPoint: mechanicalEfficiency of ${name}`, mechanicalEfficiency, [0.5, 1]);
  requireTurbine(turbine);
  if (!wastegate) return;
  const most = wastegate.kind === "fixed" ? wastegate.fraction : wastegate.mostFraction;
  requireWithin(`operatingPoint: wastegate of ${name}`, most, [0, 0.95]);
  if (wastegate.kind === "sprung") {
    requirePositive(
      `operatingPoint: wastegate of ${name}: fullyOpenAt less opensAt`,
      wastegate.fullyOpenAt - wastegate.opensAt,
      "Pa",
    );
  }
}
