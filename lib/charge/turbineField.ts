import type { Gas } from "../fluid";
import { requirePositive, requireWithin } from "../quantity/guard";
import type { Area, Count, Fraction, Length, Pressure, Ratio, RotationalSpeed, Temperature } from "../quantity/kinds";

/** A turbine as far as its maker's sheet tells it. */
export interface TurbineField {
  readonly name: string;
  /** effective flow area of each entry [m²], above 0 */
  readonly entryArea: Area;
  /** entries side by side, all fed alike [–], 1 or 2 */
  readonly entries: Count;
  /**
   * "oneNozzle" chokes like a nozzle; "twoNozzles" shares the expansion alike between nozzle and wheel, as reaction does,
   * and chokes at the square of the ratio
   */
  readonly swallowing: "oneNozzle" | "twoNozzles";
  /** diameter of the wheel at its tip [m], above 0 */
  readonly wheelDiameter: Length;
  /** highest total-to-static efficiency, bearings counted in or not as the bank's mechanicalEfficiency says [–], 0.3 to 0.9 */
  readonly peakEfficiency: Fraction;
  /** tip speed over spouting velocity at the peak [–], 0.4 to 0.9; 0.65 to 0.7 is usual */
  readonly peakSpeedRatio: Ratio;
}

/** Gas before and after a turbine, and what passes it. */
export interface TurbineSwallowing {
  /** flow through one turbine [kg/s], 0 or above */
  readonly massFlow: number;
  /** total temperature before it [K] */
  readonly temperature: Temperature;
  /** static pressure after it [Pa], above 0 */
  readonly downstreamPressure: Pressure;
  /** gas constant [J/(kg·K)] */
  readonly gasConstant: number;
  /** ratio of specific heats [–] */
  readonly ratioOfSpecificHeats: number;
}

const mostSteps = 60;

/**
 * Total pressure before over static pressure after a turbine [–] that swallows a flow: isentropic flow through its effective
 * area, of one nozzle or of two in series that share the expansion. Above choke the ratio grows in proportion to the flow.
 * Pulses, which swallow several per cent less than their mean pressure says, and the small fall of area with speed are left out.
 *
 * @param turbine areas and kind of swallowing [m²]
 * @param gas flow, temperature, pressure and gas [kg/s, K, Pa, J/(kg·K), –]
 * @throws RangeError if the areas or the pressure are not above zero
 * @source isentropic flow of an ideal gas; N. Watson, M. S. Janota, Turbocharging the Internal Combustion Engine (1982) for the two nozzles (from memory)
 * @example turbineExpansionRatio({ name: "", entryArea: 0.0012, entries: 1, swallowing: "oneNozzle", wheelDiameter: 0.07, peakEfficiency: 0.7, peakSpeedRatio: 0.68 }, { massFlow: 0.3709842, temperature: 950, downstreamPressure: 130434.78, gasConstant: 287, ratioOfSpecificHeats: 1.33 }) // 1.84
 */
export function turbineExpansionRatio(turbine: TurbineField, gas: TurbineSwallowing): Ratio {
  const { massFlow, temperature, downstreamPressure, gasConstant, ratioOfSpecificHeats: g } = gas;
  const area = turbine.entryArea * turbine.entries;
  if (!(area > 0)) requirePositive("turbineExpansionRatio: area", area, "m²");
  if (!(downstreamPressure > 0)) requirePositive("turbineExpansionRatio: downstreamPressure", downstreamPressure, "Pa");
  // Flow in units of what the area would pass per pressure after the turbine: q = r f(r), f² = 2γ/(γ−1) (x^(2/γ) − x^((γ+1)/γ)).
  const wanted = (massFlow * Math.sqrt(gasConstant * temperature)) / (area * downstreamPressure);
  if (!(wanted > 0)) return 1 as Ratio;
  const nozzles = turbine.swallowing === "twoNozzles" ? 2 : 1;
  // At choke each nozzle has the critical ratio ((γ + 1)/2)^(γ/(γ − 1)), and f² = γ ((γ + 1)/2)^(−(γ + 1)/(γ − 1)).
  const perNozzle = Math.log((g + 1) / 2) / (g - 1);
  const critical = g * perNozzle;
  const chokedRatio = wanted / (Math.sqrt(g) * Math.exp(-0.5 * (g + 1) * perNozzle));
  if (chokedRatio >= Math.exp(nozzles * critical)) return chokedRatio as Ratio;
  // In s, the logarithm of the ratio over each nozzle, q² rises steadily from 0:
  // q² (γ−1)/(2γ) = e^(2ns) (e^(−2s/γ) − e^(−s(γ+1)/γ)) = e^(as) − e^(bs), first taken as a parabola, then by Newton's method.
  const k = (g - 1) / g;
  const a = 2 * nozzles - 2 / g;
  const b = a - k;
  const square = (wanted * wanted * k) / 2;
  let s = Math.min(critical, (Math.sqrt(k * k + 2 * k * (a + b) * square) - k) / (k * (a + b)));
  let low = 0;
  let high = critical;
  for (let i = 0; i < mostSteps; i++) {
    const first = Math.exp(a * s);
    const second = Math.exp(b * s);
    const excess = first - second - square;
    if (excess > 0) high = s;
    else low = s;
    const next = s - excess / (a * first - b * second);
    // a step of Newton's this small leaves its square
    if (Math.abs(next - s) <= 1e-9 * (1 + s)) return Math.exp(nozzles * next) as Ratio;
    s = next > low && next < high ? next : (low + high) / 2;
  }
  return Math.exp(nozzles * s) as Ratio;
}

