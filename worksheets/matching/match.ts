import {
  type ChargeElement,
  type CompressorBankElement,
  type CompressorField,
  type CoolerElement,
  compressorMap,
  type DemandBuild,
  type OperatingBuild,
  ratedCooling,
  wheelEstimate,
} from "../../lib/charge";
import { dryAir } from "../../lib/fluid";
import { structure } from "../../lib/graph";
import type {
  Angle,
  Area,
  Count,
  Fraction,
  GaugePressure,
  Length,
  Pressure,
  Ratio,
  RotationalSpeed,
  Temperature,
  ThermalConductance,
} from "../../lib/quantity";
import { demandBuild } from "../boost/demand";
import { blowerHighestSpeed, blowerOutletLimit, peakPressureLimit, turbineInletLimit } from "../boost/inputs";
import { fuelLimits } from "./fuelLimits";
import {
  backPressureLimit,
  bankABacksweep,
  bankABlades,
  bankAExducer,
  bankAInducer,
  bankAOpenAt,
  bankAOpensAt,
  bankAPastShare,
  bankASizeDebit,
  bankASpeedLimit,
  bankASpeedRatio,
  bankATurbineArea,
  bankATurbinePeak,
  bankATurbineWheel,
  bankAWastegate,
  bankBBacksweep,
  bankBBlades,
  bankBCount,
  bankBExducer,
  bankBInducer,
  bankBOpenAt,
  bankBOpensAt,
  bankBPastShare,
  bankBSizeDebit,
  bankBSpeedLimit,
  bankBSpeedRatio,
  bankBTurbineArea,
  bankBTurbinePeak,
  bankBTurbineWheel,
  bankBWastegate,
  blowerBypass,
  type ChargePart,
  chargeOrder,
  chargeParts,
  chokeMarginWanted,
  compressorPoints,
  compressorSource,
  coolerAirShare,
  coolerMatchFlow,
  sprayEvaporated,
  sprayFlow,
  sprayTemperature,
  surgeMarginWanted,
  tipSpeedLimit,
} from "./inputs";
import { inRows, pointsText } from "./points";

const estimateSource =
  "M. V. Casey, C. J. Robinson, A Method to Estimate the Performance Map of a Centrifugal Compressor Stage, J. Turbomachinery 135 (2013) (forms from memory)";

const estimateDoubt =
  "From sizes alone it is a published estimate: ±4 points of efficiency, ±8 % of the pressure rise, and ±25 % of the flow at surge, which is much less certain than the rest.";

export const bankACompressor = structure("bankACompressor", {
  label: "First bank, what its compressor does",
  from: {
    compressorSource,
    compressorPoints,
    inducer: bankAInducer,
    exducer: bankAExducer,
    blades: bankABlades,
    backsweep: bankABacksweep,
    sizeDebit: bankASizeDebit,
  },
  compute: ({ compressorSource, compressorPoints, ...wheel }): CompressorField => {
    if (compressorSource === "wheel") return estimated("first bank", wheel);
    try {
      return compressorMap(pointsText(compressorPoints, wheel.exducer)).field;
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      throw new RangeError(`measured points: ${inRows(error.message)}`);
    }
  },
  formula: "\\left(\\pi,\\ \\eta\\right) = f\\left(\\dot m_{cor},\\ n_{cor}\\right)",
  source: `${estimateSource}; through measured points by least squares along each speed line`,
  assumptions: [
    estimateDoubt,
    "Through measured points it is as good as they are; the surge line runs through the leftmost of each speed line.",
    "Beyond its slowest and fastest speed, and outside surge and choke, the field is drawn on and marked as such.",
  ],
});

export const bankBCompressor = structure("bankBCompressor", {
  label: "Second bank, what its compressor does",
  from: {
    inducer: bankBInducer,
    exducer: bankBExducer,
    blades: bankBBlades,
    backsweep: bankBBacksweep,
    sizeDebit: bankBSizeDebit,
  },
  compute: (wheel): CompressorField => estimated("second bank", wheel),
  formula: "\\left(\\pi,\\ \\eta\\right) = f\\left(\\dot m_{cor},\\ n_{cor}\\right)",
  source: estimateSource,
  assumptions: [estimateDoubt],
});

const bankSource = "N. Watson, M. S. Janota, Turbocharging the Internal Combustion Engine (1982) (from memory)";
const bankAssumptions = [
  "A turbine swallows like two nozzles that share the expansion alike; its efficiency falls off as a parabola to both sides of its best blade-speed ratio.",
  "Steady mean values: pulses, which give a turbine more than their mean says, are left out.",
];

