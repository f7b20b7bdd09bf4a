import type { Graph, InputValues } from "../../lib/graph";

/** The same engine somewhere else: a test cell, a vehicle, a boat. */
export interface Installation {
  readonly key: string;
  readonly label: string;
  readonly note: string;
  /** Values of its own, by input key, in SI; every other input is shared. */
  readonly own: InputValues;
}

/** Measured values by installation and cell key, in SI. */
export type Measured = Readonly<Record<string, Readonly<Record<string, number>>>>;

/** One engine and its installations. */
export interface Build {
  readonly name: string;
  readonly note: string;
  /** A value for every input, in SI. */
  readonly shared: InputValues;
  /** At least one. */
  readonly installations: readonly Installation[];
  /** What was measured on the engine, to stand beside what is predicted; absent where nothing was. */
  readonly measured?: Measured;
  /** Fields of the file that this version does not know; written back as they came. */
  readonly unknown: Readonly<Record<string, unknown>>;
}

/** Every input's value in one installation. @throws RangeError when the build has no such installation */
export function inputsOf(build: Build, installation: string): InputValues {
  return { ...build.shared, ...installationOf(build, installation).own };
}

/** The installation of that key. @throws RangeError naming those there are */
export function installationOf(build: Build, key: string): Installation {
  const found = build.installations.find((installation) => installation.key === key);
  if (found) return found;
  const known = build.installations.map((installation) => installation.key).join(", ");
  throw new RangeError(`installation: "${key}" is not in this build; it has ${known}`);
}

/**
 * The build after one input was set while an installation is shown: its own value if it has one, else the shared value.
 */
export function withInput(build: Build, installation: string, key: string, value: unknown): Build {
  if (!(key in installationOf(build, installation).own)) return { ...build, shared: { ...build.shared, [key]: value } };
  return withOwn(build, installation, (own) => ({ ...own, [key]: value }));
}

/** The build after an input got a value of its own in an installation, starting from the one in force. */
export function separated(build: Build, installation: string, key: string): Build {
  return withOwn(build, installation, (own) => ({ [key]: build.shared[key], ...own }));
}

/** The build after an installation gave up its own value of an input and follows the shared one again. */
export function rejoined(build: Build, installation: string, key: string): Build {
  return withOwn(build, installation, ({ [key]: _dropped, ...rest }) => rest);
}

/** The build after a value was measured in an installation, or taken away again. */
export function withMeasured(build: Build, installation: string, key: string, value: number | undefined): Build {
  installationOf(build, installation);
  const { [key]: _old, ...others } = build.measured?.[installation] ?? {};
  const here = value === undefined ? others : { ...others, [key]: value };
  const { [installation]: _all, ...elsewhere } = build.measured ?? {};
  const measured = Object.keys(here).length > 0 ? { ...elsewhere, [installation]: here } : elsewhere;
  const { measured: _before, ...rest } = build;
  return Object.keys(measured).length > 0 ? { ...rest, measured } : rest;
}

/** The values that a new build starts from, as the inputs declare them. */
export function declaredValues(graph: Graph): InputValues {
  return Object.fromEntries(graph.inputs.map((input) => [input.key, input.value]));
}

function withOwn(build: Build, key: string, change: (own: InputValues) => InputValues): Build {
  const installations = build.installations.map((installation) =>
    installation.key === key ? { ...installation, own: change(installation.own) } : installation,
  );
  return { ...build, installations };
}
