// Takes the words behind the cells out of what the page loads first. A cell is declared in one place, words and all; but
// formulas, sources and assumptions are a good part of the page's bytes, and are read when a trace is opened.
import { fileURLToPath } from "node:url";
import { parseAst, type Plugin, runnerImport } from "vite";
import type { Cell, Graph } from "../lib/graph";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const worksheets = here("../worksheets/");
const explanation = here("../site/trace/explanation.ts");

const declaring: ReadonlySet<string> = new Set(["cell", "structure"]);
const apart: ReadonlySet<string> = new Set(["formula", "source", "assumptions"]);

/** In a build, cells come without their explanations, and the page's `explanationOf` holds those of the whole graph. */
export function explanationsApart(): Plugin {
  return {
    name: "explanations-apart",
    apply: "build",
    enforce: "post",
    load: async (id) => (id === explanation ? `const texts=${JSON.stringify(await explanations())};\nexport const explanationOf=({key})=>texts[key];` : null),
    transform: (code, id) => (id.startsWith(worksheets) && /\b(?:cell|structure)\(/.test(code) ? { code: withoutExplanations(code), map: null } : null),
  };
}

async function explanations(): Promise<Record<string, Partial<Cell>>> {
  const { module } = await runnerImport<{ graph: Graph }>(here("../worksheets/model.ts"), { configFile: false, logLevel: "error" });
  return Object.fromEntries(
    module.graph.cells.map(({ key, formula, source, assumptions }) => [key, { formula, source, ...(assumptions && { assumptions }) }]),
  );
}

/** A node of the syntax tree, as far as it is looked at. */
interface Syntax {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly callee?: { readonly name?: string };
  readonly arguments?: readonly Syntax[];
  readonly properties?: readonly Syntax[];
  readonly key?: { readonly name?: string };
}

/**
 * A module's code with the explanations cut out of the cells that it declares.
 *
 * @param code plain JavaScript
 */
export function withoutExplanations(code: string): string {
  const cuts: Syntax[] = [];
  const visit = (node: unknown): void => {
    if (typeof node !== "object" || node === null) return;
    const { type, callee, arguments: given } = node as Syntax;
    if (type === "CallExpression" && declaring.has(callee?.name ?? "")) {
      const options = given?.[1];
      cuts.push(...(options?.properties ?? []).filter(({ key }) => apart.has(key?.name ?? "")));
    }
    for (const child of Object.values(node)) visit(child);
  };
  visit(parseAst(code));
  return cuts
    .sort((a, b) => b.start - a.start)
    .reduce((rest, { start, end }) => `${rest.slice(0, start)}${rest.slice(end).replace(/^\s*,/, "")}`, code);
}
