import { wheelEstimate } from "../../lib/charge";
import { choice, choiceColumn, table } from "../../lib/graph";
import { setting } from "../setting";
import { bankSettings } from "./bank";
import { measuredCompressor } from "./measuredCompressor";
import type { Angle, Count, Fraction, Length } from "../../lib/quantity";
import { writtenDown } from "./points";

/** What may stand in the charge path. */
export const chargeParts = {
  filter: "filter and duct",
  bankA: "first bank",
  bankB: "second bank",
  intercooler: "intercooler",
  spray: "water spray",
  blower: "blower",
  aftercooler: "aftercooler",
  plenum: "plenum",
} as const;

export type ChargePart = keyof typeof chargeParts;

export const chargeOrder = table("chargeOrder", {
  label: "The charge path, in the order of flow",
  note: "From the open air to the manifold; a bank is turbochargers side by side. Take a part away, add one, or move it; its own numbers stay where they are.",
  columns: { part: choiceColumn({ label: "Part", options: chargeParts }) },
  rows: [1, 12],
  value: [
    { part: "filter" },
    { part: "bankA" },
    { part: "intercooler" },
    { part: "blower" },
    { part: "aftercooler" },
    { part: "plenum" },
  ],
});

/** Points of the wheel that a new build has, for a start: drawn from the estimate of its sizes, in metres. */
function invented(inducer: number, exducer: number, speeds: readonly number[]) {
  const field = wheelEstimate({
    name: "invented",
    inducerDiameter: inducer as Length,
    exducerDiameter: exducer as Length,
    blades: 10 as Count,
    backsweep: ((36 * Math.PI) / 180) as Angle,
    sizeDebit: 0.05 as Fraction,
  });
  return writtenDown(field, speeds);
}

export const { source: compressorSource, points: compressorPoints } = measuredCompressor({
  sourceKey: "compressorSource",
  pointsKey: "compressorPoints",
  name: "First bank",
  points: invented(0.07, 0.097, [40_000, 60_000, 76_000, 90_000, 102_000, 112_000]),
});

export const { source: bankBCompressorSource, points: bankBCompressorPoints } = measuredCompressor({
  sourceKey: "bankBCompressorSource",
  pointsKey: "bankBCompressorPoints",
  name: "Second bank",
  points: invented(0.066, 0.092, [42_000, 63_000, 80_000, 95_000, 107_000, 117_000]),
});

export const {
  inducer: bankAInducer,
  exducer: bankAExducer,
  blades: bankABlades,
  backsweep: bankABacksweep,
  sizeDebit: bankASizeDebit,
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
} = bankSettings({
  letter: "A",
  name: "First bank",
  inducer: 70,
  exducer: 97,
  turbineArea: 5.9,
  turbineWheel: 86,
  highestSpeed: 118_000,
  opensAt: 1.9,
  openAt: 2.8,
});

export const bankBCount = setting("bankBCount", {
  label: "Second bank, turbochargers in parallel",
  symbol: "z_{tB}",
  kind: "count",
  unit: "",
  value: 1,
  span: [1, 4],
  step: 1,
});

export const {
  inducer: bankBInducer,
  exducer: bankBExducer,
  blades: bankBBlades,
  backsweep: bankBBacksweep,
  sizeDebit: bankBSizeDebit,
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
} = bankSettings({
  letter: "B",
  name: "Second bank",
  inducer: 66,
  exducer: 92,
  turbineArea: 7.5,
  turbineWheel: 84,
  highestSpeed: 115_000,
  opensAt: 3.2,
  openAt: 4.2,
});

export const tipSpeedLimit = setting("tipSpeedLimit", {
  label: "Tip speed of the compressor wheels allowed",
  symbol: "u_{lim}",
  kind: "velocity",
  unit: "m/s",
  value: 560,
  span: [300, 700],
  step: 5,
  note: "About 450 to 500 m/s for cast aluminium, 520 to 560 milled from a forging, 600 and more for titanium: common practice, no source. A wheel ages with every start.",
});

export const surgeMarginWanted = setting("surgeMarginWanted", {
  label: "Distance from surge wanted",
  symbol: "m_{s,lim}",
  kind: "fraction",
  unit: "%",
  value: 5,
  span: [0, 40],
  step: 1,
  note: "Of the flow. An engine's pulses call for 5 to 15 %: common practice, no source. With wheels taken from sizes the surge line itself is a guess.",
});

export const chokeMarginWanted = setting("chokeMarginWanted", {
  label: "Distance from choke wanted",
  symbol: "m_{k,lim}",
  kind: "fraction",
  unit: "%",
  value: 3,
  span: [0, 30],
  step: 1,
  note: "Of the flow at choke, where efficiency has already fallen: common practice, no source.",
});