/** A turbine at work. */
export interface TurbineDrop {
  /** wheel speed [rev/s], 0 or above */
  readonly speed: RotationalSpeed;
  /** total temperature before it [K], within the gas's span */
  readonly temperature: Temperature;
  /** total pressure before over static pressure after it [–], 1 or above */
  readonly expansionRatio: Ratio;
  /** the exhaust gas [–] */
  readonly gas: Gas;
}

/** What a turbine makes of its gas. */
export interface TurbineWork {
  /** work taken from each kilogram, negative where the wheel outruns its gas [J/kg] */
  readonly specificWork: number;
  /** ideal drop of enthalpy [J/kg] */
  readonly idealDrop: number;
  /** tip speed over spouting velocity [–]; infinite without expansion */
  readonly speedRatio: Ratio;
  /** actual over ideal work [–]; what is left of the peak at this speed ratio */
  readonly efficiency: Fraction;
}

/**
 * Work of a radial turbine [J/kg]: η Δhₛ, η = η_max (1 − ((ν − ν_o)/ν_o)²), ν = U/√(2 Δhₛ), Δhₛ with variable specific heat.
 * A parabola through standstill and its peak: a shape, not a law.
 *
 * @param turbine wheel, peak and its speed ratio [m, –]
 * @param drop speed, temperature, expansion and gas [rev/s, K, –]
 * @throws RangeError if the temperature or its end after an ideal expansion is outside the gas's span
 * @source N. Watson, M. S. Janota, Turbocharging the Internal Combustion Engine (1982) (shape, from memory)
 * @example turbineWork({ name: "", entryArea: 0.0012, entries: 1, swallowing: "oneNozzle", wheelDiameter: 0.07, peakEfficiency: 0.74, peakSpeedRatio: 0.69 }, { speed: 1500, temperature: 950, expansionRatio: 2, gas: burntGas({ excessAirRatio: 1.6 }) }).efficiency // 0.71
 */
export function turbineWork(
  turbine: TurbineField,
  { speed, temperature, expansionRatio, gas }: TurbineDrop,
): TurbineWork {
  const cold = gas.isentropicTemperature(temperature, (1 / expansionRatio) as Ratio);
  const idealDrop = Math.max(0, gas.enthalpy(temperature) - gas.enthalpy(cold));
  const tip = Math.PI * turbine.wheelDiameter * speed;
  const spouting = Math.sqrt(2 * idealDrop);
  const best = turbine.peakSpeedRatio;
  // η Δhₛ written out, so that it stays a number where the expansion is none
  const specificWork = turbine.peakEfficiency * ((tip * spouting) / best - (tip / best) ** 2 / 2);
  return {
    specificWork,
    idealDrop,
    speedRatio: (tip / spouting) as Ratio,
    efficiency: (specificWork / idealDrop) as Fraction,
  };
}

/**
 * Passes when a turbine's numbers make sense.
 *
 * @param turbine areas, wheel and efficiency [m², m, –]
 * @throws RangeError that names the number
 */
export function requireTurbine(turbine: TurbineField): void {
  requirePositive(`turbine ${turbine.name}: entryArea`, turbine.entryArea, "m²");
  requireWithin(`turbine ${turbine.name}: entries`, turbine.entries, [1, 2]);
  requirePositive(`turbine ${turbine.name}: wheelDiameter`, turbine.wheelDiameter, "m");
  requireWithin(`turbine ${turbine.name}: peakEfficiency`, turbine.peakEfficiency, [0.3, 0.9]);
  requireWithin(`turbine ${turbine.name}: peakSpeedRatio`, turbine.peakSpeedRatio, [0.4, 0.9]);
}
