import { describe, expect, test } from "vitest";
import {
  compressorMap,
  efficiencyShape,
  inducerChokeFlow,
  inventedCompressorPoints,
  peakPolytropicEfficiency,
  stanitzSlip,
  tipSpeed,
  wheelEstimate,
  wiesnerSlip,
  workCoefficient,
} from "../../../lib/charge";
import published from "../../published/charge-parts.json" with { type: "json" };
import { close, rowsOf } from "../publishedRows";

const rows = rowsOf(published);
const degrees = (angle: unknown) => (((angle as number) * Math.PI) / 180) as never;
const at = (inputs: Readonly<Record<string, unknown>>, name: string) => inputs[name] as never;

// Sources stand in each row of tests/published/charge-parts.json; 1e-4 is the tables' own tolerance.
describe("formulas of the wheel meet the tables", () => {
  test.each(rows("slip-stanitz"))("stanitzSlip $inputs.Z", ({ inputs, expected }) => {
    close(stanitzSlip(at(inputs, "Z")), expected["sigma"], 1e-8);
  });

  test.each(rows("slip-wiesner"))("wiesnerSlip $id", ({ inputs, expected }) => {
    const backsweep = degrees(inputs["backsweep_deg_from_radial"]);
    const slip = wiesnerSlip({ blades: at(inputs, "Z"), backsweep, radiusRatio: at(inputs, "r1_over_r2") });
    close(slip, expected["sigma"], 1e-8);
  });

  test.each(rows("work-coefficient"))("workCoefficient $id", ({ inputs, expected }) => {
    const work = workCoefficient({
      slip: at(inputs, "sigma"),
      exitFlowCoefficient: at(inputs, "phi2_cm2_over_u2"),
      backsweep: degrees(inputs["backsweep_deg"]),
      discFriction: at(inputs, "k_df"),
      flowCoefficient: at(inputs, "phi"),
    });
    close(work, expected["lambda_total"], 1e-8);
  });

  test.each(rows("peak-efficiency-correlation"))("peakPolytropicEfficiency $id", ({ inputs, expected }) => {
    close(peakPolytropicEfficiency(at(inputs, "phi"), at(inputs, "M_u2")), expected["eta_p"], 1e-8);
  });

  test.each(rows("efficiency-shape"))("efficiencyShape $id", ({ inputs, expected }) => {
    const shape = efficiencyShape({
      flowCoefficient: at(inputs, "phi"),
      peakFlowCoefficient: at(inputs, "phi_peak"),
      chokeFlowCoefficient: at(inputs, "phi_choke"),
      lowBend: at(inputs, "D"),
      chokeLoss: at(inputs, "G"),
      highBend: at(inputs, "H"),
    });
    close(shape, expected["eta_over_eta_peak"], 1e-8);
  });

  test.each(rows("inducer-throat-choke"))("inducerChokeFlow $id", ({ inputs, expected }) => {
    const flow = inducerChokeFlow({
      area: at(inputs, "A_throat_m2"),
      bladeSpeed: at(inputs, "U_throat_mps"),
      temperature: at(inputs, "T01_K"),
      pressure: at(inputs, "p01_Pa"),
      gasConstant: at(inputs, "R"),
      ratioOfSpecificHeats: at(inputs, "gamma"),
    });
    close(flow, expected["m_choke_kgps"], 1e-8);
  });

  test.each(rows("map-coordinates"))("tipSpeed $id", ({ inputs, expected }) => {
    close(tipSpeed(at(inputs, "D2_m"), ((inputs["N_rpm"] as number) / 60) as never), expected["u2_mps"], 1e-8);
  });
});

const wheel = { name: "56/76", inducerDiameter: 0.056, exducerDiameter: 0.076, blades: 10, backsweep: 0.6 } as never;
const fields = [wheelEstimate(wheel), compressorMap(inventedCompressorPoints).field];

