import { sheets } from "../worksheets";
import { readBuild, writeBuild } from "../worksheets/build/file";
import demo from "../worksheets/demo/hollowfell.json?raw";
import { graph, program } from "../worksheets/model";
import { mountPage } from "./page";

const read = readBuild(demo, graph);
if (!read.ok) throw new Error(`the demo build cannot be read: ${read.message}`);

mountPage(document.getElementById("page")!, {
  sheets,
  graph,
  program,
  build: read.build,
  files: { read: (text) => readBuild(text, graph), write: (build) => writeBuild(build, graph) },
});