export const slowExcessAir = setting("slowExcessAir", {
  label: "Excess air ratio at idle, at least",
  symbol: "\\lambda_0",
  kind: "ratio",
  unit: "",
  value: 1.4,
  span: [1.05, 4],
  step: 0.05,
  note: "What the air sheet asks for is chosen for heat, which comes with power; a slow engine need only not smoke, for which 1.3 to 1.5 does: common practice, no source. Set it to the air sheet's to keep that at all speeds.",
});

export const fullExcessAirFrom = setting("fullExcessAirFrom", {
  label: "Engine speed from which the air sheet's excess air is kept, over the promised one",
  symbol: "\\nu_\\lambda",
  kind: "fraction",
  unit: "%",
  value: 65,
  span: [20, 100],
  step: 1,
  note: "Straight line from idle to there. About the speed at which the torque reaches its plateau: common practice, no source.",
});

export const backPressureLimit = setting("backPressureLimit", {
  label: "Exhaust pressure before the turbines allowed",
  symbol: "p_{6,lim}",
  kind: "pressure",
  hint: "boost",
  unit: "bar",
  value: 5,
  span: [1.5, 10],
  step: 0.1,
  note: "What manifold, gaskets and exhaust valve springs hold; absolute.",
});

export const intercoolerMatchFlow = setting("intercoolerMatchFlow", {
  label: "Air flow at which the intercooler has its effectiveness",
  symbol: "\\dot m_{k1,e}",
  kind: "massFlow",
  unit: "kg/min",
  value: 66,
  span: [5, 200],
  step: 1,
  note: "The boost sheet asks for the effectiveness at the promised power; with less air it rises, with more it falls.",
});

export const aftercoolerMatchFlow = setting("aftercoolerMatchFlow", {
  label: "Air flow at which the aftercooler has its effectiveness",
  symbol: "\\dot m_{k2,e}",
  kind: "massFlow",
  unit: "kg/min",
  value: 66,
  span: [5, 200],
  step: 1,
});

export const coolerAirShare = setting("coolerAirShare", {
  label: "Coolers' resistance to heat that lies on the charge's side",
  symbol: "s_k",
  kind: "fraction",
  unit: "%",
  value: 70,
  span: [0, 100],
  step: 5,
  note: "70 to 90 % with water behind it, about half with air: common practice, no source.",
});

export const coolerArrangement = choice("coolerArrangement", {
  label: "Charge and cooling stream pass each other",
  options: { crossflow: "across each other", counterflow: "against each other", shellAndTube: "in shell and tubes" },
  value: "crossflow",
});

export const coolerSinkTimes = setting("coolerSinkTimes", {
  label: "Cooling stream's capacity for heat, over the charge's",
  symbol: "c_k",
  kind: "ratio",
  unit: "",
  value: 4,
  span: [1, 50],
  step: 0.5,
  scale: "log",
  note: "Flow times specific heat of one over that of the other, at the flow at which the cooler was rated; 3 to 6 with air, more with water: common practice, no source.",
});

export const blowerBypass = choice("blowerBypass", {
  label: "Blower's bypass",
  options: {
    automatic: "opens where the blower would hold the air back",
    closed: "stays closed",
    open: "stays open, the blower turns without load",
  },
  value: "automatic",
});

export const blowerBypassShare = setting("blowerBypassShare", {
  label: "Blower's delivery led back to its inlet",
  symbol: "s_{by}",
  kind: "fraction",
  unit: "%",
  value: 0,
  span: [0, 80],
  step: 1,
  note: "By a bypass that is set and left so. What comes back is warm, and has been paid for.",
});

export const blowerRotorDiameter = setting("blowerRotorDiameter", {
  label: "Blower rotors, diameter at the tips",
  symbol: "d_b",
  kind: "length",
  unit: "mm",
  value: 148,
  span: [40, 400],
  step: 1,
});

export const blowerTipSpeedLimit = setting("blowerTipSpeedLimit", {
  label: "Tip speed of the blower's rotors allowed",
  symbol: "u_{b,lim}",
  kind: "velocity",
  unit: "m/s",
  value: 75,
  span: [20, 160],
  step: 1,
  note: "About 60 to 80 m/s for lobes, up to 120 m/s for screws: common practice, no source.",
});

export const sprayFlow = setting("sprayFlow", {
  label: "Water sprayed",
  symbol: "\\dot m_w",
  kind: "massFlow",
  hint: "small",
  unit: "g/s",
  value: 10,
  span: [0, 100],
  step: 1,
});

export const sprayTemperature = setting("sprayTemperature", {
  label: "Temperature of that water",
  symbol: "T_{sp}",
  kind: "temperature",
  unit: "°C",
  value: 25,
  span: [1, 95],
  step: 1,
});

export const sprayEvaporated = setting("sprayEvaporated", {
  label: "Part of it that has time to evaporate",
  symbol: "e_w",
  kind: "fraction",
  unit: "%",
  value: 70,
  span: [0, 100],
  step: 5,
  note: "If the charge can hold it. Depends on drops and length of pipe; what stays liquid is drained, and neither cools nor burns here.",
});