describe.each(fields)("the field of $name", (field) => {
  const [slowest, fastest] = field.speedSpan;
  const speeds = Array.from({ length: 12 }, (_, i) => slowest + ((fastest - slowest) * i) / 11) as never[];
  const along = (speed: never, share: number) =>
    (field.surgeFlow(speed) + share * (field.chokeFlow(speed) - field.surgeFlow(speed))) as never;

  test("surge lies left of choke, and both grow with speed", () => {
    speeds.forEach((speed, i) => {
      expect(field.surgeFlow(speed)).toBeLessThan(field.chokeFlow(speed));
      if (i === 0) return;
      expect(field.chokeFlow(speed)).toBeGreaterThan(field.chokeFlow(speeds[i - 1]!));
      expect(field.surgeFlow(speed)).toBeGreaterThan(field.surgeFlow(speeds[i - 1]!));
    });
  });

  // An estimated line may rise a little right of surge, as measured ones do: 3 % of the rise is let pass.
  test("pressure falls with flow towards choke, and on beyond it", () => {
    for (const speed of speeds) {
      for (let share = 0; share < 1.6; share += 0.05) {
        const left = field.at(along(speed, share), speed).pressureRatio;
        const right = field.at(along(speed, share + 0.05), speed).pressureRatio;
        expect(right).toBeLessThanOrEqual(left + 0.03 * Math.max(0, left - 1) + 1e-12);
        if (share > 0.5) expect(right).toBeLessThan(left);
      }
    }
  });

  test("pressure rises with speed at the same place between surge and choke", () => {
    for (const share of [0.1, 0.5, 0.9]) {
      speeds.slice(1).forEach((speed, i) => {
        const slower = field.at(along(speeds[i]!, share), speeds[i]!).pressureRatio;
        expect(field.at(along(speed, share), speed).pressureRatio).toBeGreaterThan(slower);
      });
    }
  });

  test("efficiency, pressure ratio and work belong together, and none is better than ideal", () => {
    for (const speed of speeds) {
      for (const share of [0.05, 0.3, 0.6, 0.95]) {
        const { efficiency, correctedWork, pressureRatio, extrapolated } = field.at(along(speed, share), speed);
        expect(extrapolated).toBe(false);
        // slow estimated lines fall below a pressure ratio of 1 before choke
        if (share < 0.9) expect(efficiency).toBeGreaterThan(0);
        expect(efficiency).toBeLessThan(0.9);
        const ideal = 1004.7 * field.reference.temperature * (pressureRatio ** (2 / 7) - 1);
        close(efficiency, ideal / correctedWork, 0.003); // cp to three digits
      }
    }
  });

  test("says where it is not at home", () => {
    const middle = speeds[6]!;
    expect(field.at((0.9 * field.surgeFlow(middle)) as never, middle).extrapolated).toBe(true);
    expect(field.at((1.02 * field.chokeFlow(middle)) as never, middle).extrapolated).toBe(true);
    expect(field.at(along((1.05 * fastest) as never, 0.5), (1.05 * fastest) as never).extrapolated).toBe(true);
  });

  test("is without jumps where lines end", () => {
    for (const speed of speeds) {
      for (const edge of [field.surgeFlow(speed), field.chokeFlow(speed)]) {
        const ratio = (flow: number) => field.at(flow as never, speed).pressureRatio;
        expect(Math.abs(ratio(edge * (1 + 1e-7)) - ratio(edge * (1 - 1e-7)))).toBeLessThan(1e-4);
      }
    }
  });

  test("tells its uncertainty", () => {
    expect(field.uncertainty.efficiency).toBeGreaterThan(0);
    expect(field.uncertainty.basis).not.toBe("");
  });
});

describe("surge of an estimated wheel", () => {
  const sizes = [
    { inducerDiameter: 0.045, exducerDiameter: 0.062, blades: 10, backsweep: 0.5 },
    { inducerDiameter: 0.06, exducerDiameter: 0.086, blades: 9, backsweep: 0.6 },
    { inducerDiameter: 0.088, exducerDiameter: 0.122, blades: 12, backsweep: 0.7 },
  ].map((each) => wheelEstimate({ name: `${each.exducerDiameter}`, ...each } as never));
  /** Wheel speed at a tip Mach number, at 298 K. */
  const atMach = (tipDiameter: number, mach: number) => ((mach * 346.06) / (Math.PI * tipDiameter)) as never;

  // Common practice, no source: surge lines of turbochargers' maps are nearly straight over pressure ratio, with a third of
  // the widest flow at 2 and somewhat more than half at 3; a quarter either way is what the estimate claims.
  test.each(sizes)("its line is nearly straight from no flow at no rise (wheel $name)", (field) => {
    const widest = field.chokeFlow(atMach(field.tipDiameter!, 1.4));
    const wanted = [[1.5, 0.2], [2, 0.33], [3, 0.55]] as const;
    const line = Array.from({ length: 200 }, (_, i) => {
      const speed = atMach(field.tipDiameter!, 0.05 + 0.008 * i);
      const flow = field.surgeFlow(speed);
      return { flow: flow / widest, ratio: field.at(flow, speed).pressureRatio };
    });
    expect(line[0]!.ratio).toBeLessThan(1.003);
    expect(line[0]!.flow).toBeLessThan(0.02);
    for (const [ratio, flow] of wanted) {
      const there = line.find((each) => each.ratio >= ratio)!;
      expect(Math.abs(there.flow / flow - 1), `at a pressure ratio of ${ratio}: ${there.flow}`).toBeLessThan(0.25);
    }
  });

  // Greitzer (1976): what makes a stall a surge goes with tip speed, so slow lines reach further down.
  test.each(sizes)("slow lines reach down to a small part of the flow at choke (wheel $name)", (field) => {
    const shares = [0.2, 0.5, 0.8, 1.1, 1.4, 1.7].map((mach) => {
      const speed = atMach(field.tipDiameter!, mach);
      return field.surgeFlow(speed) / field.chokeFlow(speed);
    });
    shares.slice(1).forEach((share, i) => {
      expect(share).toBeGreaterThan(shares[i]!);
    });
    expect(shares[0]).toBeLessThan(0.2);
    expect(shares.at(-1)).toBeLessThan(0.75);
  });
});

