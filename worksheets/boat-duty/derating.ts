import { type DemandBuild, type DemandPoint, demandAtTurbineLimit } from "../../lib/charge";
import { adjustmentExponents, powerAdjustment } from "../../lib/engine";
import { burntGas, saturationVapourPressure } from "../../lib/fluid";
import { structure } from "../../lib/graph";
import type { Slopes } from "../../lib/numeric";
import type { Fraction, Power, Pressure, PressureDifference, RotationalSpeed, Temperature } from "../../lib/quantity";
import { demand, demandBuild } from "../boost/demand";
import { ambientPressure, ambientTemperature, heatCarrier, ratedSpeed, relativeHumidity } from "../brief/cells";
import { Later } from "../later";
import { chargeCooledBy, seaTemperature } from "../marine-cooling/inputs";
import type { DeratedValue, Derating } from "./deratingSeries";

interface DeratingFrom {
  readonly demandBuild: DemandBuild;
  readonly demand: DemandPoint;
  readonly ratedSpeed: RotationalSpeed;
  readonly ambientPressure: Pressure;
  readonly ambientTemperature: Temperature;
  readonly relativeHumidity: Fraction;
  readonly seaTemperature: Temperature;
  readonly seaCools: boolean;
}

export const derating = structure("derating", {
  label: "Power with a warmer sea, a warmer room, a clogged intake and a tighter exhaust",
  from: {
    demandBuild,
    demand,
    ratedSpeed,
    ambientPressure,
    ambientTemperature,
    relativeHumidity,
    seaTemperature,
    heatCarrier,
    chargeCooledBy,
  },
  compute: ({ heatCarrier, chargeCooledBy, ...at }) =>
    new Later("derating", { ...at, seaCools: heatCarrier === "seaWater" && chargeCooledBy === "sea" }, deratingOf),
  formula: "P: \\quad T_6 = T_6(P_b), \\quad A_t = A_t(P_b)",
  source:
    "the charge path's loop with the turbines' nozzle area and inlet temperature of the promised power; beside it ISO 3046-1:2002 (from memory)",
  assumptions: [
    "The engine is taken as limited by its exhaust's heat; smoke, peak pressure or wheel speed may bind before.",
    "Compressor and turbine efficiencies stay as they are.",
    "The standard's line for turbocharged engines with charge cooler is taken: none of its lines knows a driven blower. It does not speak of intake depression and exhaust back pressure.",
  ],
});

/** Steps of 5 K of the sea and 8 K of the air; of 25 mbar and 50 mbar more loss. */
const steps = [-2, -1, 0, 1, 2] as const;
const losses = [0, 1, 2, 3] as const;

