import type { Span, Temperature } from "../quantity";

/** A temperature, or a span of it, that practice keeps to on boats. */
export interface TemperatureGuide {
  readonly item: string;
  /** lowest and highest [K]; −∞ or ∞ where one end is open */
  readonly span: Span;
  /** where the figure comes from */
  readonly source: string;
}

const celsius = (degrees: number) => degrees + 273.15;
const upTo = (degrees: number): Span => [Number.NEGATIVE_INFINITY, celsius(degrees)];

/**
 * Temperatures that practice keeps to. Round figures of the trade, to be shown beside a result; a hose, gasket or
 * coolant of known limits goes before them. Hose limits speak of the MIXED gas and water, never of the dry gas.
 */
export const boatTemperatureGuides = {
  unguardedExhaustSurface: {
    item: "exhaust surface without guard or lagging",
    span: upTo((200 - 32) / 1.8),
    source: "ABYC P-1 (200 °F), as quoted by a public page",
  },
  mixedExhaust: {
    item: "gas and water behind the injection of most engines",
    span: upTo(100),
    source: "public page on ABYC P-1 (212 °F)",
  },
  wetExhaustHose: {
    item: "gas and water for which a wet-exhaust hose is laid out",
    span: [celsius(40), celsius(70)],
    source: "common practice, no source (from memory)",
  },
  jacketOutlet: {
    item: "jacket coolant leaving an engine with keel or heat-exchanger cooling",
    span: [celsius(75), celsius(95)],
    source: "common practice, no source (from memory)",
  },
  seaDischarge: {
    item: "sea water leaving the last exchanger; above, scale grows",
    span: upTo(55),
    source: "common practice, no source (from memory)",
  },
  copperPipe: {
    item: "copper and aluminium-brass pipe",
    span: upTo(200),
    source: "a classification society's piping rules, public page",
  },
  copperNickelPipe: {
    item: "copper–nickel pipe",
    span: upTo(300),
    source: "a classification society's piping rules, public page",
  },
} as const satisfies Readonly<Record<string, TemperatureGuide>>;

/** Sea and engine-room air for which classed machinery is laid out [K]: 32 and 45 °C (class rules, from memory). */
export const classDesignAmbient = {
  seaWater: celsius(32) as Temperature,
  air: celsius(45) as Temperature,
} as const;
