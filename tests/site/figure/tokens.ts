import { readFileSync } from "node:fs";

/** Colours by name, such as "series-1". */
export type Tokens = Readonly<Record<string, string>>;

const read = (path: string) => readFileSync(new URL(`../../../${path}`, import.meta.url), "utf8");

/** The custom properties with hexadecimal colours in a block of rules. */
function coloursIn(block: string): Tokens {
  return Object.fromEntries([...block.matchAll(/--([\w-]+):\s*(#[0-9a-f]{6})\b/gi)].map((match) => [match[1]!, match[2]!]));
}

/** Gives the colours of a style sheet's root, under a media query or outside any, as `selector` finds it. */
function rootColours(path: string, selector = ":root"): (media: string) => Tokens {
  const found = new Map<string, Tokens>();
  for (const [, media = "", selectors = "", block = ""] of read(path).matchAll(
    /(?:@media ([^{]+)\{\s*)?(:root[^{}]*)\{([^}]*)\}/g,
  )) {
    if (selectors.split(",")[0]!.trim() === selector) found.set(media.trim(), { ...found.get(media.trim()), ...coloursIn(block) });
  }
  return (media) => {
    const tokens = found.get(media);
    if (!tokens || Object.keys(tokens).length === 0) throw new Error(`${path} gives ${selector} no colours under "${media}"`);
    return tokens;
  };
}

const at = rootColours("site/style/tokens.css");
const bench = rootColours("site/style/large.css", ':root[data-view="bench"]');
const [dark, more] = ["(prefers-color-scheme: dark)", "(prefers-contrast: more)"];

/** The page's colours as each reader meets them: later rules of the style sheet over earlier ones. */
export const themes: Readonly<Record<string, Tokens>> = {
  light: at(""),
  dark: { ...at(""), ...at(dark) },
  "light, more contrast": { ...at(""), ...at(more) },
  "dark, more contrast": { ...at(""), ...at(dark), ...at(more), ...at(`${more} and ${dark}`) },
  bench: { ...at(""), ...bench("") },
  "bench, dark": { ...at(""), ...at(dark), ...bench(""), ...bench(dark) },
  print: { ...at(""), ...rootColours("site/style/print.css")("print") },
};

/** The colours of drawings in files. */
export const onPaper: Tokens = coloursIn(/\.on-paper\s*\{([^}]*)\}/.exec(read("site/style/figure.css"))![1]!);
