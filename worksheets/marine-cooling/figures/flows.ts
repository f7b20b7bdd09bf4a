/** Where a part of the fuel's power ends: at the propeller, in the sea water, in the engine room, or elsewhere. */
export type Goal = "work" | "sea" | "room" | "away";

/** A part of the fuel's power [W]; below zero, it comes in. */
export interface Flow {
  readonly key: string;
  readonly name: string;
  readonly power: number;
  readonly goal: Goal;
}

/** Short names of the parts, in the order in which they leave the stream; the shaft is what stays. */
const names: Readonly<Record<string, string>> = {
  exhaustVapour: "Exhaust moisture",
  exhaustGas: "Exhaust gas",
  radiation: "Radiation",
  blowerLoss: "Blower gears",
  accessories: "Accessories",
  fuelPump: "Fuel pump",
  fuelReturn: "Returning fuel",
  aftercooler: "Aftercooler",
  intercooler: "Intercooler",
  oil: "Engine oil",
  jacket: "Jacket water",
  gear: "Gear oil",
  shaft: "Shaft",
};
const order = Object.keys(names);

/** What goes to the sea stands together, so that it can be gathered. */
const ranks: Readonly<Record<Goal, number>> = { away: 0, room: 1, sea: 2, work: 3 };

/** Lines of a heat balance as flows, in the order in which they leave the stream. */
export function flowsOf(lines: readonly Flow[]): readonly Flow[] {
  const place = ({ key, goal }: Flow) => ranks[goal] * 100 + (order.includes(key) ? order.indexOf(key) : 99);
  return [...lines]
    .sort((a, b) => place(a) - place(b))
    .map(({ key, name, power, goal }) => ({ key, name: names[key] ?? name, power, goal }));
}

/** Power of all flows to a goal [W]. */
export function powerTo(flows: readonly Flow[], goal: Goal): number {
  return flows.reduce((sum, flow) => sum + (flow.goal === goal ? flow.power : 0), 0);
}
