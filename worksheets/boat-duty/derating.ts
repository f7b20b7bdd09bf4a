import { type AttainablePoint, attainable, type OperatingBuild } from "../../lib/charge";
import { adjustmentExponents, powerAdjustment } from "../../lib/engine";
import { saturationVapourPressure } from "../../lib/fluid";
import { structure } from "../../lib/graph";
import type { Fraction, Power, Pressure, PressureDifference, RotationalSpeed, Temperature } from "../../lib/quantity";
import {
  ambientPressure,
  ambientTemperature,
  heatCarrier,
  ratedPower,
  ratedSpeed,
  relativeHumidity,
} from "../brief/cells";
import { Later } from "../later";
import { chargeCooledBy, seaTemperature } from "../marine-cooling/inputs";
import { matchBuild } from "../matching/match";
import { attained } from "../matching/solved";
import type { DeratedValue, Derating, DeratingSeries } from "./deratingSeries";
import { intakeLossOf, withAir, withExhaust, withIntake, withSink } from "./worsened";

interface DeratingFrom {
  readonly matchBuild: OperatingBuild;
  readonly attained: AttainablePoint;
  readonly ratedSpeed: RotationalSpeed;
  readonly ratedPower: Power;
  readonly ambientPressure: Pressure;
  readonly ambientTemperature: Temperature;
  readonly relativeHumidity: Fraction;
  readonly seaTemperature: Temperature;
  /** what the charge coolers are cooled by */
  readonly sink: "air" | "sea" | "loop";
}

export const derating = structure("derating", {
  label: "Power with a warmer sea, a warmer room, a clogged intake and a tighter exhaust",
  from: {
    matchBuild,
    attained,
    ratedSpeed,
    ratedPower,
    ambientPressure,
    ambientTemperature,
    relativeHumidity,
    seaTemperature,
    heatCarrier,
    chargeCooledBy,
  },
  compute: ({ heatCarrier, chargeCooledBy, ...at }) => {
    const { refused } = givenBy(at.attained);
    if (refused !== undefined) {
      throw new RangeError(
        `derating: there is no power to lose at the promised speed, since ${refused}; choose other parts on the sheet of the match`,
      );
    }
    return new Later("derating", { ...at, sink: heatCarrier === "air" ? "air" : chargeCooledBy }, deratingOf);
  },
  formula:
    "P_{at} = \\min P_{lim} \\text{ with } T_{sea},\\ T_0,\\ \\Delta p_0 \\text{ or } \\Delta p_7 \\text{ changed}",
  source: "conservation of mass; first law on every element of the match; beside it ISO 3046-1:2002 (from memory)",
  assumptions: [
    "Worked out when the hand rests, with the chosen parts of the match: nozzles stay, wastegates keep their springs, and whichever limit is met first ends it.",
    "Where the smoke limit binds, fuel follows the air. With nozzles that no wastegate relieves, less fuel also drives the turbines less: the loss comes round again, and can be four times that of an engine whose wastegate still has gas to give.",
    "The standard is for engines that are rated below what they can give, and let exhaust and mixture take a part of it; its loss is smaller. Its line for turbocharged engines with charge cooler is taken: none of its lines knows a driven blower, and it does not speak of intake depression and exhaust back pressure.",
    "Depression and back pressure are those at the flow of the usual state; the water in each kilogram of air stays.",
  ],
});

/** Steps of 5 K of the sea and 8 K of the air; of 25 mbar and 50 mbar more loss. */
const steps = [-2, -1, 0, 1, 2] as const;
const losses = [0, 1, 2, 3] as const;

function deratingOf(at: DeratingFrom): Derating {
  const { matchBuild: build, attained: usual } = at;
  const { point } = usual;
  const most = usual.binding.brakePower;
  const standardAt = standardOf(at, most);
  const series = (
    head: Omit<DeratingSeries, "values">,
    { changes, step }: { readonly changes: readonly number[]; readonly step: number },
    worse: (by: number) => OperatingBuild,
    standard?: (value: number) => Power,
  ): DeratingSeries => ({
    ...head,
    values: changes.map((change): DeratedValue => {
      const value = head.design + step * change;
      return {
        at: value,
        ...(change === 0 ? givenBy(usual) : given(worse(step * change), at.ratedSpeed)),
        standard: standard?.(value),
      };
    }),
  });

  const intakeLoss = intakeLossOf(build, point);
  const backPressure = (point.pipePressure - build.surroundings.pressure) as PressureDifference;
  const sea = { key: "sea", name: "Sea", kind: "temperature", design: at.seaTemperature } as const;
  const room = { key: "room", name: "Intake air", kind: "temperature", design: at.ambientTemperature } as const;
  const depression = { key: "depression", name: "Intake depression", kind: "pressureDifference" } as const;
  const exhaust = { key: "backPressure", name: "Exhaust back pressure", kind: "pressureDifference" } as const;
  return {
    most,
    binding: usual.binding.name,
    promised: at.ratedPower,
    series: [
      ...(at.sink === "sea"
        ? [
            series(
              sea,
              { changes: steps, step: 5 },
              (by) => withSink(build, by),
              (value) => standardAt({ sea: value as Temperature }),
            ),
          ]
        : []),
      series(
        room,
        { changes: steps, step: 8 },
        (by) => withAir(at.sink === "air" ? withSink(build, by) : build, by),
        (value) => standardAt({ temperature: value as Temperature }),
      ),
      ...(intakeLoss > 0
        ? [
            series({ ...depression, design: intakeLoss }, { changes: losses, step: 2500 }, (by) =>
              withIntake(build, 1 + by / intakeLoss),
            ),
          ]
        : []),
      series({ ...exhaust, design: backPressure }, { changes: losses, step: 5000 }, (by) =>
        withExhaust(build, point, (backPressure + by) as PressureDifference),
      ),
    ],
  };
}

function given(build: OperatingBuild, speed: RotationalSpeed): Omit<DeratedValue, "at" | "standard"> {
  try {
    return givenBy(attainable(build, speed));
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    return { solved: undefined, refused: error.message };
  }
}

function givenBy({ binding, violated }: AttainablePoint): Omit<DeratedValue, "at" | "standard"> {
  const [passed] = violated;
  if (passed) return { solved: undefined, refused: `${inWords(passed.name)} is passed at every load` };
  if (binding.brakePower > 0) return { solved: binding.brakePower, binding: binding.name };
  return { solved: undefined, refused: `${inWords(binding.name)} is met before there is power at the flywheel` };
}

/** A limit's name within a sentence. */
const inWords = (name: string) => `${name[0]!.toLowerCase()}${name.slice(1)}`;

/** What the standard leaves of a power where air or cooling water are others. */
function standardOf(at: DeratingFrom, usualPower: Power) {
  const { powers } = at.attained.point;
  const factor = (temperature: Temperature, chargeCoolant: Temperature) =>
    powerAdjustment({
      pressure: at.ambientPressure,
      temperature,
      relativeHumidity: at.relativeHumidity,
      saturationPressure: saturationVapourPressure(temperature),
      chargeCoolant,
      exponents: adjustmentExponents.turbochargedCooled,
      mechanicalEfficiency: (powers.brake / powers.indicated) as Fraction,
    }).power;
  const usual = factor(at.ambientTemperature, at.seaTemperature);
  return (change: { readonly temperature?: Temperature; readonly sea?: Temperature }): Power =>
    ((usualPower * factor(change.temperature ?? at.ambientTemperature, change.sea ?? at.seaTemperature)) /
      usual) as Power;
}
