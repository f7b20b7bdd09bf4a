import { expect, test } from "vitest";
import {
  compressionPressure,
  cylinderVolume,
  meanPistonSpeed,
  peakCylinderPressure,
  pistonMotion,
} from "../../../lib/engine";
import type { CrankAngle, Length, Pressure, Ratio, RotationalSpeed } from "../../../lib/quantity";
import published from "../../published/engine-cylinder.json" with { type: "json" };
import { close, type PublishedRow, rowsOf } from "../publishedRows";

const rows = rowsOf(published);
const given = (row: PublishedRow, name: string) => row.inputs[name] as number;

// Exact crank drive; the table's accelerations were checked by finite differences. 1e-8: the printed digits.
test.each(rows("slider-crank"))("pistonMotion and cylinderVolume of an exact crank drive: $id", (row) => {
  const stroke = given(row, "stroke_m") as Length;
  const engineSpeed = (given(row, "N_rpm") / 60) as RotationalSpeed;
  const motion = pistonMotion({
    stroke,
    rodLength: given(row, "rod_m") as Length,
    engineSpeed,
    crankAngle: ((given(row, "theta_deg") * Math.PI) / 180) as CrankAngle,
  });
  close(motion.travel, row.expected["piston_from_TDC_m"], 1e-8);
  close(motion.velocity, row.expected["v_mps"], 1e-8);
  close(motion.acceleration, row.expected["a_mps2"], 1e-8);
  close((motion.rodAngle * 180) / Math.PI, row.expected["rod_angle_deg"], 1e-8);
  close(meanPistonSpeed(stroke, engineSpeed), row.expected["mean_piston_speed_mps"], 1e-8);
  const volume = cylinderVolume({
    bore: given(row, "bore_m") as Length,
    stroke,
    compressionRatio: given(row, "compression_ratio") as Ratio,
    travel: motion.travel,
  });
  close(volume, row.expected["V_m3"], 1e-8);
});

test.each(rows("compression-pressure"))("compressionPressure is polytropic: $id", (row) => {
  const stroke = {
    manifoldPressure: given(row, "p_ivc_Pa") as Pressure,
    effectiveCompressionRatio: given(row, "effective_ratio") as Ratio,
    compressionExponent: given(row, "n") as Ratio,
  };
  close(compressionPressure(stroke), row.expected["p_tdc_Pa"], 1e-8);
  close(peakCylinderPressure({ ...stroke, firingRiseRatio: 1.5 as Ratio }) / 1.5, row.expected["p_tdc_Pa"], 1e-8);
});

test("pistonMotion refuses a rod shorter than the crank radius", () => {
  const position = { stroke: 0.12 as Length, rodLength: 0.05 as Length, engineSpeed: 30 as RotationalSpeed };
  expect(() => pistonMotion({ ...position, crankAngle: 1 as CrankAngle })).toThrow(
    "pistonMotion: rodLength is 0.05 m; it must exceed 0.06 m",
  );
});
