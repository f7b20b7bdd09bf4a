import { boilingMargin, type ClosedCircuit } from "../../../lib/cooling";
import { glycolCoolant } from "../../../lib/fluid";
import type { ValuesOf } from "../../../lib/graph";
import type { Temperature } from "../../../lib/quantity";
import { ambientPressure } from "../../brief/cells";
import { narrow, share } from "../../drawing";
import { type FigureUnits, figure } from "../../sheet";
import { marineCircuit } from "../circuit";
import { circuitSetup } from "../heats";
import { capPressure, jacketTemperature } from "../inputs";
import { drawLoops, type Loop, type LoopMark } from "./loopDrawing";
import { notDrawn } from "./notDrawn";

const from = { marineCircuit, circuitSetup, jacketTemperature, ambientPressure, capPressure };
type At = ValuesOf<typeof from>;

interface Words {
  readonly name: string;
  /** What warms the circuit, and what cools it. */
  readonly source: string;
  readonly cooler: string;
}

/** A closed circuit unrolled: warmed as a whole, then led through its cooler and past it. */
export function loopOf(
  { name, source, cooler }: Words,
  { hot, exchangerOutlet, mixed, opening, heat }: ClosedCircuit,
  marks: readonly LoopMark[],
  units: FigureUnits,
): Loop {
  const parted = { group: 1, inlet: hot, trunkInlet: hot, trunkOutlet: mixed };
  const warmed = { group: 0, share: 1, inlet: mixed, outlet: hot, trunkInlet: mixed, trunkOutlet: hot };
  const part = (of: number) => [`${share(units, of)} of the flow`];
  return {
    name,
    marks,
    elements: [
      { ...warmed, name: source, remarks: [`takes up ${units.text("power", heat, "heat")}`] },
      ...(opening > 0
        ? [{ ...parted, name: cooler, remarks: part(opening), share: opening, outlet: exchangerOutlet }]
        : []),
      ...(opening < 1
        ? [{ ...parted, name: "Bypass", remarks: part(1 - opening), share: 1 - opening, outlet: hot }]
        : []),
    ],
  };
}

/** Temperature at which the jacket water boils under its cap [K]. */
const boilsAt = ({ circuitSetup, ambientPressure, capPressure }: At, temperature: Temperature): number =>
  temperature +
  boilingMargin({ coolant: glycolCoolant(circuitSetup.glycolShare), ambientPressure, capPressure, temperature });

function loopsOf(at: At, units: FigureUnits): readonly Loop[] {
  const { marineCircuit, circuitSetup, jacketTemperature } = at;
  const { jacket, keel, loop } = marineCircuit;
  const { thermostatOpens, thermostatSpan, loopTemperature } = circuitSetup;
  return [
    ...(jacket
      ? [
          loopOf(
            { name: "Jacket circuit", source: "Engine", cooler: keel ? "Keel cooler" : "Jacket exchanger" },
            jacket,
            [
              { name: "opens", at: thermostatOpens },
              { name: "fully open", at: thermostatOpens + thermostatSpan },
              { name: "limit", at: jacketTemperature },
              { name: "boils", at: boilsAt(at, jacket.hot) },
            ],
            units,
          ),
        ]
      : []),
    ...(loop
      ? [
          loopOf(
            { name: "Charge-water loop", source: "Charge coolers", cooler: "Charge-water cooler" },
            loop,
            [{ name: "held", at: loopTemperature }],
            units,
          ),
        ]
      : []),
  ];
}

/** A mark far off would press everything else together; the words below the drawing tell it. */
function withoutFarMarks(loop: Loop): Loop {
  const near = loop.marks.filter(({ name }) => name !== "boils");
  const temperatures = [
    ...near.map((mark) => mark.at),
    ...loop.elements.flatMap(({ inlet, outlet }) => [inlet, outlet]),
  ];
  const [low, high] = [Math.min(...temperatures), Math.max(...temperatures)];
  return { ...loop, marks: loop.marks.filter((mark) => near.includes(mark) || mark.at - low < 1.8 * (high - low)) };
}

const none =
  "Neither a jacket exchanger nor a keel cooler nor a charge-water cooler stands in this boat's line; add a row for one.";

export const closedCircuits = figure({
  key: "closedCircuits",
  title: "The closed circuits, once around",
  from,
  describe: (at, units) => {
    const { marineCircuit, jacketTemperature } = at;
    const { jacket, loop } = marineCircuit;
    const text = (temperature: number) => units.text("temperature", temperature);
    const sentences = [
      ...(jacket
        ? [
            `The jacket water leaves the engine at ${text(jacket.hot)}, where ${text(jacketTemperature)} is allowed, and comes back at ${text(jacket.mixed)}; the thermostat leads ${share(units, jacket.opening)} of it through the cooler. Under its cap it boils at ${text(boilsAt(at, jacket.hot))}.`,
          ]
        : []),
      ...(loop
        ? [
            `The charge-water loop comes to the charge coolers at ${text(loop.mixed)} and leaves them at ${text(loop.hot)}.`,
          ]
        : []),
    ];
    return sentences.length > 0 ? sentences.join(" ") : none;
  },
  draw: (at, { width, units }) => {
    const stacked = width < narrow;
    const loops = loopsOf(at, units).map(withoutFarMarks);
    return loops.length > 0 ? drawLoops({ loops, units, width, stacked }) : notDrawn(none, width);
  },
  table: (at, units) => ({
    columns: [
      "Circuit",
      "Element",
      ["Share of the flow", units.unit("fraction")],
      ["In", units.unit("temperature")],
      ["Out", units.unit("temperature")],
    ],
    rows: loopsOf(at, units).flatMap(({ name, elements }) =>
      elements.map((element) => [
        name,
        element.name,
        units.number("fraction", element.share),
        units.number("temperature", element.inlet),
        units.number("temperature", element.outlet),
      ]),
    ),
  }),
});
