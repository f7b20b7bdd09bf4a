/**
 * Conversion factors to the SI, to about ten digits.
 *
 * Computed from the definitions of NIST Special Publication 811 and checked against a general-purpose unit conversion
 * program, except where the row says that only the printed definition was used. Tolerance 1e-8, that of the digits given.
 */
export const definitionRows = [
  { id: "10-dyno-units-s01", kind: "power", unit: "hp", multiplyBy: 745.6998716 },
  { id: "10-dyno-units-s02", kind: "torque", unit: "lbf·ft", multiplyBy: 1.355817948 },
  { id: "10-dyno-units-s03", kind: "pressure", unit: "psi", multiplyBy: 6894.757293 },
  { id: "10-dyno-units-s04", kind: "pressureDifference", unit: "inH2O", multiplyBy: 249.08891 }, // definition only, not checked by program
  { id: "10-dyno-units-s05", kind: "pressure", unit: "bar", multiplyBy: 100000 },
  { id: "10-dyno-units-s06", kind: "massFlow", unit: "lb/min", multiplyBy: 0.007559872833 },
  { id: "10-dyno-units-s07", kind: "volumeFlow", unit: "cfm", multiplyBy: 0.0004719474432 },
  { id: "10-dyno-units-s08", kind: "volumeFlow", unit: "imp gal/min", multiplyBy: 7.576816667e-5 },
  { id: "10-dyno-units-s09", kind: "power", unit: "Btu/h", multiplyBy: 0.2930710702 },
  { id: "10-dyno-units-s10", kind: "specificHeat", unit: "Btu/(lb·°F)", multiplyBy: 4186.8 }, // definition only, not checked by program
  { id: "10-dyno-units-s11", kind: "volume", unit: "cc", multiplyBy: 1e-6 },
  { id: "10-dyno-units-s12", kind: "volume", unit: "mm³", multiplyBy: 1e-9 },
  { id: "10-dyno-units-s13", kind: "specificFuelConsumption", unit: "lb/(hp·h)", multiplyBy: 1.689659411e-7 },
  { id: "10-dyno-units-s14", kind: "specificFuelConsumption", unit: "g/kWh", multiplyBy: 2.777777778e-10 },
  { id: "10-dyno-units-s15", kind: "velocity", unit: "ft/min", multiplyBy: 0.00508 },
  { id: "10-dyno-units-s16", kind: "velocity", unit: "knots", multiplyBy: 0.5144444444 },
  { id: "10-dyno-units-s19", kind: "density", unit: "lb/ft³", multiplyBy: 16.01846337 },
] as const;

/** Rows for which no unit of the same name exists here; the test builds them from one that does. */
export const derivedRows = {
  /** rpm in rad/s */
  rpm: { id: "10-dyno-units-s17", multiplyBy: 0.1047197551 },
  /** US ton of refrigeration, 12 000 Btu/h, in W; definition only, not checked by program */
  tonOfRefrigeration: { id: "10-dyno-units-s18", multiplyBy: 3516.852842 },
} as const;

/** Temperatures by the exact definitions of the scales. */
export const temperatureRows = [
  { id: "10-dyno-units-s20", fahrenheit: -40, celsius: -40, kelvin: 233.15 },
  { id: "10-dyno-units-s21", fahrenheit: 60, celsius: 15.55555556, kelvin: 288.7055556 },
  { id: "10-dyno-units-s22", fahrenheit: 212, celsius: 100, kelvin: 373.15 },
  { id: "10-dyno-units-s23", fahrenheit: 1400, celsius: 760, kelvin: 1033.15 },
] as const;
