import { writeBuild } from "../../../worksheets/build/file";
import type { KeptBuild } from "../../../site/keep/record";
import { build } from "../build";
import { graph } from "../fixture";

/** A record of the fixture's build. */
export function kept(changes: Partial<KeptBuild> = {}): KeptBuild {
  const text = writeBuild(build, graph);
  return {
    id: "a1",
    name: build.name,
    installations: 3,
    time: 1000,
    writer: "tab 1",
    named: false,
    text,
    openedText: text,
    installation: "truck",
    units: { system: "US", own: {} },
    ...changes,
  };
}
