import { compile } from "../../lib/graph";
import { airDemand, declared } from "../lib/graph/fixture";
import { type BareInputs, bareAirDemand } from "./bareChain";
import { type Measured, timed } from "./measure";
import { spreadsheetChain } from "./spreadsheetChain";

const program = compile(airDemand);

/**
 * One chain of 20 formulas four ways. One run is one change of the rated power, with every result read after it.
 *
 * @throws Error when the ways do not agree: the graph and the function to the last bit, the spreadsheet to 1e-9
 */
export function peerLines(runs: number): readonly Measured[] {
  const inputs = declared as unknown as BareInputs;
  const sheet = spreadsheetChain(inputs);
  const powers = Array.from({ length: 64 }, (_, i) => inputs.ratedPower * (1 + i / 200));
  const power = (run: number) => powers[run % powers.length]!;
  for (const ratedPower of powers.slice(0, 8)) requireAgreement(ratedPower, inputs, sheet);

  const base = program.run(declared);
  return [
    {
      what: "Chain as one bare function",
      timing: timed((run) => bareAirDemand({ ...inputs, ratedPower: power(run) }), runs),
    },
    {
      what: "Chain as a compiled graph, all of it",
      timing: timed((run) => program.run({ ...declared, ratedPower: power(run) }).values, runs),
    },
    {
      what: "Chain as a compiled graph, what moved",
      timing: timed((run) => program.rerun(base, { ratedPower: power(run) }).evaluation.values, runs),
    },
    {
      what: "Chain in a spreadsheet engine",
      timing: timed(
        (run) => {
          sheet.setPower(power(run));
          return sheet.read();
        },
        Math.ceil(runs / 10),
      ),
      note: "HyperFormula 3.5.0",
    },
  ];
}

/** What the graph costs beside the others: medians over the bare function, and of the spreadsheet over the graph. */
export function ratiosOf([bare, whole, moved, sheet]: readonly Measured[]): string {
  const times = (a: Measured | undefined, b: Measured | undefined) => (a!.timing.p50 / b!.timing.p50).toPrecision(2);
  return (
    `The compiled graph takes ${times(whole, bare)} times as long as the bare function (what moved: ${times(moved, bare)} times); ` +
    `the spreadsheet engine takes ${times(sheet, whole)} times as long as the compiled graph.`
  );
}

function requireAgreement(ratedPower: number, inputs: BareInputs, sheet: ReturnType<typeof spreadsheetChain>): void {
  const at = program.run({ ...declared, ratedPower });
  const bare = bareAirDemand({ ...inputs, ratedPower }) as Readonly<Record<string, unknown>>;
  sheet.setPower(ratedPower);
  const cells = sheet.read();
  for (const cell of airDemand.cells) {
    const value = at.get(cell);
    if (cell.kind === undefined) continue;
    if (!Object.is(bare[cell.key], value))
      throw new Error(`peers: ${cell.key} is ${value} in the graph and ${bare[cell.key]} bare`);
    if (!(Math.abs(cells[cell.key]! / (value as number) - 1) < 1e-9)) {
      throw new Error(`peers: ${cell.key} is ${value} in the graph and ${cells[cell.key]} in the spreadsheet`);
    }
  }
}
