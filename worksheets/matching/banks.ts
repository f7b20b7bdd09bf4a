import type { CompressorBankElement, CompressorField, DemandBuild, Wastegate } from "../../lib/charge";
import { structure } from "../../lib/graph";
import type {
  Area,
  Count,
  Fraction,
  GaugePressure,
  Length,
  Pressure,
  Ratio,
  RotationalSpeed,
} from "../../lib/quantity";
import { demandBuild } from "../boost/demand";
import { bankACompressor, bankBCompressor } from "./compressors";
import {
  bankAEntries,
  bankAOpenAt,
  bankAOpensAt,
  bankAPastShare,
  bankASpeedLimit,
  bankASpeedRatio,
  bankATurbineArea,
  bankATurbinePeak,
  bankATurbineWheel,
  bankAWastegate,
  bankBCount,
  bankBEntries,
  bankBOpenAt,
  bankBOpensAt,
  bankBPastShare,
  bankBSpeedLimit,
  bankBSpeedRatio,
  bankBTurbineArea,
  bankBTurbinePeak,
  bankBTurbineWheel,
  bankBWastegate,
  chokeMarginWanted,
  surgeMarginWanted,
  tipSpeedLimit,
} from "./inputs";

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
    entries: bankAEntries,
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
    entries: bankBEntries,
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

interface BankStated {
  readonly compressor: CompressorField;
  readonly count: Count;
  readonly turbineArea: Area;
  readonly entries: Count;
  readonly turbineWheel: Length;
  readonly turbinePeak: Fraction;
  readonly speedRatio: Ratio;
  readonly wastegate: "none" | "sprung" | "fixed";
  readonly opensAt: GaugePressure;
  readonly openAt: GaugePressure;
  readonly pastShare: Fraction;
  readonly speedLimit: RotationalSpeed;
  readonly tipSpeedLimit: NonNullable<CompressorBankElement["highestTipSpeed"]>;
  readonly surgeMarginWanted: Fraction;
  readonly chokeMarginWanted: Fraction;
}

function bankElement(name: string, engine: DemandBuild, bank: BankStated): CompressorBankElement {
  const wastegate = wastegateOf(name, engine, bank);
  return {
    kind: "compressorBank",
    name,
    count: bank.count,
    compressor: bank.compressor,
    turbine: {
      name: `turbine of the ${name}`,
      entryArea: bank.turbineArea,
      entries: bank.entries,
      swallowing: "twoNozzles",
      wheelDiameter: bank.turbineWheel,
      peakEfficiency: bank.turbinePeak,
      peakSpeedRatio: bank.speedRatio,
    },
    mechanicalEfficiency: engine.turbochargers.mechanicalEfficiency,
    ...(wastegate && { wastegate }),
    highestSpeed: bank.speedLimit,
    highestTipSpeed: bank.tipSpeedLimit,
    leastSurgeMargin: bank.surgeMarginWanted,
    leastChokeMargin: bank.chokeMarginWanted,
  };
}

function wastegateOf(name: string, engine: DemandBuild, bank: BankStated): Wastegate | undefined {
  if (bank.wastegate === "none") return undefined;
  if (bank.wastegate === "fixed") return { kind: "fixed", fraction: bank.pastShare };
  if (bank.openAt <= bank.opensAt) {
    const [opens, open] = [bank.opensAt, bank.openAt].map((each) => (each / 1e5).toFixed(2));
    throw new RangeError(
      `${name}: the wastegate begins to open at ${opens} bar and is fully open at ${open} bar; the second must be the higher: raise it, or choose a softer spring that begins sooner`,
    );
  }
  const { pressure } = engine.surroundings;
  return {
    kind: "sprung",
    opensAt: (bank.opensAt + pressure) as Pressure,
    fullyOpenAt: (bank.openAt + pressure) as Pressure,
    mostFraction: bank.pastShare,
  };
}
