/** The project's own source files and what each imports, for the tests that hold the house together. */
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { fileURLToPath } from "node:url";

export const root = fileURLToPath(new URL("..", import.meta.url));

export interface Source {
  /** Path from the project's root, with forward slashes. */
  readonly path: string;
  readonly text: string;
  /** The text without comments, and with the contents of its texts taken out. */
  readonly code: string;
  /** Paths of the project's files that it imports. */
  readonly imports: readonly string[];
  /** Packages and built-in modules that it imports. */
  readonly packages: readonly string[];
  /** What it imports by a path where there is nothing. */
  readonly missing: readonly string[];
}

/** Every TypeScript file below some folders of the project. */
export function sourcesIn(...folders: readonly string[]): readonly Source[] {
  return folders.flatMap((folder) =>
    readdirSync(join(root, folder), { recursive: true, encoding: "utf8" })
      .filter((name) => /\.m?tsx?$/.test(name))
      .map((name) => sourceAt(join(folder, name).replaceAll("\\", "/")))
      .sort((a, b) => a.path.localeCompare(b.path)),
  );
}

/** What a module's text imports: by import, export … from, import(…), or an address beside its own. */
export function specifiersOf(text: string): readonly string[] {
  const code = withoutComments(text);
  const patterns = [
    /\b(?:import|export)\b[^"';()]*?\bfrom\s*["']([^"']+)["']/g,
    /\bimport\s*["']([^"']+)["']/g,
    /\bimport\s*\(\s*["']([^"']+)["']/g,
    /\bnew\s+URL\(\s*["']([^"']+)["']\s*,\s*import\.meta\.url/g,
  ];
  const found = patterns.flatMap((pattern) => [...code.matchAll(pattern)].map(([, specifier]) => specifier!));
  return [...new Set(found)];
}

/** Groups of two or more files that import each other in a circle, and files that import themselves. */
export function circlesOf(imports: ReadonlyMap<string, readonly string[]>): readonly (readonly string[])[] {
  // R. Tarjan, Depth-first search and linear graph algorithms (1972) (from memory).
  const order = new Map<string, number>();
  const lowest = new Map<string, number>();
  const stack: string[] = [];
  const circles: string[][] = [];
  const visit = (file: string): void => {
    order.set(file, order.size);
    lowest.set(file, order.get(file)!);
    stack.push(file);
    for (const next of imports.get(file) ?? []) {
      if (!order.has(next)) visit(next);
      if (stack.includes(next)) lowest.set(file, Math.min(lowest.get(file)!, lowest.get(next)!));
    }
    if (lowest.get(file) !== order.get(file)) return;
    const group = stack.splice(stack.indexOf(file));
    if (group.length > 1 || imports.get(file)?.includes(file)) circles.push(group.sort());
  };
  for (const file of imports.keys()) if (!order.has(file)) visit(file);
  return circles;
}

function sourceAt(path: string): Source {
  const text = readFileSync(join(root, path), "utf8");
  const imports: string[] = [];
  const packages: string[] = [];
  const missing: string[] = [];
  for (const specifier of specifiersOf(text)) {
    if (!specifier.startsWith(".")) packages.push(specifier);
    else {
      const found = resolved(path, specifier);
      if (found === undefined) missing.push(specifier);
      else imports.push(found);
    }
  }
  return { path, text, code: withoutTexts(withoutComments(text)), imports, packages, missing };
}

function resolved(from: string, specifier: string): string | undefined {
  const bare = resolve(root, dirname(from), specifier.replace(/\?.*$/, ""));
  const found = [bare, `${bare}.ts`, `${bare}.d.ts`, `${bare}/index.ts`].find(
    (file) => existsSync(file) && /\.[a-z]+$/.test(file),
  );
  return found && relative(root, found).replaceAll("\\", "/");
}

/** Comments go; texts stay, so that an address in one does not count as a comment. */
function withoutComments(text: string): string {
  return text.replace(
    /("(?:[^"\\\n]|\\.)*"|'(?:[^'\\\n]|\\.)*'|`(?:[^`\\]|\\.)*`)|\/\/[^\n]*|\/\*[\s\S]*?\*\//g,
    (_, kept) => kept ?? " ",
  );
}

function withoutTexts(code: string): string {
  return code.replace(/"(?:[^"\\\n]|\\.)*"|'(?:[^'\\\n]|\\.)*'/g, '""');
}
