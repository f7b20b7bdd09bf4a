import { choice, table } from "../../lib/graph";
import { column } from "../setting";
import { type PointRow, pointRows } from "./points";

/** Whose compressor was measured, under which keys, and the points that a new build has. */
interface MeasuredDeclared {
  readonly sourceKey: string;
  readonly pointsKey: string;
  /** as it begins a label */
  readonly name: string;
  readonly points: readonly PointRow[];
}

/** The inputs of one bank's compressor where somebody has measured it. */
export function measuredCompressor({ sourceKey, pointsKey, name, points }: MeasuredDeclared) {
  return {
    source: choice(sourceKey, {
      label: `${name}, compressor taken from`,
      options: { wheel: "the sizes of its wheel", points: "measured points" },
      value: "wheel",
    }),
    points: table(pointsKey, {
      label: `${name}, measured points of its compressor`,
      note: "Corrected to 298 K and 100 kPa; a file says its own reference and is brought to this one. Two speed lines of three points at least, each from surge to choke. The exducer above must be that of the wheel measured. A new build begins with rows drawn from the estimate.",
      columns: {
        flow: column({ label: "Corrected flow", kind: "massFlow", unit: "kg/min", span: [0.006, 3000], step: 0.1 }),
        pressureRatio: column({ label: "Pressure ratio", kind: "ratio", unit: "", span: [1.0001, 12], step: 0.01 }),
        efficiency: column({ label: "Efficiency", kind: "fraction", unit: "%", span: [20, 95], step: 0.1 }),
        speed: column({ label: "Wheel speed", kind: "rotationalSpeed", unit: "rpm", span: [600, 600_000], step: 100 }),
      },
      rows: [6, 120],
      value: points,
      reader: { label: "Open CSV…", read: pointRows },
    }),
  } as const;
}
