import { parseArgs } from "node:util";
import type { Evaluation } from "../../lib/graph";
import type { UnitSystem } from "../../lib/quantity";
import { type Build, type Installation, inputsOf } from "../build/build";
import { readBuild } from "../build/file";
import { plainLine, quoted, Unreadable } from "../build/unreadable";
import type { CommandModel } from "./model";
import { nearestName } from "./nearest";
import { reportFields, reportOf } from "./report";
import { withSettings } from "./settings";
import { type SheetReport, sheetsText } from "./sheetText";

/** What a command leaves behind: its exit code, and what it says on standard output and standard error. */
export interface CommandResult {
  readonly code: 0 | 2;
  readonly out: string;
  readonly err: string;
}

export const help = `Usage: npm run --silent evaluate -- FILE [options]

Prints every cell of a build file, sheet by sheet, with unit and margin.

  --installation NAME       the installation to show, by key or label; the first one if left out
  --set 'input=value unit'  set an input for this run; may be given more than once.
                            One entry of a table: --set 'table.2.column=24', rows counted from 1
  --units SI|US             units to print in; SI if left out
  --json                    print a list of cells in SI instead
  --help                    print this

A cell without an answer is printed with its reason, and the command still ends with code 0.
Wrong arguments, or a file that cannot be read, end with code 2 and one line on standard error.
`;

const options = {
  installation: { type: "string" },
  set: { type: "string", multiple: true },
  units: { type: "string", default: "SI" },
  json: { type: "boolean", default: false },
  help: { type: "boolean", default: false },
} as const;

/**
 * Runs the evaluate command on some worksheets. Never throws on what a user can get wrong.
 *
 * @param model the worksheets
 * @param args the command's arguments
 * @param readFile gives a file's text, or throws
 */
export function evaluateIn(
  model: CommandModel,
  args: readonly string[],
  readFile: (path: string) => string,
): CommandResult {
  try {
    return evaluated(model, args, readFile);
  } catch (error) {
    if (!(error instanceof Unreadable)) throw error;
    return { code: 2, out: "", err: `${error.message}\n` };
  }
}

function evaluated(model: CommandModel, args: readonly string[], readFile: (path: string) => string): CommandResult {
  const { values, positionals } = parsed(args);
  if (values.help) return { code: 0, out: help, err: "" };
  const [file, ...more] = positionals;
  if (file === undefined) throw new Unreadable("FILE", "no build file is named; --help tells how to name one");
  if (more.length > 0) throw new Unreadable("FILE", `there is one too many: ${quoted(more[0]!)}; give one build file`);
  const system = unitSystem(values.units);

  const read = readBuild(textOf(file, readFile), model.graph);
  if (!read.ok) throw new Unreadable(file, read.message);
  const installation = installationNamed(read.build, values.installation);
  const inputs = withSettings(model.graph, inputsOf(read.build, installation.key), values.set ?? []);
  const sheets = sheetReports(model, model.program.run(inputs));

  const err = read.notices.map((notice) => `note: ${plainLine(notice)}\n`).join("");
  if (values.json) {
    const fields = sheets.flatMap(({ reports }) => reports.map(reportFields));
    return { code: 0, out: `${JSON.stringify(fields, null, 2)}\n`, err };
  }
  const title = plainLine(`${read.build.name}, ${installation.label}`);
  return { code: 0, out: `${title}\n\n${sheetsText(sheets, system)}\n`, err };
}

/** What every sheet came to; the limits of one that does not apply are left out. */
function sheetReports({ graph, sheets }: CommandModel, evaluation: Evaluation): readonly SheetReport[] {
  return sheets.map(({ title, cells, tabulations, applies }) => {
    const counts = applies === undefined || evaluation.get(applies.choice) === applies.is;
    const reports = cells.map((cell) => reportOf(cell, evaluation, graph));
    if (counts) return { title, reports, tabulations };
    return { title, aside: applies.otherwise, reports: reports.map((each) => ({ ...each, checks: [] })), tabulations };
  });
}

function parsed(args: readonly string[]) {
  try {
    return parseArgs({ args: [...args], options, allowPositionals: true });
  } catch (error) {
    // The parser's own words name the option; they may run over several sentences, of which the first tells enough.
    const [words = ""] = (error as Error).message.split(/\.\s|\n/);
    throw new Unreadable("arguments", `${words.replace(/\.$/, "")}; --help lists the options`);
  }
}

function unitSystem(name: string): UnitSystem {
  const known = (["SI", "US"] as const).find((system) => system === name.toUpperCase());
  if (known) return known;
  throw new Unreadable("--units", `it is ${quoted(name)}; it must be SI or US`);
}

function textOf(file: string, readFile: (path: string) => string): string {
  try {
    return readFile(file);
  } catch (error) {
    const reasons: Record<string, string> = {
      ENOENT: "there is no such file",
      EISDIR: "it is a folder",
      EACCES: "it may not be read",
    };
    const { code = "", message } = error as NodeJS.ErrnoException;
    throw new Unreadable(file, `it cannot be read: ${reasons[code] ?? message}`);
  }
}

function installationNamed(build: Build, name: string | undefined): Installation {
  if (name === undefined) return build.installations[0]!;
  const lower = name.toLowerCase();
  const found =
    build.installations.find(({ key }) => key === name) ??
    build.installations.find(({ key, label }) => key.toLowerCase() === lower || label.toLowerCase() === lower);
  if (found) return found;
  const keys = build.installations.map(({ key }) => key);
  throw new Unreadable(
    "--installation",
    `there is no installation ${quoted(name)} in this build; ${nearestName(name, keys)}`,
  );
}
