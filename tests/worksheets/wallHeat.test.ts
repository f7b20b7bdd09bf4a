import { describe, expect, test } from "vitest";
import { isRefusal } from "../../lib/graph";
import { fuelFlow } from "../../worksheets/air-demand/cells";
import { heatBalance } from "../../worksheets/boost/cells";
import { wallHeatInUse } from "../../worksheets/boost/demand";
import { wallHeatShare } from "../../worksheets/boost/inputs";
import { inputsOf } from "../../worksheets/build/build";
import { ownEngine } from "../../worksheets/marine-cooling/balance";
import { jacketHeat } from "../../worksheets/marine-cooling/heats";
import { frictionHeatToOil } from "../../worksheets/marine-cooling/inputs";
import { wallHeatByCorrelation, wallHeatCalibration, wallHeatParts } from "../../worksheets/marine-cooling/wallHeat";
import { matched } from "../../worksheets/matching/solved";
import { program } from "../../worksheets/model";
import { demo, demoInstallations } from "./demo";

const boat = program.run(inputsOf(demo, "boat"));
const moved = (changes: object) => program.rerun(boat, changes as never).evaluation;

describe("wall heat measured on the brake", () => {
  const promisedJacket = boat.require(heatBalance).parts.find(({ key }) => key === "jacket")!.power;

  test("that is what was reckoned leaves the share as it was stated", () => {
    const as = { wallHeatFrom: "measured", measuredJacketHeat: promisedJacket, measuredFuelFlow: boat.require(fuelFlow) };
    expect(moved(as).require(wallHeatInUse)).toBeCloseTo(boat.require(wallHeatShare), 9);
  });

  test("comes back as the jacket's heat, and moves share and factor alike", () => {
    const fuel = boat.require(ownEngine).fuelFlow;
    for (const factor of [0.8, 1.1, 1.3]) {
      const measuredJacketHeat = factor * boat.require(jacketHeat);
      const at = moved({ wallHeatFrom: "measured", measuredJacketHeat, measuredFuelFlow: fuel });
      // Hotter walls leave the turbines less, and a hundredth more fuel is burnt: for each kilogram of it the heat is as measured.
      expect(Math.abs(at.require(jacketHeat) / measuredJacketHeat - 1)).toBeLessThan(0.02);
      const wallsOnly = (heat: number, from: typeof at) =>
        heat - (1 - from.require(frictionHeatToOil)) * from.require(matched).powers.friction;
      const reckoned = wallsOnly(at.require(jacketHeat), at) / at.require(ownEngine).fuelFlow;
      // The share takes the friction of the promise, which has a hundredth less cylinder pressure than the parts.
      expect(Math.abs(reckoned / (wallsOnly(measuredJacketHeat, boat) / fuel) - 1)).toBeLessThan(0.004);
      expect(at.require(wallHeatInUse) > boat.require(wallHeatShare)).toBe(factor > 1);
      const ratio = at.require(wallHeatInUse) / at.require(wallHeatByCorrelation);
      expect(at.require(wallHeatCalibration)).toBeCloseTo(ratio, 12);
      expect(at.require(wallHeatCalibration) > boat.require(wallHeatCalibration)).toBe(factor > 1);
    }
  });

  test("that cannot be is refused by its name", () => {
    const words = (changes: object) => {
      const value = moved({ wallHeatFrom: "measured", ...changes }).get(wallHeatInUse);
      return isRefusal(value) ? value.words : "";
    };
    expect(words({ measuredJacketHeat: 5000 })).toMatch(/^5\.00 kW measured in the jacket, of which .* look at both/);
    expect(words({ measuredJacketHeat: 3e6 })).toContain("it must be 0 to 60 %");
    expect(words({ wallHeatToOil: 0.6, wallHeatRadiated: 0.4 })).toContain("wallHeatToOil and wallHeatRadiated");
  });
});

// Published spans: J. B. Heywood (1988), chapter 12 (from memory), lower for highly charged engines.
test("the three correlations lie within a half of each other, and every part of the cycle adds to the walls", () => {
  for (const key of demoInstallations) {
    const evaluation = program.run(inputsOf(demo, key));
    const shares = ["woschni", "hohenberg", "annand"].map((wallHeatCorrelation) => {
      const at = program.rerun(evaluation, { wallHeatCorrelation } as never).evaluation;
      const { valvesClosed, valvesOpen, ports, share } = at.require(wallHeatParts);
      for (const part of [valvesClosed, valvesOpen, ports]) expect(part).toBeGreaterThan(0);
      expect(valvesClosed).toBeGreaterThan(valvesOpen + ports);
      return share;
    });
    expect(shares).toEqual([...shares].sort((a, b) => a - b));
    expect(shares[2]! / shares[0]!).toBeLessThan(1.6);
    expect(shares[0]).toBeGreaterThan(0.06);
    expect(shares[2]).toBeLessThan(0.18);
  }
});
