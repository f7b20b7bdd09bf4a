import { compile } from "../lib/graph";
import { build } from "../tests/site/build";
import { graph } from "../tests/site/fixture";
import { sheets } from "../tests/site/sheets";
import { mountPage } from "./page";

mountPage(document.getElementById("page")!, {
  sheets,
  graph,
  program: compile(graph),
  build,
  files: { read: () => ({ ok: false, message: "" }), write: () => "" },
});
