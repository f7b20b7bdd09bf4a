import { expectTypeOf, test } from "vitest";
import { cell, compile } from "../../../lib/graph";
import type { Pressure, Quantity, Torque } from "../../../lib/quantity";
import { accessoryRun, airDemand, ambientPressure, declared, of, stages, torque } from "./fixture";

test("a cell infers the kinds of what it depends on", () => {
  cell("boosted", {
    label: "Boosted",
    symbol: "p",
    formula: "p",
    source: "definition",
    kind: "pressure",
    from: { pressure: ambientPressure, stages },
    compute: ({ pressure, stages }) => {
      expectTypeOf(pressure).toEqualTypeOf<Pressure>();
      expectTypeOf(stages).toEqualTypeOf<"one" | "two">();
      return of("pressure", 2 * pressure);
    },
  });
});

test("an evaluation gives each node its own type, and a table's rows theirs", () => {
  expectTypeOf(compile(airDemand).run(declared).require(torque)).toEqualTypeOf<Torque>();
  expectTypeOf(accessoryRun.value[0]!.teeth).toEqualTypeOf<Quantity<"count">>();
});
