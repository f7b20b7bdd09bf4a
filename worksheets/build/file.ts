import type { Graph, Input, InputValues } from "../../lib/graph";
import type { Build, Installation } from "./build";
import { fileFormat, fileVersion, formOf, knownFields } from "./fileForm";
import { readInput, unknownColumns, writeInput } from "./inputText";
import { parsedJson } from "./json";
import { measurable, readMeasured, writeMeasured } from "./measured";
import { isObject, stepped, Unreadable } from "./unreadable";

type Fields = Readonly<Record<string, unknown>>;

/** A build read from a file, or why it cannot be. */
export type ReadBuild =
  | {
      readonly ok: true;
      readonly build: Build;
      /** What the reader of the file should know: fields kept without being understood, inputs that it left out. */
      readonly notices: readonly string[];
    }
  | {
      readonly ok: false;
      /** One line that begins with the path of the field. */
      readonly message: string;
    };

/** Notices of one sort that are written out; the rest is counted. */
const mostNotices = 20;

/**
 * The build that a file holds.
 *
 * @param text the file's text
 * @param graph whose inputs it is to give values to
 */
export function readBuild(text: string, graph: Graph): ReadBuild {
  try {
    return understood(parsedJson(text), graph);
  } catch (error) {
    if (error instanceof Unreadable) return { ok: false, message: error.message };
    throw error;
  }
}

/**
 * The text of a file that readBuild turns into the same build, every number to its last bit.
 *
 * @param build the build
 * @param graph whose inputs it gives values to
 */
export function writeBuild(build: Build, graph: Graph): string {
  const { inputs, installations, measured, ...unknown } = build.unknown;
  const file = {
    format: fileFormat,
    version: fileVersion,
    name: build.name,
    note: build.note,
    inputs: { ...written(build.shared, graph), ...fieldsOf(inputs) },
    installations: build.installations.map(({ key, label, note, own }) => {
      const { inputs, ...rest } = fieldsOf(fieldsOf(installations), key);
      return { key, label, note, inputs: { ...written(own, graph), ...fieldsOf(inputs) }, ...rest };
    }),
    ...filled("measured", mergedFields(writeMeasured(build, graph), fieldsOf(measured))),
    ...unknown,
  };
  return `${JSON.stringify(file, null, 2)}\n`;
}

function understood(raw: unknown, graph: Graph): ReadBuild {
  const form = formOf(raw);
  const kept: string[] = [];
  const shared = readInputs(form.inputs, graph, "inputs", kept);
  const installations = form.installations.map(({ key, label, note, inputs }, index): Installation => {
    const own = readInputs(inputs, graph, `installations[${index}].inputs`, kept);
    return { key, label, note, own };
  });

  const measured = readMeasured(form.measured, installations.map(({ key }) => key), graph);
  const missing = graph.inputs.filter((input) => !Object.hasOwn(shared, input.key));
  const build: Build = {
    name: form.name,
    note: form.note,
    shared: { ...Object.fromEntries(missing.map((input) => [input.key, input.value])), ...shared },
    installations,
    ...(measured && { measured }),
    unknown: unknownFields(raw as Fields, graph, kept),
  };
  const notices = [
    ...shortened(kept.map((path) => `${path}: not known to this version; it is kept as it is`)),
    ...missing.map((input) => `inputs.${input.key}: not in the file; it takes ${declaredWords(input)}`),
  ];
  return { ok: true, build, notices };
}

function readInputs(fields: Fields, graph: Graph, path: string, kept: string[]): InputValues {
  return Object.fromEntries(
    graph.inputs
      .filter(({ key }) => Object.hasOwn(fields, key))
      .map((input) => {
        const place = stepped(path, input.key);
        const value = readInput(input, fields[input.key], place);
        kept.push(...unknownColumns(input, value).map((column) => stepped(`${place}[]`, column)));
        return [input.key, value];
      }),
  );
}

/** The fields that nothing here knows, in the shape of the file, but installations by key instead of place. */
function unknownFields(file: Fields, graph: Graph, kept: string[]): Fields {
  const inputNames = new Set(graph.inputs.map(({ key }) => key));
  const left = (fields: unknown, known: ReadonlySet<string>, path: string): Fields => {
    const rest = Object.entries(fieldsOf(fields)).filter(([name]) => !known.has(name));
    kept.push(...rest.map(([name]) => stepped(path, name)));
    return Object.fromEntries(rest);
  };
  const top = left(file, knownFields.file, "");
  const inputs = left(file.inputs, inputNames, "inputs");
  const installations = (file.installations as readonly Fields[]).map((fields, index) => {
    const path = `installations[${index}]`;
    const rest = left(fields, knownFields.installation, path);
    return [
      fields.key as string,
      { ...rest, ...filled("inputs", left(fields.inputs, inputNames, `${path}.inputs`)) },
    ] as const;
  });
  const strange = installations.filter(([, fields]) => Object.keys(fields).length > 0);
  const cells = new Set(measurable(graph).map(({ key }) => key));
  const measured = Object.entries(fieldsOf(file.measured))
    .map(([key, fields]) => [key, left(fields, cells, stepped("measured", key))] as const)
    .filter(([, fields]) => Object.keys(fields).length > 0);
  return {
    ...top,
    ...filled("inputs", inputs),
    ...filled("measured", Object.fromEntries(measured)),
    ...filled("installations", Object.fromEntries(strange)),
  };
}

function filled(name: string, fields: Fields): Fields {
  return Object.keys(fields).length > 0 ? { [name]: fields } : {};
}

/** Fields of fields, from two sides that share no names at the bottom. */
function mergedFields(known: Fields, strange: Fields): Fields {
  const names = [...new Set([...Object.keys(known), ...Object.keys(strange)])];
  return Object.fromEntries(names.map((name) => [name, { ...fieldsOf(known, name), ...fieldsOf(strange, name) }]));
}

/** The named fields of what may be an object; none of anything else. */
function fieldsOf(value: unknown, name?: string): Fields {
  if (!isObject(value)) return {};
  if (name === undefined) return value;
  return Object.hasOwn(value, name) ? fieldsOf(value[name]) : {};
}

function written(values: InputValues, graph: Graph): Fields {
  return Object.fromEntries(
    graph.inputs
      .filter(({ key }) => Object.hasOwn(values, key))
      .map((input) => [input.key, writeInput(input, values[input.key])]),
  );
}

function declaredWords(input: Input): string {
  if (input.type === "choice") return `"${input.value}"`;
  const rows = input.type === "table" ? input.value.length : 0;
  return input.type === "table" ? `the ${rows} rows declared` : `${writeInput(input, input.value)}`;
}

function shortened(notices: readonly string[]): readonly string[] {
  const more = notices.length - mostNotices;
  return more > 1 ? [...notices.slice(0, mostNotices), `${more} more fields are kept likewise`] : notices;
}
