import { expect, test } from "vitest";
import { Refusal } from "../../../lib/graph";

test.each([
  ["beltWrap: centreDistance is 0.08 m; it must exceed 0.11 m", "centreDistance is 0.08 m; it must exceed 0.11 m"],
  ["chargePath: blower: no balance of flow", "no balance of flow"],
  ["Fuel flow is not a finite number with these inputs", "Fuel flow is not a finite number with these inputs"],
  ["no balance: air and work do not meet", "no balance: air and work do not meet"],
])("new Refusal(root, %j).words leaves the functions' names out", (message, words) => {
  expect(new Refusal("root", message).words).toBe(words);
  expect(new Refusal("root", message).message).toBe(message);
});
