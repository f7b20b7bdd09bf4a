import {
  type ChargeElement,
  compressorMap,
  inventedCompressorPoints,
  inventedOperatingBuild,
  type Load,
  type OperatingBuild,
  ratedCooling,
  type TurbineField,
  type Wastegate,
  wheelEstimate,
} from "../../../lib/charge";
import { exchangerEffectiveness } from "../../../lib/cooling";
import { humidityRatio } from "../../../lib/fluid";

/** A plausible engine with plausible parts, and what it is asked for. Nothing in it was measured. */
export interface RandomCase {
  readonly build: OperatingBuild;
  readonly engineSpeed: number;
  readonly load: Load;
  readonly arrangement: string;
}

/** Numbers between 0 and 1 from a seed: the mulberry generator, public domain. */
export function randomNumbers(seed: number): () => number {
  let state = seed >>> 0;
  return () => {
    state = (state + 0x6d2b79f5) >>> 0;
    let t = state;
    t = Math.imul(t ^ (t >>> 15), t | 1);
    t ^= t + Math.imul(t ^ (t >>> 7), t | 61);
    return ((t ^ (t >>> 14)) >>> 0) / 4294967296;
  };
}

const arrangements = [
  "turbochargers",
  "blower",
  "turbochargers, blower",
  "turbochargers, blower",
  "blower, turbochargers",
  "two banks",
  "two banks, blower",
] as const;

const measured = compressorMap(inventedCompressorPoints).field;

