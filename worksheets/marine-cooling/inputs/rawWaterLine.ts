import { choice, choiceColumn, table } from "../../../lib/graph";
import type { Area, Fraction, PressureDifference } from "../../../lib/quantity";
import { column } from "../../setting";

const elements = {
  strainer: "strainer",
  pump: "pump",
  fuelCooler: "fuel cooler",
  gearCooler: "gear cooler",
  aftercooler: "aftercooler",
  intercooler: "intercooler",
  chargeLoop: "cooler of the charge-water loop",
  oilCooler: "oil cooler",
  jacketExchanger: "jacket",
  pipe: "pipe, bend",
} as const;

export type ElementKey = keyof typeof elements;

export const branchFlow = choice("branchFlow", {
  label: "Flow through branches beside each other",
  options: { found: "found from losses", set: "set, row by row" },
  value: "found",
});

export const rawWaterLine = table("rawWaterLine", {
  label: "Raw-water line, in the order in which the water meets it",
  note: "From the sea-cock to the exhaust. What lies before the pump is on its suction side. Elements beside each other share the flow; a bypass is a pipe beside one.",
  columns: {
    element: choiceColumn({ label: "Element", options: elements }),
    lies: choiceColumn({ label: "Lies", options: { behind: "behind", beside: "beside" }, note: "Behind or beside the row above it." }),
    share: column({
      label: "Valve open, or share",
      kind: "fraction",
      unit: "%",
      span: [0, 100],
      step: 1,
      note: "Where flows are found: how far its valve is open, 100 % without one. Where they are set: its share of the flow.",
    }),
    loss: column({ label: "Loss", kind: "pressureDifference", unit: "kPa", span: [0, 200], step: 0.5 }),
    passage: column({
      label: "Free area of the tubes",
      kind: "area",
      unit: "cm²",
      span: [0, 1000],
      step: 0.5,
      note: "0 where there are none.",
    }),
  },
  brief: ["element", "lies", "share", "loss"],
  rows: [1, 16],
  value: [
    row("strainer", "behind", 1, 4, 0),
    row("pump", "behind", 1, 0, 0),
    row("aftercooler", "behind", 1, 9, 30),
    row("intercooler", "behind", 1, 9, 30),
    row("fuelCooler", "behind", 1, 72, 7),
    row("gearCooler", "beside", 1, 8, 22),
    row("oilCooler", "behind", 1, 10, 28),
    row("jacketExchanger", "behind", 1, 12, 28),
    row("pipe", "behind", 1, 10, 0),
  ],
});

/** Loss in kPa and area in cm², for the rows above. */
function row(element: ElementKey, lies: "behind" | "beside", share: number, loss: number, passage: number) {
  return {
    element,
    lies,
    share: share as Fraction,
    loss: (1000 * loss) as PressureDifference,
    passage: (passage / 1e4) as Area,
  };
}
