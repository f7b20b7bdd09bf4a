import type { KindName } from "../kinds";
import * as flow from "./flow";
import * as geometry from "./geometry";
import * as heat from "./heat";
import * as mechanics from "./mechanics";
import * as plain from "./plain";
import { bulkModulus, pressure, stress } from "./pressure";
import type { UnitTable } from "./unit";

/** The units of every kind, by symbol. */
export const unitTables = {
  ...flow,
  ...geometry,
  ...heat,
  ...mechanics,
  ...plain,
  bulkModulus,
  stress,
  pressure,
  gaugePressure: pressure,
  pressureDifference: pressure,
  specificEntropy: heat.specificHeat,
} satisfies Record<KindName, UnitTable>;

/** What a kind writes behind its symbols, so that "bar" cannot be mistaken. */
export const suffixes = {
  pressure: " a",
  gaugePressure: " g",
  crankAngle: " crank",
  volumePerStroke: "/stroke",
} as const satisfies Partial<Record<KindName, string>>;
