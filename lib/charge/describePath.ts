import type { Gas } from "../fluid";
import type { Fraction, MassFlow, Power, Pressure, Ratio, RotationalSpeed, Temperature } from "../quantity/kinds";
import type { BalancedMarch } from "./balancePath";
import { blowerShaftPower } from "./blower";
import { type ChargeCooler, type CoolerOutlet, chargeCondensate } from "./chargeCooler";
import type { ChargePath, ChargePathBuild, ChargeStation, CoolerResult, PressureShare } from "./chargePathBuild";

/** Ratios this close below 1 are rounding of 1. */
const roundingOfOne = 1e-9;

/** A balanced march as its reader wants it; refuses by name what would be a restriction. */
export function describePath(
  build: ChargePathBuild,
  gas: Gas,
  engineSpeed: RotationalSpeed,
  balanced: BalancedMarch,
): ChargePath {
  requireCharging(balanced);
  const { surroundings, blower } = build;
  const { airFlow, coolerBeforeBlower: first, coolerAfterBlower: second, sinkWarming } = balanced;
  const dryAirFlow = airFlow / (1 + surroundings.humidityRatio);
  const station = stationOf(gas);
  const speed = (blower.driveRatio * engineSpeed) as RotationalSpeed;
  const overallPressureRatio = second.pressure / surroundings.pressure;
  const { humidityRatio } = surroundings;
  const coolerBeforeBlower = coolerResult(build.coolerBeforeBlower, first, dryAirFlow, humidityRatio, sinkWarming);
  const vapourLeft = (humidityRatio - coolerBeforeBlower.condensateFlow / dryAirFlow) as Ratio;
  return {
    airFlow: airFlow as MassFlow,
    dryAirFlow: dryAirFlow as MassFlow,
    stations: [
      station("ambient", "Open air", surroundings.pressure, surroundings.temperature),
      station("filterOutlet", "After the filter", balanced.filterOutletPressure, surroundings.temperature),
      station(
        "compressorOutlet",
        "After the turbochargers",
        balanced.compressorOutletPressure,
        balanced.compressorOutletTemperature,
      ),
      station("blowerInlet", "Before the blower", first.pressure, first.temperature),
      station("blowerOutlet", "After the blower", balanced.blowerOutletPressure, balanced.blowerOutletTemperature),
      station("manifold", "Manifold", second.pressure, second.temperature),
    ],
    pressureShares: pressureShares(build, balanced, overallPressureRatio),
    overallPressureRatio: overallPressureRatio as Ratio,
    turbochargers: {
      pressureRatio: balanced.turbochargerRatio as Ratio,
      power: (airFlow * balanced.compressorWork) as Power,
      specificWork: balanced.compressorWork,
      massFlowEach: (airFlow / build.turbochargers.count) as MassFlow,
    },
    coolerBeforeBlower,
    blower: {
      pressureRatio: balanced.blowerRatio as Ratio,
      speed,
      volumetricEfficiency: balanced.blowerFilling,
      gasPower: balanced.blowerGasPower,
      shaftPower: blowerShaftPower(blower, speed, balanced.blowerGasPower),
    },
    coolerAfterBlower: coolerResult(build.coolerAfterBlower, second, dryAirFlow, vapourLeft, 0),
    blowerInletPressure: first.pressure,
    manifoldPressure: second.pressure,
    manifoldTemperature: second.temperature,
    convergence: balanced.convergence,
  };
}

/** Passes a march on which neither blower nor turbochargers hold the air back. */
export function requireCharging({ blowerRatio, turbochargerRatio, airFlow }: BalancedMarch): void {
  if (!(blowerRatio >= 1 - roundingOfOne)) {
    throw new RangeError(
      `chargePath: blower pressure ratio is ${blowerRatio.toPrecision(4)} at ${airFlow.toPrecision(4)} kg/s; the blower would be a restriction: open its bypass, drive it faster or take a larger one`,
    );
  }
  if (!(turbochargerRatio >= 1 - roundingOfOne)) {
    throw new RangeError(
      `chargePath: turbocharger pressure ratio is ${turbochargerRatio.toPrecision(4)} at ${airFlow.toPrecision(4)} kg/s; the turbochargers would be a restriction: blower and engine take more air than is asked for: drive the blower slower, or ask for more power or more excess air`,
    );
  }
}

function stationOf(gas: Gas) {
  return (key: ChargeStation["key"], name: string, pressure: Pressure, temperature: Temperature): ChargeStation => ({
    key,
    name,
    pressure,
    temperature,
    density: gas.density(temperature, pressure),
  });
}

function pressureShares(build: ChargePathBuild, path: BalancedMarch, overall: number): PressureShare[] {
  const { coolerBeforeBlower: first, coolerAfterBlower: second } = path;
  const ratios: readonly (readonly [PressureShare["key"], string, number])[] = [
    ["filter", "Filter", path.filterOutletPressure / build.surroundings.pressure],
    ["turbochargers", "Turbochargers", path.turbochargerRatio],
    ["coolerBeforeBlower", "Cooler before the blower", first.pressure / path.compressorOutletPressure],
    ["blower", "Blower", path.blowerRatio],
    ["coolerAfterBlower", "Cooler after the blower", second.pressure / path.blowerOutletPressure],
  ];
  return ratios.map(([key, name, ratio]) => ({
    key,
    name,
    pressureRatio: ratio as Ratio,
    share: overall === 1 ? undefined : ((Math.log(ratio) / Math.log(overall)) as Fraction),
  }));
}

function coolerResult(
  cooler: ChargeCooler,
  outlet: CoolerOutlet,
  dryAirFlow: number,
  humidityRatio: Ratio,
  sinkWarming: number,
): CoolerResult {
  const { condensateFlow, latentHeat } = chargeCondensate({
    dryAirFlow: dryAirFlow as MassFlow,
    humidityRatio,
    temperature: outlet.temperature,
    pressure: outlet.pressure,
  });
  return {
    heat: outlet.heat,
    sinkTemperature: (cooler.sinkTemperature + sinkWarming) as Temperature,
    pressureLoss: outlet.pressureLoss,
    condensateFlow,
    latentHeat,
  };
}
