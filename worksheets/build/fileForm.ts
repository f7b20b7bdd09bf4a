import * as v from "valibot";
import { described, isObject, stepped, Unreadable } from "./unreadable";

export const fileFormat = "airledger build";
export const fileVersion = 1;

const text = v.string("it must be a text");
/** Names and their values; kept as they came, whatever the names are. */
const fields = v.custom<Readonly<Record<string, unknown>>>(isObject, "it must be an object of inputs and values");

const installation = v.object(
  {
    key: v.pipe(
      text,
      v.regex(/^[A-Za-z][A-Za-z0-9-]{0,39}$/, "it must be a letter and up to 39 letters, digits and hyphens"),
    ),
    label: text,
    note: v.optional(text, ""),
    inputs: v.optional(fields, {}),
  },
  "it must be an object with key, label and inputs",
);

const form = v.object({
  format: v.literal(fileFormat, `it must be "${fileFormat}"`),
  version: v.pipe(
    v.number("it must be a whole number"),
    v.integer("it must be a whole number"),
    v.minValue(1, "it must be 1 or above"),
    v.maxValue(fileVersion, `it must be at most ${fileVersion}, the newest that this airledger reads`),
  ),
  name: text,
  note: v.optional(text, ""),
  inputs: fields,
  measured: v.optional(fields, {}),
  installations: v.pipe(
    v.array(installation, "it must be a list of installations"),
    v.minLength(1, "it must hold at least one installation"),
  ),
});

export type FileForm = v.InferOutput<typeof form>;

/** Fields that the form knows, for finding those it does not. */
export const knownFields = {
  file: new Set(Object.keys(form.entries)),
  installation: new Set(Object.keys(installation.entries)),
} as const;

/**
 * The file's known fields, in their form.
 *
 * @param raw what the JSON stands for
 * @throws Unreadable naming the first field that does not have its form
 */
export function formOf(raw: unknown): FileForm {
  if (!isObject(raw)) throw new Unreadable("file", `it is ${described(raw)}; it must be an object`);
  const read = v.safeParse(form, raw);
  if (!read.success) throw refusal(read.issues[0]);
  const first = new Map<string, number>();
  for (const [index, { key }] of read.output.installations.entries()) {
    const other = first.get(key);
    if (other !== undefined) {
      throw new Unreadable(`installations[${index}].key`, `"${key}" is already the key of installations[${other}]`);
    }
    first.set(key, index);
  }
  return read.output;
}

function refusal({ path, input, message }: v.BaseIssue<unknown>): Unreadable {
  const place = (path ?? []).reduce((sofar, { key }) => stepped(sofar, key as string | number), "");
  return new Unreadable(place, input === undefined ? "it is missing" : `it is ${described(input)}; ${message}`);
}