describe("compressorMap(text)", () => {
  const map = compressorMap(inventedCompressorPoints);

  test("finds the seven lines of the invented points", () => expect(map.lineSpeeds.length).toBe(7));

  // The invented points scatter by 0.3 % in pressure rise and 0.5 % in efficiency, and their lines are not of the fit's shape.
  test("meets its points, and points left out one by one, as well as they scatter", () => {
    expect(map.fitted.points).toBe(41);
    expect(map.fitted.pressureRise).toBeLessThan(0.012);
    expect(map.fitted.efficiency).toBeLessThan(0.006);
    expect(map.leftOut.points).toBe(27);
    expect(map.leftOut.pressureRise).toBeLessThan(0.04);
    expect(map.leftOut.efficiency).toBeLessThan(0.025);
    expect(map.leftOut.pressureRise).toBeGreaterThan(map.fitted.pressureRise);
    expect(map.leftOutAtEnds.points).toBe(14);
  });

  test("a whole line left out is met by its neighbours within 3 % of its rise", () => {
    const lines = inventedCompressorPoints.split("\n");
    const without = compressorMap(lines.filter((line) => !line.endsWith("95500")).join("\n"));
    for (const { flow, pressureRatio, speed } of map.points.points.filter(
      (point) => Math.abs(point.speed * 60 - 95500) < 1,
    )) {
      if (flow > 0.44) continue; // on the steep end a small shift of flow is a large one of pressure
      const found = without.field.at(flow as never, speed as never).pressureRatio;
      expect(Math.abs(found - pressureRatio) / (pressureRatio - 1)).toBeLessThan(0.03);
    }
  });

  // A slow wheel stalls without surging: below its slowest line the surge line goes straight, over the rise, to no flow.
  test("surge below the slowest line falls with the rise of pressure, and joins the measured line", () => {
    const { field } = map;
    const slowest = field.speedSpan[0];
    const rise = (speed: number) => field.at(field.surgeFlow(speed as never), speed as never).pressureRatio - 1;
    const perRise = (speed: number) => field.surgeFlow(speed as never) / rise(speed);
    close(field.surgeFlow((slowest * (1 - 1e-9)) as never), field.surgeFlow(slowest as never), 1e-6);
    for (const share of [0.8, 0.5, 0.25]) close(perRise(share * slowest), perRise(slowest), 0.12);
    expect(field.surgeFlow((0.5 * slowest) as never)).toBeLessThan(0.3 * field.surgeFlow(slowest as never));
  });

  const header =
    "reference: 298 K, 100 kPa\ncorrected flow [lb/min]; pressure ratio; efficiency [%]; wheel speed [rev/min]";
  test("reads pounds a minute and decimal commas", () => {
    const { points } = compressorMap(
      `${header}\n20;1,5;68;60000\n30;1,48;72;60000\n40;1,3;60;60000\n30;2,1;68;80000\n42;2,05;73;80000\n52;1,8;62;80000`,
    );
    close(points.points[0]!.flow, (20 * 0.45359237) / 60, 1e-12);
    close(points.points[0]!.speed, 1000, 1e-12);
    close(points.points[1]!.pressureRatio, 1.48, 1e-12);
  });

  test("refuses every bad row by the number of its line", () => {
    expect(() => compressorMap(`${header}\n20;1,5;680;60000\n30;eins;72;60000`)).toThrow(
      /^compressorMap: line 3: efficiency is 680; it must be 20 to 95 %; line 4: pressure ratio is "eins"; it must be a number$/,
    );
    expect(() => compressorMap(inventedCompressorPoints.replace("reference", "referee"))).toThrow(
      /line 2: "referee" is not known/,
    );
    expect(() => compressorMap(inventedCompressorPoints.replace(" [kg/s]", ""))).toThrow(
      /^compressorMap: line 4: column "corrected flow" has no unit; write one in brackets: kg\/s, [^;]*$/,
    );
    expect(() => compressorMap(inventedCompressorPoints.replace("[rev/min]", "[furlong]"))).toThrow(
      /^compressorMap: line 4: column "wheel speed" has "furlong", which is no unit of its kind; write one in brackets: [^;]*$/,
    );
    expect(() => compressorMap("reference: 298 K, 100 kPa\n20;1,5;68;60000\n30;1,48;72;60000")).toThrow(
      /^compressorMap: line 2: there is no header above this line/,
    );
    expect(() => compressorMap(`${header}\n20;1,5;68`)).toThrow("line 3: there is no wheel speed");
    expect(() => compressorMap(`${header}\n20;1,5;68;60000\n30;1,48;72;60000`)).toThrow(
      /line 3 and 4: two points at 60000 rev\/min/,
    );
  });
});
