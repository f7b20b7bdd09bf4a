import { choiceColumn, type RowOf, table, textColumn } from "../../lib/graph";
import { column } from "../setting";
import { declaredBelts, declaredPulleys } from "./declaredDrive";

/** Letters by which the two tables know a belt. */
export const beltMarks = { A: "A", B: "B", C: "C", D: "D", E: "E", F: "F" } as const;
const shaftEnds = { forward: "forward", rearward: "rearward" } as const;
const rotations = { clockwise: "clockwise", counterclockwise: "counterclockwise", either: "either way" } as const;

const beltColumns = {
  mark: choiceColumn({ label: "Belt", options: beltMarks }),
  name: textColumn({ label: "Name", longest: 24 }),
  section: choiceColumn({
    label: "Section",
    options: { H8M: "8 mm curvilinear", H14M: "14 mm curvilinear", PK: "ribbed, 3.56 mm" },
  }),
  width: column({
    label: "Width",
    kind: "length",
    unit: "mm",
    span: [5, 200],
    step: 1,
    note: "Toothed belts of 8 mm are sold 20, 30, 50 and 85 mm wide, of 14 mm 40, 55, 85, 115 and 170 mm; ribbed ones by their ribs.",
  }),
  length: column({
    label: "Length, 0: nearest",
    kind: "length",
    unit: "mm",
    span: [0, 6000],
    step: 1,
    note: "Of the belt in hand; with 0 the one of whole teeth that comes nearest to the run is taken.",
  }),
  tension: column({ label: "Set tension", kind: "force", unit: "N", span: [20, 20000], step: 10 }),
  hold: choiceColumn({
    label: "Tensioner",
    options: { locked: "locked once set", sprung: "sprung" },
    note: "Locked centres keep the belt's stretch; a spring keeps the force of the pulley that takes up.",
  }),
  slide: column({ label: "Moves each way", kind: "length", unit: "mm", span: [1, 200], step: 1 }),
  allowablePull: column({
    label: "Pull at base width",
    kind: "force",
    unit: "N",
    span: [50, 20000],
    step: 10,
    note: "A maker's number, from the tables of the belt in hand; the values here are invented.",
  }),
  baseWidth: column({ label: "Base width", kind: "length", unit: "mm", span: [3, 120], step: 0.1 }),
  baseMass: column({
    label: "Mass at base width",
    kind: "massPerLength",
    hint: "small",
    unit: "g/m",
    span: [5, 3000],
    step: 5,
    note: "For each metre and millimetre of width 5 to 6 g at 8 mm pitch, 8 to 10 g at 14 mm: from memory.",
  }),
  friction: column({
    label: "Friction, ribs",
    kind: "ratio",
    unit: "",
    span: [0.1, 0.8],
    step: 0.01,
    note: "Rubber on steel, dry, 0.25 to 0.4: from memory. Toothed belts do not read it.",
  }),
  speedLimit: column({
    label: "Speed allowed",
    kind: "velocity",
    unit: "m/s",
    span: [5, 100],
    step: 1,
    note: "Ask the makers of belt and pulleys: cast iron stands less than steel or aluminium.",
  }),
} as const;

export type BeltRow = RowOf<typeof beltColumns>;

export const belts = table("belts", {
  label: "Belts",
  note: "A row for each belt at the front of the engine, each in a plane of its own.",
  columns: beltColumns,
  brief: ["mark", "name", "section", "width", "tension"],
  rows: [1, 6],
  value: declaredBelts,
});

const pulleyColumns = {
  belt: choiceColumn({ label: "Belt", options: beltMarks }),
  unit: textColumn({ label: "Unit", longest: 24 }),
  role: choiceColumn({
    label: "What it is",
    options: {
      crank: "crank",
      blower: "blower",
      hydraulicPump: "hydraulic pump",
      fuelPump: "high-pressure fuel pump",
      alternator: "alternator",
      coolantPump: "coolant pump",
      rawWaterPump: "raw-water pump",
      fan: "fan",
      compressor: "air or cooling compressor",
      idler: "idler",
      other: "something else",
    },
  }),
  contact: choiceColumn({ label: "Belt face", options: { toothed: "teeth or ribs", back: "back" } }),
  teeth: column({
    label: "Teeth",
    kind: "count",
    unit: "",
    span: [0, 200],
    step: 1,
    note: "0 for a pulley without teeth, and for blower, raw-water pump and the crank on their belts, which have their own lines above.",
  }),
  diameter: column({ label: "Diameter, no teeth", kind: "length", unit: "mm", span: [20, 500], step: 1 }),
  x: column({ label: "To the right", kind: "length", unit: "mm", span: [-1200, 1200], step: 1 }),
  y: column({ label: "Above", kind: "length", unit: "mm", span: [-800, 1600], step: 1 }),
  mount: choiceColumn({
    label: "Mounted",
    options: { fixed: "fixed", sliding: "on a slide", pivoting: "on an arm" },
    note: "One pulley of a belt may take it up. It slides toward its guide point, or its arm turns about it.",
  }),
  guideX: column({ label: "Guide to right", kind: "length", unit: "mm", span: [-1200, 1200], step: 1 }),
  guideY: column({ label: "Guide above", kind: "length", unit: "mm", span: [-800, 1600], step: 1 }),
  shaftEnd: choiceColumn({ label: "Shaft end", options: shaftEnds }),
  mustTurn: choiceColumn({ label: "Must turn", options: rotations, note: "Seen on its own shaft end." }),
  lowestSpeed: column({ label: "Lowest speed", kind: "rotationalSpeed", unit: "rpm", span: [0, 20000], step: 50 }),
  highestSpeed: column({
    label: "Highest speed",
    kind: "rotationalSpeed",
    unit: "rpm",
    span: [0, 30000],
    step: 50,
    note: "That it stands for long; 0 where another sheet states it, or nobody.",
  }),
  burstSpeed: column({
    label: "Burst speed",
    kind: "rotationalSpeed",
    unit: "rpm",
    span: [0, 40000],
    step: 50,
    note: "From its maker; 0 where none is stated.",
  }),
  power: column({
    label: "Power",
    kind: "power",
    unit: "kW",
    span: [0, 80],
    step: 0.1,
    note: "At its shaft at the promised speed, for units that no line or sheet gives a load.",
  }),
} as const;

export type PulleyRow = RowOf<typeof pulleyColumns>;

/** Whether a pulley's teeth are stated by a line of the sheet: those of blower, raw-water pump and the crank of either. */
function hasOwnTeeth(pulley: PulleyRow, rows: readonly PulleyRow[]): boolean {
  const own = ({ role }: PulleyRow) => role === "blower" || role === "rawWaterPump";
  return own(pulley) || (pulley.role === "crank" && rows.some((each) => each.belt === pulley.belt && own(each)));
}

export const frontPulleys = table("frontPulleys", {
  label: "Pulleys, belt by belt",
  note: "Seen from the front of the engine and clockwise round each belt, its crank pulley first, whichever way the crank turns. Places are measured from the crank.",
  columns: pulleyColumns,
  brief: ["belt", "unit", "teeth", "diameter", "x", "y"],
  unread: (row, name, rows) => name === "diameter" && (row.teeth > 0 || hasOwnTeeth(row, rows)),
  rows: [2, 40],
  value: declaredPulleys,
});