function deratingOf(at: DeratingFrom): Derating {
  const { demand, demandBuild: build } = at;
  const promised = demand.powers.brake;
  const outlet = demand.exhaust.turbineOutletPressure;
  const turbineInletTemperature = demand.exhaust.turbineInletTemperature;
  const standardAt = (change: { temperature?: Temperature; sea?: Temperature }): Power => {
    const factor = (temperature: Temperature, chargeCoolant: Temperature) =>
      powerAdjustment({
        pressure: at.ambientPressure,
        temperature,
        relativeHumidity: at.relativeHumidity,
        saturationPressure: saturationVapourPressure(temperature),
        chargeCoolant,
        exponents: adjustmentExponents.turbochargedCooled,
        mechanicalEfficiency: (promised / demand.powers.indicated) as Fraction,
      }).power;
    const usual = factor(at.ambientTemperature, at.seaTemperature);
    const now = factor(change.temperature ?? at.ambientTemperature, change.sea ?? at.seaTemperature);
    return ((promised * now) / usual) as Power;
  };

  let slopes: Slopes | undefined;
  let nearest = demand;
  const solvedWith = (changed: DemandBuild): Pick<DeratedValue, "solved" | "refused"> => {
    const area = demand.exhaust.turbineAreaEach;
    if (area === undefined)
      return { solved: undefined, refused: "the blower alone gives more air than is asked for; the turbines idle" };
    try {
      const found = demandAtTurbineLimit(changed, {
        engineSpeed: at.ratedSpeed,
        turbineAreaEach: area,
        turbineInletTemperature,
        brakePower: nearest.powers.brake,
        excessAirRatio: nearest.excessAirRatio,
        slopes,
      });
      slopes = found.slopes;
      nearest = found.point;
      return { solved: found.point.powers.brake };
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      return { solved: undefined, refused: error.message };
    }
  };
  /** The promised point itself needs no solving, and is where each series sets out. */
  const valuesOf = (
    changes: readonly number[],
    build: (change: number) => DemandBuild,
    at: (change: number) => number,
    standard: (change: number) => Power | undefined,
  ): readonly DeratedValue[] => {
    const solve = (change: number): DeratedValue => ({
      at: at(change),
      ...(change === 0 ? { solved: promised } : solvedWith(build(change))),
      standard: standard(change),
    });
    nearest = demand;
    const up = changes.filter((change) => change >= 0).map(solve);
    nearest = demand;
    const down = changes
      .filter((change) => change < 0)
      .toReversed()
      .map(solve);
    return [...down.toReversed(), ...up];
  };

  const withSink = (rise: number): DemandBuild => {
    const cooler = <C extends { readonly sinkTemperature: Temperature } | undefined>(each: C): C =>
      each && { ...each, sinkTemperature: (each.sinkTemperature + rise) as Temperature };
    return {
      ...build,
      coolerBeforeBlower: cooler(build.coolerBeforeBlower),
      coolerAfterBlower: cooler(build.coolerAfterBlower),
    };
  };
  const withAir = (rise: number): DemandBuild => {
    const surroundings = {
      ...build.surroundings,
      temperature: (build.surroundings.temperature + rise) as Temperature,
    };
    const warmed = at.seaCools ? build : withSink(rise);
    return { ...warmed, surroundings };
  };
  const intakeLoss =
    build.surroundings.pressure - demand.path.stations.find(({ key }) => key === "filterOutlet")!.pressure;
  const withIntake = (loss: number): DemandBuild => ({
    ...build,
    filter: { ...build.filter, pressureLoss: (build.filter.pressureLoss * (loss / intakeLoss)) as PressureDifference },
  });
  const gas = burntGas({
    excessAirRatio: demand.excessAirRatio,
    humidityRatio: build.surroundings.humidityRatio,
    fuel: build.fuel,
  });
  const backPressure = outlet - build.surroundings.pressure;
  const withExhaust = (loss: number): DemandBuild => ({
    ...build,
    exhaustPipe: {
      massFlow: demand.exhaust.flow,
      density: gas.density(demand.exhaust.turbineOutletTemperature, outlet),
      pressureLoss: loss as PressureDifference,
    },
  });

  const none = () => undefined;
  const warmed = (from: number, step: number) => (change: number) => (from + step * change) as Temperature;
  const [sea, room] = [warmed(at.seaTemperature, 5), warmed(at.ambientTemperature, 8)];
  return {
    promised,
    turbineInletTemperature,
    series: [
      ...(at.seaCools
        ? [
            {
              key: "sea" as const,
              name: "Sea",
              kind: "temperature" as const,
              design: at.seaTemperature,
              values: valuesOf(
                steps,
                (change) => withSink(5 * change),
                sea,
                (change) => standardAt({ sea: sea(change) }),
              ),
            },
          ]
        : []),
      {
        key: "room",
        name: "Intake air",
        kind: "temperature",
        design: at.ambientTemperature,
        values: valuesOf(
          steps,
          (change) => withAir(8 * change),
          room,
          (change) => standardAt({ temperature: room(change) }),
        ),
      },
      {
        key: "depression",
        name: "Intake depression",
        kind: "pressureDifference",
        design: intakeLoss,
        values:
          intakeLoss > 0
            ? valuesOf(
                losses,
                (change) => withIntake(intakeLoss + 2500 * change),
                (change) => intakeLoss + 2500 * change,
                none,
              )
            : [],
      },
      {
        key: "backPressure",
        name: "Exhaust back pressure",
        kind: "pressureDifference",
        design: backPressure,
        values: valuesOf(
          losses,
          (change) => withExhaust(backPressure + 5000 * change),
          (change) => backPressure + 5000 * change,
          none,
        ),
      },
    ],
  };
}