export const bankA = structure("bankA", {
  label: "First bank of turbochargers, gathered",
  from: {
    demandBuild,
    compressor: bankACompressor,
    turbineArea: bankATurbineArea,
    turbineWheel: bankATurbineWheel,
    turbinePeak: bankATurbinePeak,
    speedRatio: bankASpeedRatio,
    wastegate: bankAWastegate,
    opensAt: bankAOpensAt,
    openAt: bankAOpenAt,
    pastShare: bankAPastShare,
    speedLimit: bankASpeedLimit,
    tipSpeedLimit,
    surgeMarginWanted,
    chokeMarginWanted,
  },
  compute: ({ demandBuild, ...bank }) =>
    bankElement("first bank", demandBuild, { ...bank, count: demandBuild.turbochargers.count }),
  formula: "\\eta_m\\,P_t = P_c, \\qquad \\eta = \\eta_A\\left[1 - \\left(\\frac{\\nu - \\nu_A}{\\nu_A}\\right)^2\\right]",
  source: bankSource,
  assumptions: bankAssumptions,
});

export const bankB = structure("bankB", {
  label: "Second bank of turbochargers, gathered",
  from: {
    demandBuild,
    compressor: bankBCompressor,
    count: bankBCount,
    turbineArea: bankBTurbineArea,
    turbineWheel: bankBTurbineWheel,
    turbinePeak: bankBTurbinePeak,
    speedRatio: bankBSpeedRatio,
    wastegate: bankBWastegate,
    opensAt: bankBOpensAt,
    openAt: bankBOpenAt,
    pastShare: bankBPastShare,
    speedLimit: bankBSpeedLimit,
    tipSpeedLimit,
    surgeMarginWanted,
    chokeMarginWanted,
  },
  compute: ({ demandBuild, ...bank }) => bankElement("second bank", demandBuild, bank),
  formula: "\\eta_m\\,P_t = P_c, \\qquad \\eta = \\eta_B\\left[1 - \\left(\\frac{\\nu - \\nu_B}{\\nu_B}\\right)^2\\right]",
  source: bankSource,
  assumptions: bankAssumptions,
});

/** Engine, chosen parts in their order, and what must not be passed. */
export const matchBuild = structure("matchBuild", {
  label: "Engine and chosen parts, in the order of flow",
  from: {
    demandBuild,
    chargeOrder,
    bankA,
    bankB,
    coolerMatchFlow,
    coolerAirShare,
    blowerBypass,
    blowerHighestSpeed,
    blowerOutletLimit,
    sprayFlow,
    sprayTemperature,
    sprayEvaporated,
    fuelLimits,
    turbineInletLimit,
    backPressureLimit,
    peakPressureLimit,
  },
  compute: (at): OperatingBuild => {
    const { demandBuild: engine } = at;
    const cooler = (name: string, stated: DemandBuild["coolerBeforeBlower"]): CoolerElement => ({
      kind: "cooler",
      name,
      cooling:
        stated.effectiveness < 0.001
          ? { kind: "fixed", effectiveness: stated.effectiveness, sinkTemperature: stated.sinkTemperature }
          : ratedAt(stated, at),
      restriction: stated.restriction,
    });
    const parts: Readonly<Record<ChargePart, () => ChargeElement>> = {
      filter: () => ({ kind: "restriction", name: "filter", restriction: engine.filter }),
      bankA: () => at.bankA,
      bankB: () => at.bankB,
      intercooler: () => cooler("intercooler", engine.coolerBeforeBlower),
      spray: () => ({
        kind: "spray",
        name: "water spray",
        spray: {
          waterFlow: at.sprayFlow,
          waterTemperature: at.sprayTemperature,
          evaporationEfficiency: at.sprayEvaporated,
        },
      }),
      blower: () => ({
        kind: "blower",
        name: "blower",
        blower: engine.blower,
        bypass: at.blowerBypass,
        highestSpeed: at.blowerHighestSpeed,
        highestOutletTemperature: at.blowerOutletLimit,
      }),
      aftercooler: () => cooler("aftercooler", engine.coolerAfterBlower),
      plenum: () => ({ kind: "plenum", name: "plenum" }),
    };
    requireOnce(at.chargeOrder.map(({ part }) => part));
    return {
      surroundings: engine.surroundings,
      path: at.chargeOrder.map(({ part }) => parts[part]()),
      engine: engine.engine,
      fuel: engine.fuel,
      accessoryPower: engine.accessoryPower,
      fuelPumpWork: engine.fuelPumpWork,
      exhaustPipe: engine.exhaustPipe,
      pumpingGainCounts: engine.pumpingGainCounts,
      limits: {
        leastExcessAirRatio: engine.excessAirRatio,
        highestExhaustTemperature: at.turbineInletLimit,
        highestBackPressure: at.backPressureLimit,
        highestPeakPressure: at.peakPressureLimit,
        external: at.fuelLimits,
      },
    };
  },
  formula: "\\text{inputs gathered}",
  source:
    "definition; coolers by transfer units after W. M. Kays, A. L. London, Compact Heat Exchangers (from memory): UA = UA_r/(s_k (ṁ_r/ṁ)^0.8 + 1 − s_k)",
  assumptions: [
    "Engine, intake, blower, exhaust pipe, fuel and accessories are those of the other sheets; the accessories take at every speed what they take at the promised one.",
    "The coolers' cooling stream is large, and reaches both of them at the same temperature: with sea water the second in line gets it a kelvin or two warmer than is reckoned here.",
    "Excess air, exhaust temperature, cylinder pressure, and the blower's speed and temperature have their limits on the air and boost sheets.",
  ],
});

