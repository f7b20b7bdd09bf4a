/** Solves many random builds and says how they fared: `npx tsx tests/lib/charge/manyBuilds.ts 20000 1` */
import { operatingPoint } from "../../../lib/charge";
import type { RotationalSpeed } from "../../../lib/quantity";
import { randomCase } from "./randomOperatingBuild";

const [count = 20_000, first = 1] = process.argv.slice(2).map(Number);
const fared = new Map<string, number>();
const examples = new Map<string, number>();
let worst = 0;
let iterations = 0;
let closed = 0;
for (let seed = first; seed < first + count; seed++) {
  const { build, engineSpeed, load, arrangement } = randomCase(seed);
  let outcome: string;
  try {
    const { convergence } = operatingPoint(build, { engineSpeed: engineSpeed as RotationalSpeed, load });
    worst = Math.max(
      worst,
      convergence.residual,
      Math.abs(convergence.massResidual),
      Math.abs(convergence.energyResidual),
    );
    iterations += convergence.iterations;
    closed++;
    outcome = "closed";
  } catch (error) {
    if (!(error instanceof RangeError)) throw error;
    outcome = error.message.replace(/-?\d+(?:\.\d+)?(?:e[+-]?\d+)?/g, "#");
  }
  const line = `${arrangement}: ${outcome}`;
  fared.set(line, (fared.get(line) ?? 0) + 1);
  if (!examples.has(line)) examples.set(line, seed);
}
for (const [line, times] of [...fared].sort())
  console.log(String(times).padStart(7), line, `(first: ${examples.get(line)})`);
console.log(
  `${closed} of ${count} closed; worst residual ${worst.toExponential(1)}; ${(iterations / closed).toFixed(1)} steps on average`,
);
