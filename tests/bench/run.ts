/** The bench: budgets of the design beside what this machine measures. `npm run bench` */
import { cpus } from "node:os";
import { bundleReport } from "./bundle";
import { demandLines } from "./demand";
import { evaluationLines } from "./evaluation";
import { pageLines } from "./page";
import { peerLines, ratiosOf } from "./peers";
import { sampleLines } from "./samples";
import { withServedPage } from "./servedPage";
import { subject } from "./notebookSubject";
import { tableOf } from "./table";

const notebook = subject();
const cores = cpus();
console.log(`Node ${process.versions.node}, ${cores.length} cores, ${cores[0]?.model ?? "unknown processor"}\n`);

console.log(tableOf([...evaluationLines(notebook, 400), ...demandLines(200)]), "\n");
const module = new URL("./notebookSubject.ts", import.meta.url).href;
console.log(tableOf(await sampleLines(notebook, module, 10_000)), "\n");

const peers = peerLines(5000);
console.log(tableOf(peers));
console.log(ratiosOf(peers), "\n");

await withServedPage(async (address, browser) => {
  console.log(await bundleReport(address, browser), "\n");
  console.log(tableOf(await pageLines(address, browser, 300)));
});
