import { table, textColumn } from "../../../lib/graph";
import { quantity } from "../../../lib/quantity";
import { column } from "../../setting";
import { share } from "./share";

export const dutyCycle = table("dutyCycle", {
  label: "Duty cycle",
  note: "Shares of time are brought to 100 %. Speed and power over the promised ones, the power within the full-load map; way is speed over ground or water.",
  columns: {
    phase: textColumn({ label: "Phase", longest: 32 }),
    time: column({ label: "Share of time", kind: "fraction", unit: "%", span: [0, 100], step: 1 }),
    speed: column({ label: "Engine speed", kind: "fraction", unit: "%", span: [5, 130], step: 1 }),
    power: column({ label: "Power", kind: "fraction", unit: "%", span: [0, 130], step: 1 }),
    way: column({ label: "Way", kind: "velocity", hint: "road", unit: "km/h", span: [0, 300], step: 1 }),
  },
  rows: [1, 10],
  value: [
    {
      phase: "Climb, full load",
      time: share(35),
      speed: share(97),
      power: share(97),
      way: quantity("velocity", 118, "km/h"),
    },
    {
      phase: "Bends and gear changes",
      time: share(40),
      speed: share(80),
      power: share(55),
      way: quantity("velocity", 82, "km/h"),
    },
    {
      phase: "Rolling through villages",
      time: share(15),
      speed: share(50),
      power: share(14),
      way: quantity("velocity", 48, "km/h"),
    },
    {
      phase: "Standing, idle",
      time: share(10),
      speed: share(24),
      power: share(1),
      way: quantity("velocity", 0, "km/h"),
    },
  ],
});
