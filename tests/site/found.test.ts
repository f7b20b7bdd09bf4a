import { expect, test } from "vitest";
import { placesOf } from "../../site/page/desk";
import { foundLines } from "../../site/page/found";
import { graph } from "./fixture";
import { sheets } from "./sheets";

const desk = { graph, places: placesOf(sheets) };
const found = (text: string) => foundLines(desk, text).map(({ key }) => key);

test("foundLines(text) finds by parts of the name, in any order and case", () => {
  expect(found("blower sp").slice(0, 2).sort()).toEqual(["blowerSpeed", "speedLimit"]);
  expect(found("SPEED blower")).toEqual(expect.arrayContaining(["blowerSpeed", "speedLimit"]));
  expect(found("air-fuel")).toContain("airFuelRatio");
});

test("foundLines(text) finds by symbol and by sheet", () => {
  expect(found("W_b")).toContain("blowerPower");
  expect(found("front belt")).toContain("driven");
});

test("foundLines(text) finds nothing for nothing, and for what is on no sheet", () => {
  expect(found("  ")).toEqual([]);
  expect(found("unheard of")).toEqual([]);
});
