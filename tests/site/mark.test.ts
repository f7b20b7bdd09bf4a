import { expect, test } from "vitest";
import { marginWords } from "../../site/mark/standing";
import { movement } from "../../site/mark/movement";
import { spaced } from "../spaced";

const SI = { system: "SI", own: {} } as const;
const power = { kind: "power" } as const;

test("movement() tells the difference of the digits shown, in the unit shown", () => {
  expect(spaced(movement(SI, power, 60_640, 55_510))).toBe("▲ +5.13");
  expect(spaced(movement(SI, power, 55_510, 60_640))).toBe("▼ −5.13");
  expect(spaced(movement({ system: "SI", own: { w: "W" } }, { kind: "power", key: "w" }, 60_640, 55_510))).toBe("▲ +5130");
});

test("movement() is silent while the digits shown are the same", () => {
  expect(movement(SI, power, 60_640, 60_641)).toBe("");
});

test("movement() of a temperature is a step, not a temperature", () => {
  expect(spaced(movement(SI, { kind: "temperature" }, 411.15, 405.15))).toBe("▲ +6.0");
  expect(spaced(movement({ system: "US", own: {} }, { kind: "temperature" }, 411.15, 405.15))).toBe("▲ +10.8");
});

test("movement() of numbers with an exponent says how much", () => {
  expect(spaced(movement(SI, { kind: "ratio" }, 3.2e-12, 1.2e-12))).toBe("▲ +2.0·10⁻¹²");
  expect(spaced(movement(SI, { kind: "ratio" }, 0, 1.2e-16))).toBe("▼ −1.2·10⁻¹⁶");
});

test("movement() reads thin spaces and minus signs of long and negative numbers", () => {
  expect(spaced(movement({ system: "SI", own: { w: "W" } }, { kind: "power", key: "w" }, 1_234_500, 1_234_000))).toBe("▲ +500");
  expect(spaced(movement(SI, { kind: "temperature" }, 268.15, 278.15))).toBe("▼ −10.000");
});

test("marginWords(share) says room left or how far past", () => {
  expect([0.31, 0.042, -0.033, -0.2].map(marginWords)).toEqual(["31 % left", "4.2 % left", "3.3 % past", "20 % past"].map((words) => words.replace(" %", "\u00a0%")));
  expect(marginWords(Number.NEGATIVE_INFINITY)).toBe("past");
});
