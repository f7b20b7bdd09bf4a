/**
 * Effectiveness of crossflow with both streams unmixed [–], 0 to 1, exact:
 * ε = (1/(C N)) Σₙ P(n+1, N) P(n+1, C N), where P(n+1, x) = 1 − e^(−x) Σₘ₌₀ⁿ xᵐ/m!, n = 0, 1, 2, …
 * Both streams uniform at their inlets and cut into infinitely many channels; no conduction along the walls.
 *
 * @param transferUnits N = UA/Cmin [–], above 0 to 500
 * @param capacityRatio C = Cmin/Cmax [–], above 0 to 1
 * @source Mason, Heat transfer in crossflow, Proc. 2nd US National Congress of Applied Mechanics (1955) (from memory;
 * held against values computed by another library and against a march over the plate)
 */
export function crossflowUnmixedSeries(transferUnits: number, capacityRatio: number): number {
  if (transferUnits < 1e-15) return transferUnits; // nothing has changed yet; and the products below would vanish
  const weakerSide = capacityRatio * transferUnits;
  // The terms fall off faster than geometrically beyond n = N, in a tail as wide as the square root of N.
  const terms = Math.ceil(transferUnits + 9 * Math.sqrt(transferUnits) + 18);
  const stronger = poissonTails(transferUnits, terms);
  const weaker = poissonTails(weakerSide, terms);
  let sum = 0;
  for (let n = terms - 1; n >= 0; n--) sum += stronger[n]! * weaker[n]!;
  return sum / weakerSide;
}

/** P(n+1, x) for n from 0. Added up from the far end, so that small values keep their digits. */
function poissonTails(x: number, terms: number): Float64Array {
  const tails = new Float64Array(terms + 1);
  let share = Math.exp(-x);
  for (let n = 1; n <= terms; n++) {
    share *= x / n;
    tails[n - 1] = share;
  }
  for (let n = terms - 1; n >= 0; n--) tails[n]! += tails[n + 1]!;
  return tails;
}
