import { type Quantity, quantity } from "../../lib/quantity";

const mm = (value: number) => quantity("length", value, "mm");
const rpm = (value: number) => quantity("rotationalSpeed", value, "rpm");

/** A belt as the trade would write it down: mm, N, g/m, m/s. */
function belt<Mark extends string, Section extends string, Hold extends string>(stated: {
  readonly mark: Mark;
  readonly name: string;
  readonly section: Section;
  readonly width: number;
  readonly tension: number;
  readonly hold: Hold;
  readonly slide: number;
  readonly allowed: readonly [pull: number, width: number, mass: number];
  readonly speedLimit: number;
}) {
  const { mark, name, section, width, tension, hold, slide, allowed, speedLimit } = stated;
  return {
    mark,
    name,
    section,
    width: mm(width),
    length: mm(0),
    tension: quantity("force", tension, "N"),
    hold,
    slide: mm(slide),
    allowablePull: quantity("force", allowed[0], "N"),
    baseWidth: mm(allowed[1]),
    baseMass: quantity("massPerLength", allowed[2], "g/m"),
    friction: 0.35 as Quantity<"ratio">,
    speedLimit: quantity("velocity", speedLimit, "m/s"),
  };
}

interface Stated {
  readonly at?: readonly [x: number, y: number];
  readonly teeth?: number;
  readonly diameter?: number;
  readonly guide?: readonly [x: number, y: number];
  /** lowest, highest and burst speed */
  readonly window?: readonly [lowest: number, highest: number, burst: number];
  readonly power?: number;
}

interface Facing {
  readonly contact: "toothed" | "back";
  readonly mount: "fixed" | "sliding" | "pivoting";
  readonly mustTurn: "clockwise" | "counterclockwise" | "either";
}

/** A pulley as the trade would write it down: mm, rpm, kW. */
function pulley<Mark extends string, Role extends string>(
  belt: Mark,
  unit: string,
  role: Role,
  { at = [0, 0], teeth = 0, diameter = 60, guide = [0, 0], window = [0, 0, 0], power = 0 }: Stated,
  { contact = "toothed", mount = "fixed", mustTurn = "either" }: Partial<Facing> = {},
) {
  return {
    belt,
    unit,
    role,
    contact,
    teeth: quantity("count", teeth),
    diameter: mm(diameter),
    x: mm(at[0]),
    y: mm(at[1]),
    mount,
    guideX: mm(guide[0]),
    guideY: mm(guide[1]),
    shaftEnd: "forward" as const,
    mustTurn,
    lowestSpeed: rpm(window[0]),
    highestSpeed: rpm(window[1]),
    burstSpeed: rpm(window[2]),
    power: quantity("power", power, "kW"),
  };
}

/** Belts of a new build; the numbers are invented. */
export const declaredBelts = [
  belt({
    mark: "A",
    name: "Blower belt",
    section: "H14M",
    width: 85,
    tension: 3100,
    hold: "locked",
    slide: 40,
    allowed: [1900, 40, 360],
    speedLimit: 45,
  }),
  belt({
    mark: "B",
    name: "Accessory belt",
    section: "H8M",
    width: 50,
    tension: 1000,
    hold: "locked",
    slide: 40,
    allowed: [900, 20, 110],
    speedLimit: 30,
  }),
  belt({
    mark: "C",
    name: "Fan belt",
    section: "PK",
    width: 28.5,
    tension: 520,
    hold: "sprung",
    slide: 40,
    allowed: [1500, 28.5, 190],
    speedLimit: 45,
  }),
];

/** Pulleys of a new build; the numbers are invented. */
export const declaredPulleys = [
  pulley("A", "Crank", "crank", {}),
  pulley(
    "A",
    "Idler",
    "idler",
    { diameter: 120, at: [-106, 240], guide: [0, 240], window: [0, 9000, 0] },
    { contact: "back", mount: "sliding" },
  ),
  pulley("A", "Blower", "blower", { at: [0, 437], window: [0, 0, 9500] }),
  pulley("B", "Crank", "crank", { teeth: 50 }),
  pulley(
    "B",
    "Hydraulic pump",
    "hydraulicPump",
    { teeth: 54, at: [-200, 235], window: [650, 3600, 0] },
    { mustTurn: "clockwise" },
  ),
  pulley("B", "Alternator", "alternator", { teeth: 26, at: [-95, 440], window: [1400, 12000, 18000] }),
  pulley(
    "B",
    "Tension idler",
    "idler",
    { diameter: 100, at: [40, 265], guide: [150, 400], window: [0, 9000, 0] },
    { contact: "back", mount: "pivoting" },
  ),
  pulley(
    "B",
    "Fuel pump",
    "fuelPump",
    { teeth: 60, at: [205, 262], window: [500, 3200, 0] },
    { mustTurn: "clockwise" },
  ),
  pulley("C", "Crank", "crank", { diameter: 180 }),
  pulley(
    "C",
    "Spring tensioner",
    "idler",
    { diameter: 80, at: [-75, 170], guide: [-170, 120], window: [0, 10000, 0] },
    { contact: "back", mount: "pivoting" },
  ),
  pulley("C", "Fan", "fan", { diameter: 190, at: [-20, 380], window: [0, 4200, 5600], power: 6.5 }),
  pulley(
    "C",
    "Coolant pump",
    "coolantPump",
    { diameter: 150, at: [150, 190], window: [700, 5200, 0], power: 3.2 },
    { mustTurn: "clockwise" },
  ),
];
