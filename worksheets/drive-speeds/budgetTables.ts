import { table, textColumn } from "../../lib/graph";
import { quantity } from "../../lib/quantity";
import { column } from "../setting";

const amperes = (value: number) => quantity("electricCurrent", value, "A");
const share = (value: number) => quantity("fraction", value, "%");
const rpm = (value: number) => quantity("rotationalSpeed", value, "rpm");

const duty = (label: string) => column({ label, kind: "fraction", unit: "%", span: [0, 100], step: 5 });

export const electricalLoads = table("electricalLoads", {
  label: "Electrical loads",
  note: "What draws current, and for which share of the time, with the engine idling and with it at work. The values are invented.",
  columns: {
    name: textColumn({ label: "Load", longest: 32 }),
    current: column({ label: "Current", kind: "electricCurrent", unit: "A", span: [0, 400], step: 1 }),
    idleShare: duty("Share of the time at idle"),
    workShare: duty("Share of the time at work"),
  },
  rows: [0, 16],
  value: [
    { name: "Engine control and injectors", current: amperes(18), idleShare: share(60), workShare: share(100) },
    { name: "Fuel lift pumps", current: amperes(16), idleShare: share(50), workShare: share(100) },
    { name: "Cooling fans", current: amperes(40), idleShare: share(10), workShare: share(70) },
    { name: "Lights", current: amperes(22), idleShare: share(60), workShare: share(60) },
    { name: "Cab and instruments", current: amperes(26), idleShare: share(60), workShare: share(70) },
  ],
});

export const alternatorCurve = table("alternatorCurve", {
  label: "Alternator's output, warm",
  note: "Its highest current by speed of its own shaft, from its maker or a test; it gives nothing below the first row. The values are invented.",
  columns: {
    speed: column({ label: "Shaft speed", kind: "rotationalSpeed", unit: "rpm", span: [0, 24000], step: 100 }),
    current: column({ label: "Current", kind: "electricCurrent", unit: "A", span: [0, 600], step: 1 }),
  },
  rows: [2, 12],
  value: [
    { speed: rpm(1100), current: amperes(0) },
    { speed: rpm(1500), current: amperes(62) },
    { speed: rpm(2000), current: amperes(95) },
    { speed: rpm(3000), current: amperes(130) },
    { speed: rpm(5000), current: amperes(150) },
    { speed: rpm(8000), current: amperes(158) },
  ],
});

export const hydraulicLoads = table("hydraulicLoads", {
  label: "Hydraulic loads",
  note: "What uses oil, at which pressure and for which share of the time. The values are invented.",
  columns: {
    name: textColumn({ label: "Load", longest: 32 }),
    flow: column({ label: "Flow", kind: "volumeFlow", hint: "coolant", unit: "L/min", span: [0, 200], step: 0.5 }),
    pressure: column({
      label: "Pressure",
      kind: "pressureDifference",
      hint: "rail",
      unit: "bar",
      span: [0, 350],
      step: 5,
    }),
    idleShare: duty("Share of the time at idle"),
    workShare: duty("Share of the time at work"),
  },
  rows: [0, 12],
  value: [
    {
      name: "Steering",
      flow: quantity("volumeFlow", 9, "L/min"),
      pressure: quantity("pressureDifference", 80, "bar"),
      idleShare: share(40),
      workShare: share(15),
    },
    {
      name: "Brake booster",
      flow: quantity("volumeFlow", 2, "L/min"),
      pressure: quantity("pressureDifference", 60, "bar"),
      idleShare: share(20),
      workShare: share(20),
    },
  ],
});
