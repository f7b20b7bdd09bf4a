import demoText from "../worksheets/demo/hollowfell.json?raw";
import { readBuild, writeBuild } from "../worksheets/build/file";
import { graph, nodesBySheet, program } from "../worksheets/model";
import { lines, type Sheet } from "../worksheets/sheet";
import { mountPage } from "./page";

const sheets: readonly Sheet[] = Object.entries(nodesBySheet).map(([key, nodes]) => ({
  key,
  title: key,
  answers: "?",
  blocks: lines(...nodes),
}));
const read = readBuild(demoText, graph);
if (!read.ok) throw new Error(read.message);

mountPage(document.getElementById("page")!, {
  sheets,
  graph,
  program,
  build: read.build,
  files: { read: (text) => readBuild(text, graph), write: (build) => writeBuild(build, graph) },
});
