import {
  type ChargeElement,
  type CoolerElement,
  type DemandBuild,
  type EffectivenessLaw,
  type OperatingBuild,
  ratedCooling,
} from "../../lib/charge";
import { exchangerEffectiveness } from "../../lib/cooling";
import { dryAir } from "../../lib/fluid";
import { structure } from "../../lib/graph";
import type { Fraction, MassFlow, Ratio, Temperature, ThermalConductance } from "../../lib/quantity";
import { demandBuild } from "../boost/demand";
import { blowerHighestSpeed, blowerOutletLimit, peakPressureLimit, turbineInletLimit } from "../boost/inputs";
import { heatCarrier, idleSpeed, ratedSpeed } from "../brief/cells";
import { accessoryOverSpeed } from "../drive-speeds/accessories";
import { chargeCooledBy } from "../marine-cooling/inputs";
import { bankA, bankB } from "./banks";
import { fuelLimits } from "./fuelLimits";
import {
  aftercoolerMatchFlow,
  backPressureLimit,
  blowerBypass,
  blowerBypassShare,
  blowerRotorDiameter,
  blowerTipSpeedLimit,
  type ChargePart,
  chargeOrder,
  chargeParts,
  coolerAirShare,
  coolerArrangement,
  coolerSinkTimes,
  fullExcessAirFrom,
  intercoolerMatchFlow,
  slowExcessAir,
  sprayEvaporated,
  sprayFlow,
  sprayTemperature,
} from "./inputs";
import { slowAirOf } from "./slowAir";

/** Engine, chosen parts in their order, and what must not be passed. */
export const matchBuild = structure("matchBuild", {
  label: "Engine and chosen parts, in the order of flow",
  from: {
    demandBuild,
    chargeOrder,
    bankA,
    bankB,
    intercoolerMatchFlow,
    aftercoolerMatchFlow,
    coolerArrangement,
    coolerSinkTimes,
    coolerAirShare,
    blowerBypass,
    blowerBypassShare,
    blowerRotorDiameter,
    blowerTipSpeedLimit,
    blowerHighestSpeed,
    blowerOutletLimit,
    sprayFlow,
    sprayTemperature,
    sprayEvaporated,
    fuelLimits,
    turbineInletLimit,
    backPressureLimit,
    peakPressureLimit,
    idleSpeed,
    ratedSpeed,
    slowExcessAir,
    fullExcessAirFrom,
    accessoryOverSpeed,
    heatCarrier,
    chargeCooledBy,
  },
  compute: (at): OperatingBuild => {
    const { demandBuild: engine } = at;
    const cooler = (name: string, stated: DemandBuild["coolerBeforeBlower"], ratedFlow: MassFlow): CoolerElement => ({
      kind: "cooler",
      name,
      cooling: coolingOf(name, stated, { ...at, ratedFlow }),
      restriction: stated.restriction,
    });
    const warmedBy = { cooler: "aftercooler", perWatt: engine.sinkWarmingPerWatt };
    const parts: Readonly<Record<ChargePart, () => ChargeElement>> = {
      filter: () => ({ kind: "restriction", name: "filter", restriction: engine.filter }),
      bankA: () => at.bankA,
      bankB: () => at.bankB,
      intercooler: () => ({
        ...cooler("intercooler", engine.coolerBeforeBlower, at.intercoolerMatchFlow),
        ...(warmedBy.perWatt > 0 && { warmedBy }),
      }),
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
        bypassShare: at.blowerBypassShare,
        highestSpeed: at.blowerHighestSpeed,
        rotorDiameter: at.blowerRotorDiameter,
        highestTipSpeed: at.blowerTipSpeedLimit,
        highestOutletTemperature: at.blowerOutletLimit,
      }),
      aftercooler: () => cooler("aftercooler", engine.coolerAfterBlower, at.aftercoolerMatchFlow),
      plenum: () => ({ kind: "plenum", name: "plenum" }),
    };
    const order = at.chargeOrder.map(({ part }) => part);
    requireMachinesOnce(order);
    return {
      surroundings: engine.surroundings,
      path: order.map((part, i) => numbered(parts[part](), order.slice(0, i).filter((other) => other === part).length)),
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
      overSpeed: {
        statedAt: at.ratedSpeed,
        accessories: at.accessoryOverSpeed,
        coolingStreams: at.heatCarrier === "seaWater" && at.chargeCooledBy === "sea",
        slowExcessAir: slowAirOf(at),
      },
    };
  },
  formula: "\\text{inputs gathered}",
  source:
    "definition; coolers by transfer units after W. M. Kays, A. L. London, Compact Heat Exchangers (from memory): UA = UA_r/(s_k (ṁ_r/ṁ)^0.8 + 1 − s_k)",
  assumptions: [
    "Engine, intake, blower, exhaust pipe, fuel and accessories are those of the other sheets. At other speeds the alternator takes the same power, a fan goes with the cube of the speed, and what else hangs on the belts with the speed.",
    "Up to the speed from which the air sheet's excess air is kept, the least lies on a straight line from that at idle.",
    "Outside air reaches both coolers alike. Water passes the aftercooler first and the intercooler then, as on the boost sheet. The sea water's flow goes with the engine's speed, and so does what it takes from the coolers; that of a loop and of air stays.",
    "What stands in the path twice, such as a second aftercooler, is another one alike.",
  ],
});

