import { expect, test } from "vitest";
import { compile, isRefusal } from "../../lib/graph";
import { nearestWorkable } from "../../site/page/workable";
import { declaredValues } from "../../worksheets/build/build";
import { graph, pressureRatio } from "./fixture";

const program = compile(graph);
const declared = declaredValues(graph);
const inputs = { ...declared, driveRatio: 3.3 };
const search = { graph, program, inputs, root: pressureRatio.key, key: "driveRatio", value: declared["driveRatio"] };

test("nearestWorkable(search) is a whole step with an answer, and one step further there is none", () => {
  const nearest = nearestWorkable(search)!;
  const input = graph.inputs.find(({ key }) => key === "driveRatio")!;
  if (input.type !== "quantity") throw new Error("the drive ratio is a quantity");
  const answers = (driveRatio: number) => !isRefusal(program.run({ ...inputs, driveRatio }).get(pressureRatio));
  expect(answers(nearest)).toBe(true);
  expect(answers(nearest + input.step)).toBe(false);
  expect(nearest).toBeGreaterThan(declared["driveRatio"] as number);
  const steps = (nearest - input.span[0]) / input.step;
  expect(Math.abs(steps - Math.round(steps))).toBeLessThan(1e-9);
});

test("nearestWorkable(search) is nothing where the setting it starts from has no answer, or is no quantity", () => {
  expect(nearestWorkable({ ...search, value: 3.31 })).toBeUndefined();
  expect(nearestWorkable({ ...search, key: "driven" })).toBeUndefined();
});
