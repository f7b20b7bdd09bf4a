import { Worker } from "node:worker_threads";
import { type Measured, timingOf } from "./measure";
import { scalarCount, scalarsInto, scattered, type Subject, steadyRandom } from "./subject";

/** What a worker is to do, and from where it takes the graph. */
export interface SampleTask {
  /** Address of a module with a function `subject()`. */
  readonly module: string;
  readonly seed: number;
  readonly count: number;
}

/** Runs the graph on scattered inputs, and gives every number of every sample in one row. */
export function sampled(subject: Subject, seed: number, count: number): Float64Array {
  const width = scalarCount(subject);
  const results = new Float64Array(width * count);
  const random = steadyRandom(seed);
  for (let sample = 0; sample < count; sample++) {
    scalarsInto(subject, subject.program.run(scattered(subject, random)), results, sample * width);
  }
  return results;
}

/** How many samples are run in one thread, and in two workers together. */
export interface SampleCounts {
  readonly alone: number;
  readonly inWorkers: number;
}

/** An uncertainty run of the whole graph: in one thread, and in two that have loaded it before. */
export async function sampleLines(
  subject: Subject,
  module: string,
  { alone: count, inWorkers }: SampleCounts,
): Promise<readonly Measured[]> {
  const start = performance.now();
  const alone = sampled(subject, 1, count);
  const single = performance.now() - start;
  const answered = alone.filter((value) => !Number.isNaN(value)).length;
  const note = `${count} samples, ${((100 * answered) / alone.length).toFixed(1)} % of their numbers answered`;

  const launch = performance.now();
  const workers = [1, 2].map(() => sampleWorker());
  try {
    const half = Math.ceil(inWorkers / 2);
    // The first, small task loads the modules and is told apart from the run.
    await Promise.all(workers.map((worker, i) => answerOf(worker, { module, seed: i + 1, count: 1 })));
    const ready = performance.now();
    const results = await Promise.all(
      workers.map((worker, i) => answerOf(worker, { module, seed: i + 1, count: half })),
    );
    const done = performance.now();
    if (!sameStart(results[0]!, alone))
      throw new Error("sampleLines: the worker's samples differ from those of this thread");
    return [
      { what: "Uncertainty run, one thread", timing: timingOf([single]), note },
      {
        what: "Uncertainty run, two workers",
        timing: timingOf([done - ready]),
        budget: 2000,
        note: `${2 * half} samples`,
      },
      { what: "Two workers ready to run", timing: timingOf([ready - launch]), note: "modules loaded through tsx" },
    ];
  } finally {
    await Promise.all(workers.map((worker) => worker.terminate()));
  }
}

function sampleWorker(): Worker {
  return new Worker(new URL("./sampleWorkerStart.mjs", import.meta.url));
}

function answerOf(worker: Worker, task: SampleTask): Promise<Float64Array> {
  return new Promise((resolve, reject) => {
    worker.once("message", resolve);
    worker.once("error", reject);
    worker.postMessage(task);
  });
}

/** Whether two rows begin alike, as far as both go. */
function sameStart(a: Float64Array, b: Float64Array): boolean {
  const length = Math.min(a.length, b.length);
  for (let i = 0; i < length; i++) if (!Object.is(a[i], b[i])) return false;
  return length > 0;
}
