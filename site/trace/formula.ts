/** One item of a formula in TeX, as far as its symbols must be told apart. */
export type Item =
  /** A letter with its accents and subscript: "\\dot m_f" has the base "\\dot m" and the subscript "f". */
  | { readonly type: "symbol"; readonly base: string; readonly sub: string; readonly tex: string; readonly sup?: readonly Item[] }
  | { readonly type: "number"; readonly tex: string; readonly sup?: readonly Item[] }
  /** A command with arguments, such as \\frac, or a bare group. */
  | { readonly type: "built"; readonly head: string; readonly parts: readonly (readonly Item[])[]; readonly sup?: readonly Item[] }
  /** Words and units: taken as they are. */
  | { readonly type: "words"; readonly tex: string; readonly unit: boolean; readonly sup?: readonly Item[] }
  | { readonly type: "open"; readonly tex: string }
  | { readonly type: "close"; readonly tex: string; readonly sup?: readonly Item[] }
  | { readonly type: "space"; readonly tex: string }
  /** Signs between operands, and names of functions. */
  | { readonly type: "sign"; readonly tex: string };

interface Reader {
  readonly tex: string;
  at: number;
}

const spaces = /^\\(?:[,;:! ]|quad|qquad)/;
const accents = new Set(["dot", "ddot", "bar", "overline", "hat", "tilde", "vec"]);
/** Letters that make a new symbol with the next one. */
const prefixes = new Set(["Delta", "delta", "partial"]);
const words = new Set(["mathrm", "text", "operatorname", "mathit"]);
const signs = new Set([
  "cdot", "times", "approx", "le", "leq", "ge", "geq", "pm", "mp", "sum", "prod", "int", "max", "min", "ln", "log", "exp", "sin", "cos", "tan",
  "to", "sim", "ll", "gg", "ne", "circ", "ldots",
]);
const argumentsOf: Readonly<Record<string, number>> = { frac: 2, dfrac: 2, tfrac: 2, sqrt: 1, underbrace: 1 };

/** Reads a formula into its items. What it does not know it keeps as it is. */
export function itemsOf(tex: string): readonly Item[] {
  return sequence({ tex, at: 0 });
}

function sequence(reader: Reader): readonly Item[] {
  const items: Item[] = [];
  while (reader.at < reader.tex.length && reader.tex[reader.at] !== "}") {
    const next = item(reader);
    if (next) items.push(next);
  }
  return items;
}

function item(reader: Reader): Item | undefined {
  const rest = reader.tex.slice(reader.at);
  const take = (text: string): string => {
    reader.at += text.length;
    return text;
  };
  const [blank] = /^\s+/.exec(rest) ?? [];
  if (blank !== undefined) {
    take(blank);
    return undefined;
  }
  const [space] = spaces.exec(rest) ?? [];
  if (space !== undefined) return { type: "space", tex: take(space) };
  const [number] = /^\d+(?:\.\d+)?/.exec(rest) ?? [];
  if (number !== undefined) return withSup(reader, { type: "number", tex: take(number) });
  if (rest[0] === "{") return withSup(reader, { type: "built", head: "", parts: [group(reader)] });
  if (rest[0] === "\\" || /[A-Za-z]/.test(rest[0]!)) return named(reader);
  // A condition, as in x|_{y = 1}, stays whole.
  const [condition] = /^\|_(?:\{[^{}]*(?:\{[^{}]*\}[^{}]*)*\}|.)/.exec(rest) ?? [];
  if (condition !== undefined) return { type: "sign", tex: take(condition) };
  take(rest[0]!);
  if ("([".includes(rest[0]!)) return { type: "open", tex: rest[0]! };
  if (")]".includes(rest[0]!)) return withSup(reader, { type: "close", tex: rest[0]! });
  return { type: "sign", tex: rest[0]! };
}

/** A letter, a word of letters, or a command. */
function named(reader: Reader): Item {
  const rest = reader.tex.slice(reader.at);
  const [whole = "", name = ""] = /^\\([A-Za-z]+|.)\s*/.exec(rest) ?? [];
  if (whole === "") {
    const [letters] = /^[A-Za-z]+'*/.exec(rest) ?? [];
    reader.at += letters?.length ?? 1;
    return letters === undefined ? { type: "sign", tex: "" } : scripted(reader, letters);
  }
  reader.at += whole.length;
  if (name === "left" || name === "right") {
    const [delimiter = ""] = /^(?:\\.|.)/.exec(reader.tex.slice(reader.at)) ?? [];
    reader.at += delimiter.length;
    const tex = `\\${name}${delimiter}`;
    return name === "left" ? { type: "open", tex } : withSup(reader, { type: "close", tex });
  }
  const prefixed = prefixes.has(name) && /[A-Za-z\\]/.test(reader.tex[reader.at] ?? "");
  if (accents.has(name) || prefixed) {
    const under = item(reader);
    if (under?.type !== "symbol") return under ?? { type: "sign", tex: `\\${name}` };
    const base = `\\${name} ${under.base}`;
    return { ...under, base, tex: `\\${name} ${under.tex}` };
  }
  if (words.has(name)) {
    const start = reader.at;
    group(reader);
    return withSup(reader, { type: "words", tex: `\\${name}${reader.tex.slice(start, reader.at)}`, unit: name === "mathrm" });
  }
  if (signs.has(name)) {
    const script = /^(?:_(?:\{[^{}]*\}|.))?(?:\^(?:\{[^{}]*\}|.))?\s*/.exec(reader.tex.slice(reader.at))![0];
    reader.at += script.length;
    return { type: "sign", tex: `\\${name} ${script}` };
  }
  const count = argumentsOf[name];
  if (count !== undefined) {
    const parts = Array.from({ length: count }, () => group(reader));
    return withSup(reader, { type: "built", head: `\\${name}`, parts });
  }
  return scripted(reader, `\\${name}`);
}

/** The argument in braces, or the single item that stands for it. */
function group(reader: Reader): readonly Item[] {
  if (reader.tex[reader.at] !== "{") {
    // Without braces an argument is one sign, or one command.
    const [single = ""] = /^\s*(?:\\[A-Za-z]+\s*|\\.|[^}])/.exec(reader.tex.slice(reader.at)) ?? [];
    reader.at += single.length;
    return itemsOf(single);
  }
  reader.at += 1;
  const inside = sequence(reader);
  reader.at += 1;
  return inside;
}

function scripted(reader: Reader, base: string): Item {
  let sub = "";
  if (reader.tex[reader.at] === "_") {
    const start = reader.at + 1;
    reader.at = start;
    group(reader);
    sub = reader.tex.slice(start, reader.at);
  }
  const command = base.startsWith("\\") ? `${base} ` : base;
  const tex = sub === "" ? command : `${base}_${sub.startsWith("{") ? sub : `{${sub}}`}`;
  return withSup(reader, { type: "symbol", base, sub: plainScript(sub), tex });
}

function withSup<I extends Item>(reader: Reader, found: I): I {
  if (reader.tex[reader.at] !== "^") return found;
  reader.at += 1;
  return { ...found, sup: group(reader) };
}

/** A subscript without braces, spaces and upright marks, so that "{a,\\mathrm{in}}" and "{a, in}" are one. */
function plainScript(sub: string): string {
  return sub.replace(/\\(?:mathrm|text|[,;:! ])/g, "").replace(/[{}\s]/g, "");
}
