import { type Cell, cell, compile, graphOf, input, type Ref } from "../../lib/graph";
import type { Power } from "../../lib/quantity";
import { type Measured, timed } from "./measure";

const first = input("first", {
  label: "First",
  kind: "power",
  value: 1 as Power,
  span: [0 as Power, 10 as Power],
  step: 1,
});

/** Whether cost grows in line with the number of cells: chains of one length and of four times that. */
export function scalingLines(runs: number, shortest = 100): readonly Measured[] {
  return [shortest, 4 * shortest, 16 * shortest].map((length) => {
    const { run } = compile(graphOf([first, ...chain(length)]));
    const timing = timed(() => run({ first: 1 }), runs);
    return { what: `Chain of ${length} cells`, timing, note: `${((1e6 * timing.p50) / length).toFixed(0)} ns a cell` };
  });
}

/** Cells that each add one to the one before. */
function chain(length: number): readonly Cell[] {
  const cells: Cell[] = [];
  let before: Ref<Power> = first;
  for (let i = 0; i < length; i++) {
    const next = cell(`cell${i}`, {
      label: `Cell ${i}`,
      kind: "power",
      symbol: "P",
      from: { before },
      compute: ({ before }) => (before + 1) as Power,
      formula: "P + 1",
      source: "definition",
    });
    cells.push(next);
    before = next;
  }
  return cells;
}
