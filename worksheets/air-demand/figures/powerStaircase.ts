import type { Power } from "../../../lib/quantity";
import { ratedPower } from "../../brief/cells";
import { blowerShaftPower } from "../../boost/cells";
import { axisRoom, narrow, plate, share, widest } from "../../drawing";
import { accessoryPower } from "../../drive-speeds/accessories";
import { figure } from "../../sheet";
import {
  airFlow,
  flowPerMeter,
  frictionPower,
  fuelPumpPower,
  idleAirFlow,
  indicatedPower,
  pumpingPower,
  thumbAirFlow,
} from "../cells";
import { meterCapacity, meterCount, meterLeast } from "../inputs";
import { airBand, airBandHeight } from "./airBand";
import { type PowerStep, powerBand } from "./powerBand";

const from = {
  ratedPower,
  frictionPower,
  accessoryPower,
  fuelPumpPower,
  blowerShaftPower,
  pumpingPower,
  indicatedPower,
  airFlow,
  flowPerMeter,
  idleAirFlow,
  thumbAirFlow,
  meterCount,
  meterCapacity,
  meterLeast,
};

/** From the promised power to that of the cylinders, each step with where it begins and ends. */
export function powerSteps(at: Readonly<Record<keyof typeof from, number>>): readonly PowerStep[] {
  const parts: readonly (readonly [name: string, power: number])[] = [
    ["Friction", at.frictionPower],
    ["Accessories", at.accessoryPower],
    ["Fuel pump", at.fuelPumpPower],
    ["Blower", at.blowerShaftPower],
    [at.pumpingPower < 0 ? "Breathing gives back" : "Breathing", at.pumpingPower],
  ];
  let reached: number = at.ratedPower;
  const steps = parts.map(([name, power]): PowerStep => {
    const begin = reached;
    reached += power;
    return { name, power: power as Power, begin, end: reached, type: "step" };
  });
  return [
    { name: "Promised", power: at.ratedPower as Power, begin: 0, end: at.ratedPower, type: "sum" },
    ...steps,
    { name: "In the cylinders", power: at.indicatedPower as Power, begin: 0, end: at.indicatedPower, type: "sum" },
  ];
}

export const powerStaircase = figure({
  key: "powerStaircase",
  title: "From the promised power to fuel and air",
  from,
  describe: (at, units) => {
    const holds = at.meterCount * at.meterCapacity;
    const taken = units.text("power", at.indicatedPower - at.ratedPower);
    const room = holds - at.airFlow;
    return [
      `To give ${units.text("power", at.ratedPower)} at the flywheel the cylinders must give ${units.text("power", at.indicatedPower)}: ${taken} goes into the engine itself.`,
      `The fire needs ${units.text("massFlow", at.airFlow)} of air; the meters read up to ${units.text("massFlow", holds)}, ${room >= 0 ? `so ${share(units, room / holds)} of their span is left` : `${units.text("massFlow", -room)} too little`}.`,
    ].join(" ");
  },
  draw: (at, { width, units }) => {
    const steps = powerSteps(at);
    const stacked = width < narrow;
    const values = steps.map(({ power }) => units.text("power", power));
    const shares = steps.map(({ power }) => share(units, power / at.indicatedPower));
    const holds = at.meterCount * at.meterCapacity;
    const flows = [at.airFlow, holds].map((flow) => units.text("massFlow", flow));
    const valueRoom = widest([...values, ...flows], { bold: true }) + 14;
    const shareRoom = widest([...shares, share(units, at.airFlow / holds)]) + 12;
    const frame = {
      units,
      stacked,
      width,
      left: stacked ? 8 : widest([...steps.map(({ name }) => name), "Meters at full span"]) + 16,
      right: stacked ? width - 14 : width - valueRoom - shareRoom,
      valueRight: width - shareRoom,
      pitch: stacked ? 44 : 30,
    };
    const powerTop = 32;
    const powerHeight = steps.length * frame.pitch + axisRoom;
    const airTop = powerTop + powerHeight + 46;
    const air = {
      needed: at.airFlow,
      perMeter: at.flowPerMeter,
      meters: at.meterCount,
      capacity: at.meterCapacity,
      marks: [
        { name: "idle", flow: at.idleAirFlow },
        { name: "rule of thumb", flow: at.thumbAirFlow },
        { name: "least read well", flow: at.meterCount * at.meterLeast },
      ],
      row: steps.length,
    };
    const { svg, ground } = plate(width, airTop + airBandHeight(frame));
    powerBand(ground, steps, { ...frame, top: powerTop });
    airBand(ground, air, { ...frame, top: airTop });
    return svg;
  },
  table: (at, units) => ({
    columns: ["What", "Value", "Unit", ["Share", units.unit("fraction")]],
    rows: [
      ...powerSteps(at).map(({ name, power }) => [
        name,
        units.number("power", power),
        units.unit("power"),
        units.number("fraction", power / at.indicatedPower),
      ]),
      ...(
        [
          ["Air needed", at.airFlow],
          ["Meters at full span", at.meterCount * at.meterCapacity],
          ["Through each meter", at.flowPerMeter],
          ["Air at idle", at.idleAirFlow],
          ["Air by the rule of thumb", at.thumbAirFlow],
          ["Least that the meters read well", at.meterCount * at.meterLeast],
        ] as const
      ).map(([name, flow]) => [
        name,
        units.number("massFlow", flow),
        units.unit("massFlow"),
        units.number("fraction", flow / (at.meterCount * at.meterCapacity)),
      ]),
    ],
  }),
});
