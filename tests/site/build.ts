import type { Build } from "../../worksheets/build/build";
import { declaredValues } from "../../worksheets/build/build";
import { graph } from "./fixture";

/** A build over the fixture's inputs, with three places to run in. */
export const build: Build = {
  name: "Fixture engine",
  note: "Made up for tests.",
  shared: declaredValues(graph),
  installations: [
    { key: "cell", label: "Test cell", note: "", own: {} },
    { key: "truck", label: "Truck", note: "", own: { ambient: 318.15 } },
    { key: "boat", label: "Boat", note: "", own: { coolant: "sea" } },
  ],
  unknown: {},
};