const coolerLaws: Readonly<Record<"crossflow" | "counterflow" | "shellAndTube", EffectivenessLaw>> = {
  crossflow: lawOf("crossflowUnmixedApproximate"),
  counterflow: lawOf("counterflow"),
  shellAndTube: lawOf("shellAndTube"),
};

function lawOf(arrangement: Parameters<typeof exchangerEffectiveness>[0]["arrangement"]): EffectivenessLaw {
  return (transferUnits, capacityRatio) =>
    exchangerEffectiveness({
      arrangement,
      transferUnits: transferUnits as Ratio,
      capacityRatio: capacityRatio as Ratio,
    });
}

interface CoolerStated {
  readonly ratedFlow: MassFlow;
  readonly coolerArrangement: keyof typeof coolerLaws;
  readonly coolerSinkTimes: Ratio;
  readonly coolerAirShare: Fraction;
}

/** A charge between two machines, for its specific heat [K]. */
const warmCharge = 400 as Temperature;

/** Effectiveness below which a cooler cools nothing, and needs no transfer units [–]. */
const noCooling = 0.001;

/** A charge cooler that has its stated effectiveness at the flow for which it was stated. */
function coolingOf(
  name: string,
  { effectiveness, sinkTemperature }: DemandBuild["coolerBeforeBlower"],
  { ratedFlow, coolerArrangement, coolerSinkTimes, coolerAirShare }: CoolerStated,
): CoolerElement["cooling"] {
  if (effectiveness < noCooling) return { kind: "fixed", effectiveness, sinkTemperature };
  const chargeCapacityRate = (ratedFlow * dryAir.specificHeat(warmCharge)) as ThermalConductance;
  const rating = {
    massFlow: ratedFlow,
    effectiveness,
    chargeCapacityRate,
    sinkCapacityRate: (coolerSinkTimes * chargeCapacityRate) as ThermalConductance,
    chargeSideShare: coolerAirShare,
    law: coolerLaws[coolerArrangement],
  };
  try {
    return ratedCooling(rating, sinkTemperature);
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    throw new RangeError(error.message.replace(/^ratedCooling/, name));
  }
}

/** The second and third of a kind bear a number. */
function numbered(element: ChargeElement, before: number): ChargeElement {
  return before === 0 ? element : { ...element, name: `${element.name} ${before + 1}` };
}

function requireMachinesOnce(order: readonly ChargePart[]): void {
  for (const part of ["bankA", "bankB", "blower"] as const) {
    const [first, second] = order.flatMap((each, i) => (each === part ? [i + 1] : []));
    if (second === undefined) continue;
    throw new RangeError(
      `charge path: the ${chargeParts[part]} stands in rows ${first} and ${second}; take one of them away, or choose another part in its place`,
    );
  }
}
