import type { Graph } from "../../lib/graph";
import { type Build, declaredValues } from "../../worksheets/build/build";

export type BaseName = "demo" | "declared";

/** The builds that every copy of the page has, from which a link tells what differs. */
export type Bases = Readonly<Record<BaseName, Build>>;

export function basesOf(demo: Build, graph: Graph): Bases {
  return { demo, declared: newBuild(graph) };
}

/** A build from the values that the inputs declare. */
export function newBuild(graph: Graph): Build {
  return {
    name: "New build",
    note: "",
    shared: declaredValues(graph),
    installations: [{ key: "engine", label: "Engine", note: "", own: {} }],
    unknown: {},
  };
}

/**
 * What a build's changes are measured from: the base, with the build's installations. An installation that the base
 * does not have counts as it is.
 */
export function baseBeside(base: Build, build: Build): Build {
  const installations = build.installations.map((each) => base.installations.find(({ key }) => key === each.key) ?? each);
  return { ...base, name: build.name, note: build.note, installations };
}
