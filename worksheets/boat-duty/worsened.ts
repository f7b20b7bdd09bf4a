import type { OperatingBuild, OperatingPoint } from "../../lib/charge";
import { burntGas } from "../../lib/fluid";
import type { PressureDifference, Temperature } from "../../lib/quantity";

/** The build with a cooling stream that many kelvin warmer. */
export function withSink(build: OperatingBuild, rise: number): OperatingBuild {
  return withSinks(build, (usual) => (usual + rise) as Temperature);
}

/** The build with a cooling stream of a temperature. */
export function withSinkAt(build: OperatingBuild, temperature: Temperature): OperatingBuild {
  return withSinks(build, () => temperature);
}

function withSinks(build: OperatingBuild, at: (usual: Temperature) => Temperature): OperatingBuild {
  const path = build.path.map((element) => {
    if (element.kind !== "cooler") return element;
    const sinkTemperature = at(element.cooling.sinkTemperature);
    return { ...element, cooling: { ...element.cooling, sinkTemperature } };
  });
  return { ...build, path };
}

/** The build in air that many kelvin warmer, with as much water in each kilogram of it. */
export function withAir(build: OperatingBuild, rise: number): OperatingBuild {
  const temperature = (build.surroundings.temperature + rise) as Temperature;
  return { ...build, surroundings: { ...build.surroundings, temperature } };
}

/** What the first filter or duct of the path takes of the pressure at a point [Pa]; 0 without one. */
export function intakeLossOf(build: OperatingBuild, { stations }: OperatingPoint): PressureDifference {
  const i = build.path.findIndex(({ kind }) => kind === "restriction");
  return (i < 0 ? 0 : stations[i]!.pressure - stations[i + 1]!.pressure) as PressureDifference;
}

/** The build whose first filter or duct takes that many times as much at the same flow. */
export function withIntake(build: OperatingBuild, times: number): OperatingBuild {
  const place = build.path.findIndex(({ kind }) => kind === "restriction");
  const path = build.path.map((element, i) => {
    if (i !== place || element.kind !== "restriction") return element;
    const pressureLoss = (element.restriction.pressureLoss * times) as PressureDifference;
    return { ...element, restriction: { ...element.restriction, pressureLoss } };
  });
  return { ...build, path };
}

/** The build whose exhaust takes a loss of pressure at the flow and density of a point. */
export function withExhaust(
  build: OperatingBuild,
  point: OperatingPoint,
  pressureLoss: PressureDifference,
): OperatingBuild {
  const { excessAirRatio, exhaustFlow: massFlow, pipeTemperature, pipePressure } = point;
  const gas = burntGas({ excessAirRatio, humidityRatio: build.surroundings.humidityRatio, fuel: build.fuel });
  const density = gas.density(pipeTemperature, pipePressure);
  return { ...build, exhaustPipe: { massFlow, density, pressureLoss } };
}
