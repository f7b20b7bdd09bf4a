import { isObject } from "../../worksheets/build/unreadable";

type Fields = Readonly<Record<string, unknown>>;

/** What of a build file differs from another; what is absent is the same. */
export interface Difference {
  readonly name?: string;
  readonly note?: string;
  readonly inputs?: Fields;
  /** Every installation in order, each with what differs from that of the same key. */
  readonly installations?: readonly InstallationDifference[];
  /** All that was measured, by installation and line; empty where what the other held was taken away. */
  readonly measured?: Fields;
}

export interface InstallationDifference {
  readonly key: string;
  readonly label?: string;
  readonly note?: string;
  /** Null where it gave up its own value. */
  readonly inputs?: Fields;
}

/** The parts of a file that a difference can tell. */
interface File {
  readonly name: string;
  readonly note: string;
  readonly inputs: Fields;
  readonly installations: readonly Installation[];
  readonly measured?: Fields;
}

interface Installation {
  readonly key: string;
  readonly label: string;
  readonly note: string;
  readonly inputs: Fields;
}

/** What of a file differs from a base; empty where nothing does. Fields that no build has are left out. */
export function differenceOf(base: File, file: File): Difference {
  const inputs = changed(base.inputs, file.inputs);
  const alike = sameKeys(base, file) && file.installations.every((each, i) => isBare(ofInstallation(base.installations[i], each)));
  return {
    ...(file.name !== base.name && { name: file.name }),
    ...(file.note !== base.note && { note: file.note }),
    ...(Object.keys(inputs).length > 0 && { inputs }),
    ...(!alike && {
      installations: file.installations.map((each) => ofInstallation(base.installations.find(({ key }) => key === each.key), each)),
    }),
    ...(!same(base.measured, file.measured) && { measured: file.measured ?? {} }),
  };
}

/** The file that differs from a base in this way. */
export function withDifference(base: File, { installations, inputs, ...texts }: Difference): Fields {
  return {
    ...base,
    ...texts,
    inputs: patched(base.inputs, inputs),
    installations:
      installations?.map(({ inputs, ...rest }) => {
        const before = base.installations.find(({ key }) => key === rest.key);
        return { ...before, ...rest, inputs: patched(before?.inputs ?? {}, inputs) };
      }) ?? base.installations,
  };
}

function ofInstallation(base: Installation | undefined, { key, label, note, inputs }: Installation): InstallationDifference {
  const own = changed(base?.inputs ?? {}, inputs);
  return {
    key,
    ...(label !== base?.label && { label }),
    ...(note !== (base?.note ?? "") && { note }),
    ...(Object.keys(own).length > 0 && { inputs: own }),
  };
}

function changed(base: Fields, fields: Fields): Fields {
  const differing = Object.entries(fields).filter(([name, value]) => !Object.hasOwn(base, name) || !same(base[name], value));
  const gone = Object.keys(base).filter((name) => !Object.hasOwn(fields, name));
  return Object.fromEntries([...differing, ...gone.map((name) => [name, null] as const)]);
}

function patched(base: Fields, changes: unknown): unknown {
  if (changes === undefined) return base;
  // Anything else is left for the reading of files to refuse.
  if (!isObject(changes)) return changes;
  return Object.fromEntries(Object.entries({ ...base, ...changes }).filter(([, value]) => value !== null));
}

function isBare(difference: InstallationDifference): boolean {
  return Object.keys(difference).length === 1;
}

function sameKeys(a: File, b: File): boolean {
  return a.installations.length === b.installations.length && a.installations.every(({ key }, i) => key === b.installations[i]!.key);
}

function same(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
