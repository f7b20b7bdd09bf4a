import { readFileSync } from "node:fs";

/** Colours by name, such as "series-1". */
export type Tokens = Readonly<Record<string, string>>;

const read = (path: string) => readFileSync(new URL(`../../../${path}`, import.meta.url), "utf8");

/** The custom properties with hexadecimal colours in a block of rules. */
function coloursIn(block: string): Tokens {
  return Object.fromEntries([...block.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})\b/gi)].map((match) => [match[1]!, match[2]!]));
}

/** The `:root` colours of a style sheet under each of its media queries; "" for those outside any. */
function rootColours(css: string): ReadonlyMap<string, Tokens> {
  const found = new Map<string, Tokens>();
  for (const [, media = "", block = ""] of css.matchAll(/(?:@media ([^{]+)\{\s*)?:root\s*\{([^}]*)\}/g)) {
    found.set(media.trim(), coloursIn(block));
  }
  return found;
}

const screen = rootColours(read("site/style/tokens.css"));
const at = (media: string): Tokens => {
  const tokens = screen.get(media);
  if (!tokens) throw new Error(`site/style/tokens.css has no :root under "${media}"`);
  return tokens;
};
const [dark, more] = ["(prefers-color-scheme: dark)", "(prefers-contrast: more)"];

/** The page's colours as each reader meets them: later rules of the style sheet over earlier ones. */
export const themes: Readonly<Record<string, Tokens>> = {
  light: at(""),
  dark: { ...at(""), ...at(dark) },
  "light, more contrast": { ...at(""), ...at(more) },
  "dark, more contrast": { ...at(""), ...at(dark), ...at(more), ...at(`${more} and ${dark}`) },
  print: { ...at(""), ...rootColours(read("site/style/print.css")).get("print") },
};

/** The colours of drawings in files. */
export const onPaper: Tokens = coloursIn(/\.on-paper\s*\{([^}]*)\}/.exec(read("site/style/figure.css"))![1]!);
