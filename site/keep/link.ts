import * as v from "valibot";
import type { Graph } from "../../lib/graph";
import type { Build } from "../../worksheets/build/build";
import { readBuild, writeBuild } from "../../worksheets/build/file";
import { parsedJson } from "../../worksheets/build/json";
import { described, isObject, stepped, Unreadable } from "../../worksheets/build/unreadable";
import type { UnitChoice } from "../state";
import { type BaseName, type Bases, baseBeside } from "./bases";
import { codeMark } from "./code";
import { type Difference, differenceOf, withDifference } from "./difference";
import { mostSigns, packed, unpacked } from "./packed";
import { readUnits } from "./unit-choice";

/** What the page shows: what a link carries. */
export interface Shown {
  readonly build: Build;
  /** Key of the installation. */
  readonly installation: string;
  readonly units: UnitChoice;
}

/** What a link or record opens. */
export interface Opening extends Shown {
  /** What "changed" is measured from. */
  readonly opened: Build;
  /** What the reader should know. */
  readonly notices: readonly string[];
}

interface Place {
  readonly graph: Graph;
  readonly bases: Bases;
}

/**
 * The hash of an address that opens what is shown: only what differs from the nearer base. Empty where nothing does.
 *
 * @throws Unreadable when it is longer than a link may be
 */
export async function hashOf({ build, installation, units }: Shown, { graph, bases }: Place): Promise<string> {
  const file = fileOf(build, graph);
  const choices = Object.entries(bases).map(([from, base]) => {
    const difference = differenceOf(fileOf(base, graph), file);
    const view = {
      ...(installation !== build.installations[0]!.key && { installation }),
      ...((units.system !== "SI" || Object.keys(units.own).length > 0) && { units }),
    };
    return { from, text: JSON.stringify({ from, of: signOf(writeBuild(base, graph)), ...difference, ...view }), bare: isEmpty({ ...difference, ...view }) };
  });
  if (choices.some(({ from, bare }) => from === "demo" && bare)) return "";
  const shortest = choices.reduce((best, each) => (each.text.length < best.text.length ? each : best));
  const code = await packed(shortest.text);
  if (code.length > mostSigns) {
    throw new Unreadable("link", `it would be ${(code.length / 1000).toFixed(0)} kB long; a link may hold at most ${mostSigns / 1000} kB`);
  }
  return `#${codeMark}${code}`;
}

/** What a link's code opens, read as strictly as a file. @throws Unreadable when it cannot be */
export async function readCode(code: string, { graph, bases }: Place): Promise<Opening> {
  const { from, of, installation, units, ...difference } = formOf(parsedJson(await unpacked(code)));
  const base = bases[from];
  const read = readBuild(JSON.stringify(withDifference(fileOf(base, graph), difference as Difference)), graph);
  if (!read.ok) throw new Unreadable("link", read.message);
  const { build } = read;
  const shown = installation ?? build.installations[0]!.key;
  if (!build.installations.some(({ key }) => key === shown)) {
    throw new Unreadable("link", `installation: ${described(shown)} is not in this build`);
  }
  return {
    build,
    opened: baseBeside(base, build),
    installation: shown,
    units: readUnits(units, graph),
    notices: of === signOf(writeBuild(base, graph)) ? read.notices : [...read.notices, otherVersion(from)],
  };
}

const text = v.string("it must be a text");
const fields = v.custom<Readonly<Record<string, unknown>>>(isObject, "it must be an object of inputs and values");

const form = v.object({
  from: v.picklist(["demo", "declared"], 'it must be "demo" or "declared"'),
  of: text,
  name: v.optional(text),
  note: v.optional(text),
  inputs: v.optional(fields),
  installations: v.optional(
    v.array(
      v.object({ key: text, label: v.optional(text), note: v.optional(text), inputs: v.optional(fields) }, "it must be an object"),
      "it must be a list of installations",
    ),
  ),
  measured: v.optional(fields),
  installation: v.optional(text),
  units: v.unknown(),
});

function formOf(raw: unknown): v.InferOutput<typeof form> {
  if (!isObject(raw)) throw new Unreadable("link", `it holds ${described(raw)}; it must hold an object`);
  const read = v.safeParse(form, { units: undefined, ...raw });
  if (read.success) return read.output;
  const { path, input, message } = read.issues[0];
  const place = (path ?? []).reduce((sofar, { key }) => stepped(sofar, key as string | number), "");
  throw new Unreadable("link", `${place}: ${input === undefined ? "it is missing" : `it is ${described(input)}; ${message}`}`);
}

function otherVersion(from: BaseName): string {
  const which = from === "demo" ? "the demo" : "the declared values";
  return `The link was made where ${which} differed from here: values it does not name may not be those of its sender.`;
}

/** A build as its file's fields. */
function fileOf(build: Build, graph: Graph): Parameters<typeof differenceOf>[0] {
  return JSON.parse(writeBuild(build, graph));
}

/** A short sign of a text, by which another is told from it (FNV-1a). */
function signOf(text: string): string {
  let sum = 0x811c9dc5;
  for (let i = 0; i < text.length; i++) sum = Math.imul(sum ^ text.charCodeAt(i), 0x01000193) >>> 0;
  return sum.toString(36);
}

function isEmpty(value: object): boolean {
  return Object.keys(value).length === 0;
}
