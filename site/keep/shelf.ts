import { type Build, installationOf } from "../../worksheets/build/build";
import { Unreadable } from "../../worksheets/build/unreadable";
import type { Graph } from "../../lib/graph";
import type { UnitChoice } from "../state";
import { baseBeside } from "./bases";
import type { BuildFiles } from "./files";
import type { Opening } from "./link";
import type { KeptBuild } from "./record";
import { readUnits } from "./unit-choice";

/** Most builds without a name of their own that are kept. */
export const mostDrafts = 20;

/** What a record opens, read as strictly as a file; or why it cannot be. */
export function openingOf(record: KeptBuild, files: BuildFiles, graph: Graph): Opening | { readonly message: string } {
  const read = files.read(record.text);
  if (!read.ok) return { message: read.message };
  const { build, notices } = read;
  const opened = files.read(record.openedText);
  const shown = build.installations.find(({ key }) => key === record.installation) ?? build.installations[0]!;
  return {
    build,
    opened: opened.ok ? baseBeside(opened.build, build) : build,
    installation: installationOf(build, shown.key).key,
    units: unitsOr(record.units, graph),
    notices,
  };
}

/** The record with its build under another name; undefined where it cannot be read. */
export function renamed(record: KeptBuild, name: string, files: BuildFiles): KeptBuild | undefined {
  const read = files.read(record.text);
  if (!read.ok) return undefined;
  const build: Build = { ...read.build, name };
  return { ...record, name, named: true, text: files.write(build) };
}

/** Records without a name that give way: all but the newest, and none that is open in a tab. */
export function surplus(records: readonly KeptBuild[], open: ReadonlySet<string>): readonly KeptBuild[] {
  const drafts = records.filter(({ named, writer }) => !named && !open.has(writer));
  return drafts.slice(mostDrafts);
}

function unitsOr(units: unknown, graph: Graph): UnitChoice {
  try {
    return readUnits(units, graph);
  } catch (error) {
    if (error instanceof Unreadable) return { system: "SI", own: {} };
    throw error;
  }
}
