// Node 20 does not take TypeScript for a worker's first file: this one loads what reads it, then the worker itself.
import { register } from "tsx/esm/api";

register();
await import("./sampleWorker.ts");
