/**
 * The exact definitions from which every factor is built. No figure here is rounded, and none is written twice.
 *
 * @source NIST Special Publication 811 (2008), Guide for the Use of the International System of Units, appendix B
 *   (from memory)
 */
export const inch = 0.0254; // m
export const foot = 12 * inch;
export const yard = 3 * foot;
export const mile = 1760 * yard;
export const nauticalMile = 1852; // m

export const pound = 0.45359237; // kg, avoirdupois
export const ounce = pound / 16;

/** Standard acceleration of free fall, m/s². */
export const standardGravity = 9.80665;
export const kilogramForce = standardGravity; // N
export const poundForce = pound * standardGravity;

export const litre = 1e-3; // m³
export const gallonUS = 231 * inch ** 3;
export const gallonImperial = 4.54609e-3; // m³

export const minute = 60; // s
export const hour = 60 * minute;

/** One degree of the Fahrenheit or Rankine scale, K. */
export const fahrenheitStep = 5 / 9;
export const celsiusZero = 273.15; // K
export const fahrenheitZero = 459.67; // °R

/** International Table calorie, J. */
export const calorie = 4.1868;
/** International Table British thermal unit: heats one pound by 1 °F where one calorie heats one gram by 1 °C. */
export const britishThermalUnit = calorie * 1e3 * pound * fahrenheitStep;
export const wattHour = hour; // J

/** Mechanical horsepower: 550 ft·lbf/s, W. */
export const horsepower = 550 * foot * poundForce;
/** Metric horsepower: 75 kgf·m/s, W. */
export const metricHorsepower = 75 * kilogramForce;

export const bar = 1e5; // Pa
export const poundPerSquareInch = poundForce / inch ** 2;
export const atmosphere = 101325; // Pa
/** Conventional densities of the columns: mercury at 0 °C, water at 4 °C, kg/m³. */
export const mercuryDensity = 13595.1;
export const waterDensity = 1000;
export const metreOfMercury = mercuryDensity * standardGravity; // Pa
export const metreOfWater = waterDensity * standardGravity; // Pa

/** One degree of arc, rad. */
export const degree = Math.PI / 180;
