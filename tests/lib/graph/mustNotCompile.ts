/** Programs that must not compile; never run. The compiler fails where one of them does compile. */
import { cell, choice, input, quantityColumn, table } from "../../../lib/graph";
import type { Pressure, Quantity, Temperature } from "../../../lib/quantity";
import { ambientPressure, of, pulleys, ratedPower } from "./fixture";

const told = { label: "x", symbol: "x", formula: "x", source: "definition" } as const;

/** A function as lib has them. */
const doubled = (pressure: Pressure): Pressure => (2 * pressure) as Pressure;

export const mustNotCompile = (): unknown[] => [
  cell("a", {
    ...told,
    kind: "temperature",
    from: { pressure: ambientPressure },
    // @ts-expect-error a pressure is no temperature
    compute: ({ pressure }) => doubled(pressure),
  }),
  cell("b", {
    ...told,
    kind: "pressure",
    from: { power: ratedPower },
    // @ts-expect-error the function takes a pressure, the cell gives it a power
    compute: ({ power }) => doubled(power),
  }),
  cell("c", {
    ...told,
    kind: "pressure",
    from: { pressure: ambientPressure },
    compute: ({ pressure }) => doubled(pressure),
    // @ts-expect-error the bound of a pressure cannot be a power
    limits: [{ component: "casing", side: "most", bound: ratedPower }],
  }),
  cell("d", {
    ...told,
    kind: "pressure",
    from: { pressure: ambientPressure },
    compute: ({ pressure }) => doubled(pressure),
    // @ts-expect-error nor a bare number of another kind
    limits: [{ component: "casing", side: "most", bound: of("temperature", 300) }],
  }),
  cell("e", {
    ...told,
    kind: "pressure",
    from: { pressure: ambientPressure },
    // @ts-expect-error the cell does not depend on a density
    compute: ({ density }) => density,
  }),
  cell("f", {
    ...told,
    kind: "pressure",
    from: { pressure: ambientPressure },
    // @ts-expect-error arithmetic drops the kind; the result must be named again
    compute: ({ pressure }) => 2 * pressure,
  }),
  cell("g", {
    ...told,
    kind: "power",
    from: { pulleys },
    // @ts-expect-error a structure is no number
    compute: ({ pulleys }) => pulleys,
  }),
  // @ts-expect-error a value must have the input's kind
  input("h", { label: "x", kind: "power", value: of("torque", 1), span: [of("power", 0), of("power", 1)], step: 1 }),
  // @ts-expect-error so must the ends of its span
  input("i", { label: "x", kind: "power", value: of("power", 1), span: [of("power", 0), of("mass", 1)], step: 1 }),
  // @ts-expect-error "three" is not offered
  choice("j", { label: "x", options: { one: "one", two: "two" }, value: "three" }),
  table("k", {
    label: "x",
    rows: [0, 1],
    columns: { load: quantityColumn({ label: "Load", kind: "power", span: [of("power", 0), of("power", 1)], step: 1 }) },
    // @ts-expect-error the column holds a power
    value: [{ load: of("mass", 1) }],
  }),
  // @ts-expect-error an absolute temperature is not a difference of two
  ((rise: Quantity<"temperatureDifference">) => rise)(of("temperature", 300) satisfies Temperature),
];
