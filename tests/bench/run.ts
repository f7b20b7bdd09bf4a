/** The bench: budgets of the design beside what this machine measures. `npm run bench` */
import { cpus, loadavg } from "node:os";
import { bundleReport } from "./bundle";
import { costliestLines } from "./costliest";
import { demandLines } from "./demand";
import { evaluationLines } from "./evaluation";
import { matchedLines } from "./matched";
import { subject } from "./notebookSubject";
import { pageLines } from "./page";
import { peerLines, ratiosOf } from "./peers";
import { sampleLines } from "./samples";
import { scalingLines } from "./scaling";
import { withServedPage } from "./servedPage";
import { tableOf } from "./table";

const cores = cpus();
const load = loadavg()[0]!;
console.log(`Node ${process.versions.node}, ${cores.length} cores, ${cores[0]?.model ?? "unknown processor"}`);
console.log(
  `Load before the start: ${load.toFixed(1)}${load > 0.5 ? "; other programs run, so that times are too long" : ""}\n`,
);

const notebook = subject();
console.log(
  tableOf([
    ...evaluationLines(notebook, 400),
    ...costliestLines(notebook, 100),
    ...demandLines(400),
    ...matchedLines(400),
    ...scalingLines(400),
  ]),
  "\n",
);

const peers = peerLines(5000);
console.log(tableOf(peers));
console.log(ratiosOf(peers), "\n");

const module = new URL("./notebookSubject.ts", import.meta.url).href;
console.log(tableOf(await sampleLines(notebook, module, { alone: 1000, inWorkers: 10_000 })), "\n");

await withServedPage(async (address, browser) => {
  console.log(await bundleReport(address, browser), "\n");
  console.log(tableOf(await pageLines(address, browser, 300)));
});
