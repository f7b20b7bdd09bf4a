import type { OperatingPoint } from "../../lib/charge";
import { moistAir } from "../../lib/fluid";
import { type Amount, type Inner, inner, unbound, type WrittenOut, writtenOut } from "../inner";
import {
  attainablePower,
  chokeMargin,
  matchedAirFlow,
  matchedBackPressure,
  matchedBlowerOutlet,
  matchedBlowerPower,
  matchedBlowerRatio,
  matchedCondensate,
  matchedExcessAir,
  matchedManifoldPressure,
  matchResidual,
  nextPower,
  sprayTaken,
  surgeMargin,
  turbineEfficiencyMet,
  wastegatePast,
  wheelCorrectedFlow,
  wheelEfficiency,
  wheelPressureRatio,
  wheelSpeed,
} from "./cells";
import { matched } from "./solved";

const from = { matched };
type At = { readonly matched: OperatingPoint };
type Bank = OperatingPoint["banks"][number];
type Station = OperatingPoint["stations"][number];

/** A number of the first bank; none without turbochargers. */
const ofBank = (value: (bank: Bank) => number) => ({ matched: { banks } }: At) => (banks[0] ? value(banks[0]) : Number.NaN);

/** A number of the station behind the first element of a sort, or of the one before it; none without that element. */
const beside = (kind: Station["after"], by: 0 | -1, value: (station: Station) => number) => ({ matched: { stations } }: At) => {
  const behind = stations.findIndex(({ after }) => after === kind);
  return behind < 0 ? Number.NaN : value(stations[behind + by]!);
};
const pressure = ({ pressure: value }: Station) => value;
const temperature = ({ temperature: value }: Station) => value;

const ratio = (value: number): Amount => ({ kind: "ratio", value });
const boost = (value: number): Amount => ({ kind: "pressure", hint: "boost", value });

export const matchingInner: readonly Inner[] = [
  unbound([attainablePower], "P_{lim}", "power at which a limit is met, one for each limit"),
  unbound([nextPower], "m_2", "room to the next limit where the first is met; with a stroke, at the trial"),
  unbound([nextPower], "P'", "power of a trial a little above, with the first limit lifted"),
  inner([matchedAirFlow], "\\rho_5", "density in the manifold", "density", from, ({ matched: { stations, manifoldTemperature, manifoldPressure } }) =>
    moistAir(stations.at(-1)!.humidityRatio).density(manifoldTemperature, manifoldPressure),
  ),
  inner([matchedExcessAir], "\\dot m_{dry}", "flow of dry air", "massFlow", from, (at) => at.matched.dryAirFlow),
  inner([matchedExcessAir], "\\dot m_f", "fuel flow at the match", "massFlow", from, (at) => at.matched.fuelFlow, "fuel"),
  inner([sprayTaken], "\\dot m_d", "flow of dry air", "massFlow", from, (at) => at.matched.dryAirFlow),
  unbound([sprayTaken], "w_s", "humidity ratio of saturated air where the water is sprayed"),
  unbound([sprayTaken], "w", "humidity ratio there"),
  inner([matchedBlowerRatio], "p_{in}", "pressure before the blower", "pressure", from, beside("blower", -1, pressure), "boost"),
  inner([matchedBlowerRatio], "p_{out}", "pressure behind the blower", "pressure", from, beside("blower", 0, pressure), "boost"),
  inner([matchedBlowerPower], "p_{3M}", "pressure before the blower", "pressure", from, beside("blower", -1, pressure), "boost"),
  inner([matchedBlowerOutlet], "T_{3M}", "temperature before the blower", "temperature", from, beside("blower", -1, temperature)),
  inner([wheelCorrectedFlow], "T_1", "temperature before the first bank", "temperature", from, beside("compressorBank", -1, temperature)),
  inner([wheelCorrectedFlow], "p_1", "pressure before the first bank", "pressure", from, beside("compressorBank", -1, pressure), "boost"),
  inner([wheelPressureRatio, wheelEfficiency], "n_{cor}", "corrected wheel speed", "rotationalSpeed", from, ofBank(({ correctedSpeed }) => correctedSpeed)),
  inner([wheelSpeed], "P_t", "power of the bank's turbines", "power", from, ofBank(({ turbinePower }) => turbinePower)),
  inner([wheelSpeed], "P_c", "power of the bank's compressors", "power", from, ofBank(({ compressorPower }) => compressorPower)),
  unbound([wheelSpeed], "n", "the speed at which this holds"),
  inner([turbineEfficiencyMet], "\\nu", "blade speed over that of the jet", "ratio", from, ofBank(({ speedRatio }) => speedRatio ?? Number.NaN)),
  unbound([wastegatePast], "s", "how far the wastegate is open between its two pressures, 0 to 1"),
  inner([surgeMargin], "\\dot m_{surge}", "corrected flow at which it would surge", "massFlow", from, ofBank(({ correctedFlow, surgeMargin: margin }) => correctedFlow * (1 - margin))),
  inner([chokeMargin], "\\dot m_{choke}", "corrected flow at which it would choke", "massFlow", from, ofBank(({ correctedFlow, chokeMargin: margin }) => correctedFlow / (1 - margin))),
  unbound([matchResidual], "r", "largest gap in the equations solved"),
  inner([matchResidual], "r_{mass}", "gap in the balance of flow", "ratio", from, (at) => at.matched.convergence.massResidual),
  inner([matchResidual], "r_{energy}", "gap in the balance of energy", "ratio", from, (at) => at.matched.convergence.energyResidual),
];

export const matchingWrittenOut: readonly WrittenOut[] = [
  writtenOut(matchedManifoldPressure, from, ({ matched: { stations } }) => [
    stations.map((station, i) => (i === 0 ? boost(station.pressure) : ratio(station.pressureRatio))),
  ]),
  writtenOut(matchedBackPressure, from, ({ matched: { pipePressure, banks } }) => [[boost(pipePressure), ...banks.map(({ expansionRatio }) => ratio(expansionRatio))]]),
  writtenOut(matchedCondensate, from, ({ matched: { coolers } }) => coolers.map(({ condensateFlow: value }) => [{ kind: "massFlow", hint: "small", value }])),
];
