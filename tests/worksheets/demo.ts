import { readFileSync } from "node:fs";
import { type Build, inputsOf } from "../../worksheets/build/build";
import { readBuild } from "../../worksheets/build/file";
import { graph, program } from "../../worksheets/model";

/** The text of the demo build's file. */
export const demoText = readFileSync(new URL("../../worksheets/demo/hollowfell.json", import.meta.url), "utf8");

const read = readBuild(demoText, graph);
if (!read.ok) throw new Error(read.message);

export const demoNotices = read.notices;
export const demo: Build = read.build;
export const demoInstallations = ["vehicle", "test-cell", "boat"] as const;

/** The demo build, evaluated in one of its installations. */
export function demoIn(installation: (typeof demoInstallations)[number]) {
  return program.run(inputsOf(demo, installation));
}