interface WheelSizes {
  readonly inducer: Length;
  readonly exducer: Length;
  readonly blades: Count;
  readonly backsweep: Angle;
  readonly sizeDebit: Fraction;
}

function estimated(name: string, { inducer, exducer, ...blades }: WheelSizes): CompressorField {
  return wheelEstimate({ name, inducerDiameter: inducer, exducerDiameter: exducer, ...blades });
}

interface BankStated {
  readonly compressor: CompressorField;
  readonly count: Count;
  readonly turbineArea: Area;
  readonly turbineWheel: Length;
  readonly turbinePeak: Fraction;
  readonly speedRatio: Ratio;
  readonly wastegate: "none" | "sprung";
  readonly opensAt: GaugePressure;
  readonly openAt: GaugePressure;
  readonly pastShare: Fraction;
  readonly speedLimit: RotationalSpeed;
  readonly tipSpeedLimit: NonNullable<CompressorBankElement["highestTipSpeed"]>;
  readonly surgeMarginWanted: Fraction;
  readonly chokeMarginWanted: Fraction;
}

function bankElement(name: string, engine: DemandBuild, bank: BankStated): CompressorBankElement {
  const { pressure } = engine.surroundings;
  if (bank.wastegate === "sprung" && bank.openAt <= bank.opensAt) {
    const [opens, open] = [bank.opensAt, bank.openAt].map((each) => (each / 1e5).toFixed(2));
    throw new RangeError(
      `${name}: the wastegate begins to open at ${opens} bar and is fully open at ${open} bar; the second must be the higher`,
    );
  }
  return {
    kind: "compressorBank",
    name,
    count: bank.count,
    compressor: bank.compressor,
    turbine: {
      name: `turbine of the ${name}`,
      entryArea: bank.turbineArea,
      entries: 1 as Count,
      swallowing: "twoNozzles",
      wheelDiameter: bank.turbineWheel,
      peakEfficiency: bank.turbinePeak,
      peakSpeedRatio: bank.speedRatio,
    },
    mechanicalEfficiency: engine.turbochargers.mechanicalEfficiency,
    ...(bank.wastegate === "sprung" && {
      wastegate: {
        kind: "sprung",
        opensAt: (bank.opensAt + pressure) as Pressure,
        fullyOpenAt: (bank.openAt + pressure) as Pressure,
        mostFraction: bank.pastShare,
      },
    }),
    highestSpeed: bank.speedLimit,
    highestTipSpeed: bank.tipSpeedLimit,
    leastSurgeMargin: bank.surgeMarginWanted,
    leastChokeMargin: bank.chokeMarginWanted,
  };
}

/** A charge cooler that has its stated effectiveness at the flow for which it was stated. */
function ratedAt(
  { effectiveness, sinkTemperature }: DemandBuild["coolerBeforeBlower"],
  { coolerMatchFlow, coolerAirShare }: { coolerMatchFlow: CoolerRatedFlow; coolerAirShare: Fraction },
) {
  const chargeCapacityRate = (coolerMatchFlow * dryAir.specificHeat(warmCharge)) as ThermalConductance;
  return ratedCooling(
    {
      massFlow: coolerMatchFlow,
      effectiveness,
      chargeCapacityRate,
      sinkCapacityRate: (largeSinkTimes * chargeCapacityRate) as ThermalConductance,
      chargeSideShare: coolerAirShare,
    },
    sinkTemperature,
  );
}

type CoolerRatedFlow = Parameters<typeof ratedCooling>[0]["massFlow"];

/** A charge between two machines, for its specific heat [K]. */
const warmCharge = 400 as Temperature;

/** A cooling stream so large that it keeps its temperature. */
const largeSinkTimes = 100;

function requireOnce(order: readonly ChargePart[]): void {
  order.forEach((part, i) => {
    const first = order.indexOf(part);
    if (first === i) return;
    throw new RangeError(
      `charge path: ${chargeParts[part]} stands in rows ${first + 1} and ${i + 1}; a part can stand in it once`,
    );
  });
}
