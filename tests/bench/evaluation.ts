import type { QuantityInput } from "../../lib/graph";
import { type Measured, timed } from "./measure";
import type { Subject } from "./subject";

/** The compiled graph: all of it, what follows from one input, and a sweep over speed. */
export function evaluationLines(subject: Subject, runs: number): readonly Measured[] {
  const { program, inputs, graph } = subject;
  const cells = `${graph.cells.length} cells`;
  return [
    {
      what: "What follows from one input, each in turn",
      timing: partial(subject, runs),
      note: `${quantities(subject).length} inputs`,
    },
    {
      what: "Sweep of the graph over 60 speeds",
      timing: sweep(subject, Math.ceil(runs / 10)),
      note: cells,
    },
    { what: "Whole graph, compiled", timing: timed(() => program.run(inputs), runs), budget: 1, note: cells },
  ];
}

function partial(subject: Subject, runs: number) {
  const { program, inputs } = subject;
  const movable = quantities(subject);
  const base = program.run(inputs);
  return timed((run) => {
    const input = movable[run % movable.length]!;
    return program.rerun(base, { [input.key]: stepped(input, inputs[input.key] as number) });
  }, runs);
}

function sweep({ program, inputs, graph, speedKey }: Subject, runs: number) {
  const base = program.run(inputs);
  const { span } = graph.inputs.find((input) => input.key === speedKey) as QuantityInput;
  const rated = inputs[speedKey] as number;
  const slowest = Math.max(span[0], rated / 2);
  const speeds = Array.from({ length: 60 }, (_, i) => slowest + ((rated - slowest) * i) / 59);
  return timed(() => speeds.map((speed) => program.rerun(base, { [speedKey]: speed }).evaluation), runs);
}

function quantities({ graph }: Subject): readonly QuantityInput[] {
  return graph.inputs.filter((input) => input.type === "quantity");
}

/** One step of the input's slider, up or where there is no room down. */
function stepped({ span, step }: QuantityInput, value: number): number {
  return value + step <= span[1] ? value + step : value - step;
}
