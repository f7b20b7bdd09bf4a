import { parentPort } from "node:worker_threads";
import { type SampleTask, sampled } from "./samples";
import type { Subject } from "./subject";

parentPort?.on("message", async ({ module, seed, count }: SampleTask) => {
  const { subject } = (await import(module)) as { subject: () => Subject };
  const results = sampled(subject(), seed, count);
  parentPort?.postMessage(results, [results.buffer as ArrayBuffer]);
});
