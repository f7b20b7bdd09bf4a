import { teethInMeshFactor } from "../../lib/drive";
import type { Count } from "../../lib/quantity";
import { type Amount, type Inner, inner, unbound, type WrittenOut, writtenOut } from "../inner";
import { accessoryPower, electricalLoad, hydraulicPower } from "./accessories";
import { beltRuns, frontBelts } from "./beltRuns";
import { electricalLoads, hydraulicLoads } from "./budgetTables";
import { electricalBudget, hydraulicBudget, hydraulicHeatRate, idleBatteryBalance, idleElectricalLoad } from "./budgets";
import { blowerBeltLength, blowerBeltPull, blowerBeltRating, blowerBeltSpeed, steeringFlowAtIdle } from "./cells";
import { blowerBelt, type FrontBelt, type LaidFrontBelt, membersOfRole, runOf } from "./frontBelts";
import { fuelPumpDriveRatio } from "./ratios";

type Laid = { readonly beltRuns: readonly LaidFrontBelt[] };
type Declared = { readonly frontBelts: readonly FrontBelt[] };

const ofBlowerBelt = (value: (belt: LaidFrontBelt) => number) => ({ beltRuns: all }: Laid) => value(blowerBelt(all));
const pitch = ofBlowerBelt(({ section }) => ("pitch" in section ? section.pitch : Number.NaN));
const fewestInMesh = ofBlowerBelt((belt) =>
  teethInMeshFactor(Math.min(...runOf(belt).pulleys.map(({ teethInMesh }) => teethInMesh ?? Number.POSITIVE_INFINITY)) as Count),
);

/** The drive ratio of the one pump: with more of them the letter stands for each in turn. */
const hydraulicRatio = ({ frontBelts: all }: Declared) => {
  const [first, ...others] = membersOfRole(all, "hydraulicPump");
  return first && others.length === 0 ? first.ratio : Number.NaN;
};

/** Teeth of the first fuel pump's pulley, or of the crank's on its belt; none where that belt has no teeth. */
const fuelPumpTeeth = (role: "crank" | "fuelPump") => ({ frontBelts: all }: Declared) => {
  const belt = all.find(({ members }) => members.some((member) => member.role === "fuelPump"));
  return belt?.members.find((member) => member.role === role && member.teeth > 0)?.teeth ?? Number.NaN;
};

const belts = { beltRuns };
const current = (value: number): Amount => ({ kind: "electricCurrent", value });
const share = (value: number): Amount => ({ kind: "fraction", value });
const length = (value: number): Amount => ({ kind: "length", value });

export const driveInner: readonly Inner[] = [
  inner([hydraulicPower, steeringFlowAtIdle], "i_h", "drive ratio of the hydraulic pump", "ratio", { frontBelts }, hydraulicRatio),
  unbound([accessoryPower], "P_k", "power that the table states for raw-water pump, fan, compressor or another unit"),
  inner([blowerBeltPull, blowerBeltSpeed], "p_b", "pitch of the blower belt", "length", belts, pitch),
  inner([fuelPumpDriveRatio], "z_{crank}", "teeth on the crank's pulley of that belt", "count", { frontBelts }, fuelPumpTeeth("crank")),
  inner([fuelPumpDriveRatio], "z_{pump}", "teeth on the fuel pump's pulley", "count", { frontBelts }, fuelPumpTeeth("fuelPump")),
  inner([blowerBeltRating], "k_z", "factor for the teeth in mesh", "ratio", belts, fewestInMesh),
  inner([blowerBeltRating], "b", "width of the belt", "length", belts, ofBlowerBelt(({ belt }) => belt.width)),
  inner([blowerBeltRating], "b_0", "width for which pull and mass are stated", "length", belts, ofBlowerBelt(({ belt }) => belt.baseWidth)),
  inner([blowerBeltRating], "F_a", "pull allowed at that width", "force", belts, ofBlowerBelt(({ belt }) => belt.allowablePull)),
  inner([blowerBeltRating], "m'", "mass of the belt for its length, at that width", "massPerLength", belts, ofBlowerBelt(({ belt }) => belt.baseMass)),
  inner([blowerBeltRating], "v", "speed of the belt at the promised speed", "velocity", belts, ofBlowerBelt(({ beltSpeed }) => beltSpeed.rated)),
];

export const driveWrittenOut: readonly WrittenOut[] = [
  writtenOut(electricalLoad, { electricalLoads }, (at) => at.electricalLoads.map((load) => [current(load.current), share(load.workShare)])),
  writtenOut(idleElectricalLoad, { electricalLoads }, (at) => at.electricalLoads.map((load) => [current(load.current), share(load.idleShare)])),
  writtenOut(idleBatteryBalance, { electricalBudget }, ({ electricalBudget: [idle] }) => [[current(idle!.output)], [current(-idle!.load)]]),
  writtenOut(hydraulicHeatRate, { hydraulicBudget, hydraulicLoads }, (at) => [
    [{ kind: "power", value: at.hydraulicBudget.find(({ speed }) => speed === "rated")!.shaftPower }],
    ...at.hydraulicLoads.map((load): readonly Amount[] => [
      { kind: "volumeFlow", hint: "coolant", value: -load.flow },
      { kind: "pressureDifference", hint: "boost", value: load.pressure },
      share(load.workShare),
    ]),
  ]),
  writtenOut(blowerBeltLength, belts, ({ beltRuns: all }) => {
    const { pulleys, spans } = runOf(blowerBelt(all));
    return [...spans.map((span) => [length(span.length)]), ...pulleys.map(({ wrap, pitchRadius }) => [length(wrap * pitchRadius)])];
  }),
];
