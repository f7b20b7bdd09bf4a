import type { Span } from "../../quantity/guard";
import type { Fraction, Length, MassFlow, Ratio, RotationalSpeed, SpecificEnergy } from "../../quantity/kinds";
import type { MapReference } from "../correctedFlow";

/** One point of a compressor's field. */
export interface CompressorPoint {
  /** total outlet over total inlet pressure [–] */
  readonly pressureRatio: Ratio;
  /** work put into each kilogram, brought to the reference temperature [J/kg] */
  readonly correctedWork: SpecificEnergy;
  /** ideal over actual work [–]; at or below 0 where the wheel is driven so far beyond choke that it throttles */
  readonly efficiency: Fraction;
  /** whether the point lies outside what the field knows: beyond its speeds, left of surge or right of choke */
  readonly extrapolated: boolean;
}

/** How far a field may be off, as one standard deviation of its source. */
export interface FieldUncertainty {
  /** of the efficiency [–] */
  readonly efficiency: Fraction;
  /** of the pressure ratio less 1, relative [–] */
  readonly pressureRise: Fraction;
  /** of the surge flow, relative [–] */
  readonly surgeFlow: Fraction;
  /** where these come from */
  readonly basis: string;
}

/**
 * What a compressor does at a corrected flow and speed, whether it was measured or estimated. Flow and speed are those
 * of one wheel, at the reference state. The field answers everywhere, smoothly, so that a solver may cross its edges;
 * outside them it says `extrapolated`.
 */
export interface CompressorField {
  readonly name: string;
  /** inlet state to which flows and speeds are referred */
  readonly reference: MapReference;
  /** diameter of the wheel at its tip [m]; undefined where nobody measured it */
  readonly tipDiameter: Length | undefined;
  /** lowest and highest corrected speed that the field knows [rev/s] */
  readonly speedSpan: Span;
  readonly uncertainty: FieldUncertainty;
  /** the point at a corrected flow [kg/s] and corrected speed [rev/s], both above 0 */
  at(correctedFlow: MassFlow, correctedSpeed: RotationalSpeed): CompressorPoint;
  /** corrected flow at which the compressor surges [kg/s] */
  surgeFlow(correctedSpeed: RotationalSpeed): MassFlow;
  /** corrected flow beyond which the compressor chokes [kg/s] */
  chokeFlow(correctedSpeed: RotationalSpeed): MassFlow;
}
