import { expect, test } from "vitest";
import { back, nextStep, stepped } from "../../../site/trace";

test("stepped(trail, key) walks on, and back to what was passed", () => {
  expect(stepped(["power"], "fuelFlow")).toEqual(["power", "fuelFlow"]);
  expect(stepped(["a", "b", "c"], "b")).toEqual(["a", "b"]);
  expect(stepped(["a"], "a")).toEqual(["a"]);
});

test("back(trail) takes one step away, but never the first", () => {
  expect(back(["a", "b", "c"])).toEqual(["a", "b"]);
  expect(back(["a"])).toEqual(["a"]);
});

test("nextStep(trail, neighbours) prefers the way it came, so that up and down undo each other", () => {
  const fedBy = { airFlow: ["fuelFlow", "airFuelRatio"] };
  const feeds = { fuelFlow: ["consumption", "airFlow"] };
  const up = stepped(["airFlow"], nextStep(["airFlow"], fedBy.airFlow)!);
  expect(up).toEqual(["airFlow", "fuelFlow"]);
  expect(nextStep(up, feeds.fuelFlow)).toBe("airFlow");
  expect(nextStep(["fuelFlow"], feeds.fuelFlow)).toBe("consumption");
  expect(nextStep(["power"], [])).toBeUndefined();
});