export function randomCase(seed: number): RandomCase {
  const next = randomNumbers(seed);
  const within = (least: number, most: number) => least + (most - least) * next();
  const oneOf = <T>(all: readonly T[]): T => all[Math.floor(next() * all.length)]!;

  const arrangement = oneOf(arrangements);
  const displacement = within(3, 16) / 1000;
  const engineSpeed = within(900, 4000) / 60;
  const volumetricEfficiency = within(0.82, 0.98);
  const ambient = { pressure: within(72e3, 104e3), temperature: within(268, 318) };
  const { pressure, temperature } = ambient as { pressure: never; temperature: never };
  const humidity = humidityRatio({ pressure, temperature, relativeHumidity: within(0.02, 0.98) as never });
  const boost = within(1.3, 4.2); // what the parts are sized for, at rated speed
  const ratedSpeed = within(Math.max(1800, 45 * engineSpeed), 4000) / 60;
  const ratedFlow =
    ((volumetricEfficiency * displacement * ratedSpeed) / 2) * ((ambient.pressure * boost) / (288 * 325));

  const sink = within(275, 325);
  const cooler = (name: string): ChargeElement => {
    const restriction = { massFlow: ratedFlow, density: within(1.5, 4), pressureLoss: within(2e3, 15e3) } as never;
    if (next() < 0.4) {
      return {
        kind: "cooler",
        name,
        restriction,
        cooling: { kind: "fixed", effectiveness: within(0, 0.95) as never, sinkTemperature: sink as never },
      };
    }
    const arrangement = oneOf(["counterflow", "crossflowUnmixed", "crossflowMaximumMixed"] as const);
    const chargeCapacityRate = 1010 * ratedFlow;
    const rating = {
      massFlow: ratedFlow,
      effectiveness: within(0.4, 0.8),
      chargeCapacityRate,
      sinkCapacityRate: chargeCapacityRate * within(3, 15),
      chargeSideShare: within(0.5, 1),
      law: (transferUnits: number, capacityRatio: number) =>
        exchangerEffectiveness({
          arrangement,
          transferUnits: transferUnits as never,
          capacityRatio: capacityRatio as never,
        }),
    } as never;
    return { kind: "cooler", name, restriction, cooling: ratedCooling(rating, sink as never) };
  };
  const bank = (name: string, ratio: number, inlet: number): ChargeElement => {
    const count = oneOf([1, 1, 2, 2, 3]);
    const each = ratedFlow / inlet / count / (ambient.pressure / 1e5);
    const inducer = Math.min(0.29, Math.max(0.016, Math.sqrt((each * within(1, 1.9)) / 175)));
    const exducer = inducer / within(0.66, 0.78);
    const estimated = wheelEstimate({
      name,
      inducerDiameter: inducer as never,
      exducerDiameter: exducer as never,
      blades: Math.round(within(7, 14)) as never,
      backsweep: within(0.3, 0.9) as never,
      sizeDebit: within(0.04, 0.1) as never,
    });
    const compressor = count === 2 && next() < 0.3 ? measured : estimated;
    const turbinePressure = ambient.pressure * inlet * Math.max(1.3, ratio * within(0.6, 1.1));
    const entries = oneOf([1, 2]);
    const area = (each * inlet * (ambient.pressure / 1e5) * Math.sqrt(289 * 900)) / (0.62 * turbinePressure);
    const turbine: TurbineField = {
      name,
      entryArea: ((area / entries) * within(0.75, 1.7)) as never,
      entries: entries as never,
      swallowing: oneOf(["oneNozzle", "twoNozzles"] as const),
      wheelDiameter: ((compressor.tipDiameter ?? exducer) * within(0.82, 1)) as never,
      peakEfficiency: within(0.6, 0.78) as never,
      peakSpeedRatio: within(0.62, 0.72) as never,
    };
    const opensAt = ambient.pressure * inlet * within(1.5, 3.5);
    const wastegate = oneOf<Wastegate | undefined>([
      undefined,
      { kind: "fixed", fraction: within(0, 0.4) as never },
      {
        kind: "sprung",
        opensAt: opensAt as never,
        fullyOpenAt: (opensAt * within(1.1, 1.5)) as never,
        mostFraction: within(0.2, 0.7) as never,
      },
    ]);
    return {
      kind: "compressorBank",
      name,
      count: count as never,
      compressor,
      turbine,
      mechanicalEfficiency: within(0.93, 1) as never,
      ...(wastegate && { wastegate }),
    };
  };
  const blower = (ratio: number, inlet: number): ChargeElement => ({
    kind: "blower",
    name: "blower",
    bypass: oneOf(["automatic", "automatic", "closed", "open"] as const),
    bypassShare: oneOf([0, 0, 0, within(0, 0.4)]) as never,
    blower: {
      displacementPerTurn: ((ratio * displacement * volumetricEfficiency) /
        2 /
        2 /
        0.9 /
        (inlet > 0 ? 1 : boost / ratio)) as never,
      driveRatio: 2 as never,
      builtInVolumeRatio: within(1, 1.5) as never,
      filling: oneOf([
        { kind: "clearance", area: (displacement * within(2e-3, 2e-2)) as never },
        { kind: "fixed", volumetricEfficiency: within(0.75, 0.95) as never },
      ] as const),
      mechanicalEfficiency: within(0.85, 0.97) as never,
      windage: within(0, 0.004),
    },
  });
  const spray: ChargeElement[] =
    next() < 0.2
      ? [
          {
            kind: "spray",
            name: "spray",
            spray: {
              waterFlow: (ratedFlow * within(0, 0.04)) as never,
              waterTemperature: within(278, 330) as never,
              evaporationEfficiency: within(0, 1) as never,
            },
          },
        ]
      : [];
  const filter: ChargeElement = {
    kind: "restriction",
    name: "filter",
    restriction: { massFlow: ratedFlow, density: 1.1, pressureLoss: within(500, 5000) } as never,
  };
  const root = Math.sqrt(boost);
  const machines: Readonly<Record<(typeof arrangements)[number], () => ChargeElement[]>> = {
    turbochargers: () => [bank("bank", boost, 1), ...spray, cooler("cooler")],
    blower: () => [blower(Math.min(boost, within(1, 2.4)), 1), ...spray, cooler("cooler")],
    "turbochargers, blower": () => {
      const ratio = within(0.9, 1.9);
      return [bank("bank", boost / ratio, 1), cooler("cooler 1"), blower(ratio, 1), ...spray, cooler("cooler 2")];
    },
    "blower, turbochargers": () => {
      const ratio = within(1, 1.8);
      return [blower(ratio, 0), cooler("cooler 1"), bank("bank", boost / ratio, ratio), ...spray, cooler("cooler 2")];
    },
    "two banks": () => [
      bank("low", root, 1),
      ...spray,
      cooler("cooler 1"),
      bank("high", root, root),
      cooler("cooler 2"),
    ],
    "two banks, blower": () => {
      const ratio = within(1, 1.6);
      return [
        bank("low", root, 1),
        bank("high", root, root),
        ...spray,
        cooler("cooler 1"),
        blower(ratio, 1),
        cooler("cooler 2"),
      ];
    },
  };
  const build = {
    ...inventedOperatingBuild,
    surroundings: { ...ambient, humidityRatio: humidity },
    path: [filter, ...machines[arrangement](), { kind: "plenum", name: "manifold" }],
    engine: {
      ...inventedOperatingBuild.engine,
      displacement,
      volumetricEfficiency,
      stroke: within(0.1, 0.16),
      grossIndicatedEfficiency: within(0.4, 0.49),
      heatToWallsShare: within(0.1, 0.22),
    },
    accessoryPower: within(0, 15e3),
    exhaustPipe: { massFlow: ratedFlow, density: 0.45, pressureLoss: within(500, 15e3) },
    pumpingGainCounts: next() < 0.7,
    limits: {
      leastExcessAirRatio: within(1.2, 1.8),
      highestExhaustTemperature: within(900, 1100),
      highestBackPressure: within(3e5, 7e5),
      highestPeakPressure: within(150e5, 260e5),
    },
  } as never as OperatingBuild;
  const load = oneOf<Load>([
    { kind: "excessAir", excessAirRatio: within(1.2, 3) as never },
    { kind: "excessAir", excessAirRatio: within(1.2, 3) as never },
    { kind: "brakePower", brakePower: ((within(0, 22e5) * displacement * engineSpeed) / 2) as never },
    { kind: "fuelFlow", fuelFlow: ((within(3e5, 55e5) * displacement * engineSpeed) / 2 / 42.9e6 / 0.45) as never },
  ]);
  return { build: sometimesInSeries(build, seed), engineSpeed, load, arrangement };
}

/** One in three of those with two coolers has a cooling stream that passes both, either way round. */
function sometimesInSeries(build: OperatingBuild, seed: number): OperatingBuild {
  const next = randomNumbers(seed + 1e9);
  const coolers = build.path.filter(({ kind }) => kind === "cooler");
  if (coolers.length < 2 || next() > 1 / 3) return build;
  const [warmed, warmer] = next() < 0.7 ? coolers : [...coolers].reverse();
  const warmedBy = { cooler: warmer!.name, perWatt: 2e-4 * next() };
  return { ...build, path: build.path.map((element) => (element === warmed ? { ...element, warmedBy } : element) as ChargeElement) };
}
