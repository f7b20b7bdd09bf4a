import { sheets } from "../worksheets";
import { ambientPressure } from "../worksheets/brief/cells";
import { readBuild, writeBuild } from "../worksheets/build/file";
import demo from "../worksheets/demo/hollowfell.json?raw";
import { graph, program } from "../worksheets/model";
import { basesOf } from "./keep";
import { keepOffline } from "./offline";
import { mountPage } from "./page";

const read = readBuild(demo, graph);
if (!read.ok) throw new Error(`the demo build cannot be read: ${read.message}`);

const keeping = mountPage(document.getElementById("page")!, {
  sheets,
  graph,
  program,
  build: read.build,
  barometer: ambientPressure,
  bases: basesOf(read.build, graph),
  files: { read: (text) => readBuild(text, graph), write: (build) => writeBuild(build, graph) },
});

void keeping.start();
if (import.meta.env.PROD) void keepOffline(keeping.strip);
