import { version } from "../package.json";
import { sheets } from "../worksheets";
import { ambientPressure } from "../worksheets/brief/cells";
import { readBuild, writeBuild } from "../worksheets/build/file";
import demoAddress from "../worksheets/demo/hollowfell.json?url";
import { graph, program } from "../worksheets/model";
import { basesOf } from "./keep";
import { keepOffline } from "./offline";
import { mountPage } from "./page";

const demo = await fetch(demoAddress);
const read = readBuild(await demo.text(), graph);
if (!read.ok) throw new Error(`the demo build cannot be read: ${read.message}`);

const keeping = mountPage(document.getElementById("page")!, {
  sheets,
  graph,
  program,
  build: read.build,
  barometer: ambientPressure,
  version,
  bases: basesOf(read.build, graph),
  files: { read: (text) => readBuild(text, graph), write: (build) => writeBuild(build, graph) },
});

void keeping.start();
// The server for development has no worker, and its pages must not be kept.
if (!import.meta.hot) void keepOffline(keeping.strip);
