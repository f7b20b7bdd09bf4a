import { choice } from "../../lib/graph";
import { setting } from "../setting";

/** A bank's letter, what it is called, and the sizes that a new build has. */
interface BankDeclared {
  readonly letter: "A" | "B";
  readonly name: string;
  /** [mm] */
  readonly inducer: number;
  /** [mm] */
  readonly exducer: number;
  /** of one turbine's entry [cm²] */
  readonly turbineArea: number;
  /** [mm] */
  readonly turbineWheel: number;
  /** [rpm] */
  readonly highestSpeed: number;
  /** [bar] */
  readonly opensAt: number;
  /** [bar] */
  readonly openAt: number;
}

/** The inputs of one bank of turbochargers. */
export function bankSettings(bank: BankDeclared) {
  const { letter, name } = bank;
  const key = (what: string) => `bank${letter}${what}`;
  return {
    inducer: setting(key("Inducer"), {
      label: `${name}, inducer of the compressor wheel`,
      symbol: `d_{1${letter}}`,
      kind: "length",
      unit: "mm",
      value: bank.inducer,
      span: [25, 140],
      step: 0.5,
      note: "Tip diameter of the blades where the air enters. It sets the flow at which the wheel chokes.",
    }),
    exducer: setting(key("Exducer"), {
      label: `${name}, exducer of the compressor wheel`,
      symbol: `d_{2${letter}}`,
      kind: "length",
      unit: "mm",
      value: bank.exducer,
      span: [35, 200],
      step: 0.5,
      note: "Diameter of the blades where the air leaves. With the wheel's speed it sets the pressure.",
    }),
    blades: setting(key("Blades"), {
      label: `${name}, blades at the tip`,
      symbol: `Z_${letter}`,
      kind: "count",
      unit: "",
      value: 10,
      span: [5, 24],
      step: 1,
      note: "Full blades, and half of the splitters.",
    }),
    backsweep: setting(key("Backsweep"), {
      label: `${name}, backsweep at the tip`,
      symbol: `\\beta_${letter}`,
      kind: "angle",
      unit: "deg",
      value: 36,
      span: [0, 60],
      step: 1,
      note: "From radial; 30 to 40° is usual, and more of it widens the field: common practice, no source.",
    }),
    sizeDebit: setting(key("SizeDebit"), {
      label: `${name}, efficiency lost to size and clearance`,
      symbol: `\\delta_${letter}`,
      kind: "fraction",
      unit: "%",
      value: 5,
      span: [0, 18],
      step: 0.5,
      note: "Against a good industrial stage; 4 to 8 % for wheels of this size: common practice, no source. Fit it to a map point if there is one.",
    }),
    turbineArea: setting(key("TurbineArea"), {
      label: `${name}, effective area of one turbine entry`,
      symbol: `A_{${letter}}`,
      kind: "area",
      unit: "cm²",
      value: bank.turbineArea,
      span: [1, 60],
      step: 0.05,
      note: "As a flow test of the housing with its wheel gives it. It is smaller than the housing's throat.",
    }),
    entries: setting(key("Entries"), {
      label: `${name}, entries of one turbine`,
      symbol: `z_{e${letter}}`,
      kind: "count",
      unit: "",
      value: 2,
      span: [1, 2],
      step: 1,
      note: "Side by side, fed alike: two keep the pulses of six cylinders apart.",
    }),
    turbineWheel: setting(key("TurbineWheel"), {
      label: `${name}, turbine wheel at its tip`,
      symbol: `d_{t${letter}}`,
      kind: "length",
      unit: "mm",
      value: bank.turbineWheel,
      span: [30, 200],
      step: 0.5,
    }),
    turbinePeak: setting(key("TurbinePeak"), {
      label: `${name}, turbine efficiency at its best`,
      symbol: `\\eta_{${letter}}`,
      kind: "fraction",
      unit: "%",
      value: 72,
      span: [40, 85],
      step: 0.5,
      note: "Without the bearings, which have their own efficiency on the boost sheet; 68 to 75 %: common practice, no source.",
    }),
    speedRatio: setting(key("SpeedRatio"), {
      label: `${name}, blade-speed ratio at the best`,
      symbol: `\\nu_${letter}`,
      kind: "ratio",
      unit: "",
      value: 0.68,
      span: [0.5, 0.85],
      step: 0.01,
      note: "Tip speed over the velocity that the whole drop of enthalpy would give; 0.65 to 0.70 is usual for radial turbines.",
    }),
    wastegate: choice(key("Wastegate"), {
      label: `${name}, wastegate`,
      options: { none: "none", sprung: "held by a spring", fixed: "set, and left so" },
      value: "sprung",
    }),
    opensAt: setting(key("OpensAt"), {
      label: `${name}, wastegate begins to open`,
      symbol: `p_{o${letter}}`,
      kind: "gaugePressure",
      hint: "boost",
      unit: "bar",
      value: bank.opensAt,
      span: [0.2, 7],
      step: 0.05,
      note: "Pressure behind the bank's compressors, against the air outside.",
    }),
    openAt: setting(key("OpenAt"), {
      label: `${name}, wastegate fully open`,
      symbol: `p_{w${letter}}`,
      kind: "gaugePressure",
      hint: "boost",
      unit: "bar",
      value: bank.openAt,
      span: [0.3, 9],
      step: 0.05,
    }),
    pastShare: setting(key("PastShare"), {
      label: `${name}, exhaust past the turbines with it fully open or as it is set`,
      symbol: `g_${letter}`,
      kind: "fraction",
      unit: "%",
      value: 40,
      span: [0, 80],
      step: 1,
    }),
    speedLimit: setting(key("SpeedLimit"), {
      label: `${name}, wheel speed allowed`,
      symbol: `n_{${letter},lim}`,
      kind: "rotationalSpeed",
      unit: "rpm",
      value: bank.highestSpeed,
      span: [20000, 300000],
      step: 500,
      note: "The maker's figure. A wheel that bursts goes through its housing.",
    }),
  } as const;
}
