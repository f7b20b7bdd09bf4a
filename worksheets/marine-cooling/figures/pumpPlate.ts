import { type PumpSystem, pumpOnSystem, pumpPressureRise, systemPressure } from "../../../lib/cooling";
import type { ValuesOf } from "../../../lib/graph";
import type { Fraction, RotationalSpeed, VolumeFlow } from "../../../lib/quantity";
import { share } from "../../drawing";
import { figure } from "../../sheet";
import { rawWaterNeeded } from "../cells";
import { hydraulicsOf } from "../hydraulics";
import { strainerBlocked } from "../inputs";
import { rawWaterState } from "../rawWater";
import { type Crossing, drawPump, type LineCurve, type LinePoint } from "./pumpDrawing";

const from = { rawWaterState, strainerBlocked, rawWaterNeeded };
type At = ValuesOf<typeof from>;

interface NamedCrossing extends Crossing {
  /** The pump's speed [rev/s]. */
  readonly speed: number;
}

/** Blockage at which the second line is drawn. */
const half = 0.5 as Fraction;

/** The line with its strainer blocked as told. */
const systemWith = ({ rawWaterState }: At, blocked: Fraction): PumpSystem =>
  hydraulicsOf({ ...rawWaterState.stated, strainerBlocked: blocked }).system;

/** Where pump and line agree: as it is, with a clean and a half-blocked strainer, and at idle. */
export function crossingsOf(at: At): readonly NamedCrossing[] {
  const { pump, rated, idle } = at.rawWaterState;
  const strained = (name: string, blocked: Fraction): NamedCrossing => {
    const { speed, volumeFlow, pressureRise } = pumpOnSystem(pump, rated.speed, systemWith(at, blocked));
    return { name, speed, flow: volumeFlow, pressure: pressureRise, main: false };
  };
  return [
    { name: "as it is", speed: rated.speed, flow: rated.volumeFlow, pressure: rated.pressureRise, main: true },
    strained("clean", 0 as Fraction),
    strained("half blocked", half),
    ...("refused" in idle
      ? []
      : [{ name: "at idle", speed: idle.speed, flow: idle.volumeFlow, pressure: idle.pressureRise, main: false }]),
  ];
}

/** Numbers from nothing to a whole, in equal steps. */
const steps = (whole: number, count: number) => Array.from({ length: count + 1 }, (_, i) => (whole * i) / count);

/** What a line asks for, up to a flow. */
function lineCurve(name: string, look: LineCurve["look"], system: PumpSystem, most: number): LineCurve {
  const points = steps(most, 20).map((flow) => ({ flow, pressure: systemPressure(system, flow as VolumeFlow) }));
  return { name, look, points };
}

/** What the pump makes at a speed, from its open flow up to a pressure. */
function pumpCurve({ pump }: At["rawWaterState"], speed: RotationalSpeed, most: number): readonly LinePoint[] {
  const rise = (flow: number): number => pumpPressureRise(pump, speed, flow as VolumeFlow);
  const open = flowAt(rise, 0);
  const least = rise(0) <= most ? 0 : flowAt(rise, most);
  return steps(open - least, 10).map((part) => {
    const flow = Math.max(0, open - part); // the last step may round to a hair below nothing
    return { flow, pressure: Math.max(0, rise(flow)) };
  });
}

/** The flow at which a falling curve comes down to a pressure. */
function flowAt(rise: (flow: number) => number, pressure: number): number {
  let [low, high] = [0, 1e-4];
  while (rise(high) > pressure) high *= 2;
  for (let i = 0; i < 40; i += 1) {
    const middle = (low + high) / 2;
    if (rise(middle) > pressure) low = middle;
    else high = middle;
  }
  return (low + high) / 2;
}

export const pumpPlate = figure({
  key: "pumpPlate",
  title: "Raw-water pump and line",
  from,
  describe: (at, units) => {
    const [now, , blocked] = crossingsOf(at);
    const flow = (value: number) => units.text("volumeFlow", value, "coolant");
    const left = now!.flow / at.rawWaterNeeded - 1;
    return [
      `At ${units.text("rotationalSpeed", now!.speed)} pump and line agree at ${flow(now!.flow)} and ${units.text("pressureDifference", now!.pressure)}: ${share(units, Math.abs(left))} ${left >= 0 ? "more" : "less"} than the discharge limit asks for.`,
      `With the strainer half blocked it is ${flow(blocked!.flow)}, ${share(units, 1 - blocked!.flow / now!.flow)} less.`,
    ].join(" ");
  },
  draw: (at, { width, units }) => {
    const crossings = crossingsOf(at);
    const { rated, idle, system } = at.rawWaterState;
    const most = 1.7 * Math.max(...crossings.map(({ pressure }) => pressure));
    const pump = pumpCurve(at.rawWaterState, rated.speed, most);
    const far = 1.1 * Math.max(pump[0]!.flow, at.rawWaterNeeded);
    const turning = (speed: number) => `pump at ${units.text("rotationalSpeed", speed)}`;
    const idling =
      "refused" in idle
        ? []
        : [
            {
              name: turning(idle.speed),
              look: "outline faint" as const,
              points: pumpCurve(at.rawWaterState, idle.speed, most),
            },
          ];
    return drawPump({
      pumps: [{ name: turning(rated.speed), look: "line-1", points: pump }, ...idling],
      lines: [
        lineCurve("clean strainer", "outline faint", systemWith(at, 0 as Fraction), far),
        lineCurve(`${share(units, at.strainerBlocked)} blocked`, "outline", system, far),
        lineCurve("half blocked", "line-2", systemWith(at, half), far),
      ],
      crossings,
      needed: at.rawWaterNeeded,
      width,
      units,
    });
  },
  table: (at, units) => ({
    columns: [
      "Strainer",
      ["Pump speed", units.unit("rotationalSpeed")],
      ["Flow", units.unit("volumeFlow", "coolant")],
      ["Pressure rise", units.unit("pressureDifference")],
    ],
    rows: crossingsOf(at).map(({ name, speed, flow, pressure }) => [
      name,
      units.number("rotationalSpeed", speed),
      units.number("volumeFlow", flow, "coolant"),
      units.number("pressureDifference", pressure),
    ]),
  }),
});
