import { h } from "./h";

const letters: Readonly<Record<string, string>> = {
  alpha: "α", beta: "β", gamma: "γ", delta: "δ", epsilon: "ϵ", varepsilon: "ε", zeta: "ζ", eta: "η", theta: "θ",
  vartheta: "ϑ", kappa: "κ", lambda: "λ", mu: "μ", nu: "ν", xi: "ξ", pi: "π", rho: "ρ", sigma: "σ", tau: "τ",
  phi: "φ", varphi: "φ", chi: "χ", psi: "ψ", omega: "ω", Gamma: "Γ", Delta: "Δ", Theta: "Θ", Lambda: "Λ", Xi: "Ξ",
  Pi: "Π", Sigma: "Σ", Phi: "Φ", Psi: "Ψ", Omega: "Ω", ell: "ℓ", infty: "∞", ast: "*", star: "*", prime: "′", circ: "°",
};

const accents: Readonly<Record<string, string>> = { dot: "\u0307", ddot: "\u0308", bar: "\u0304", overline: "\u0304", hat: "\u0302", tilde: "\u0303" };

/**
 * A symbol in TeX set as text with subscripts: enough for "\\dot m_{a,\\mathrm{in}}", without a typesetter.
 * What it does not know it shows by name.
 */
export function symbol(tex: string): HTMLElement {
  const reader = { tex, at: 0 };
  return h("span", { class: "symbol" }, ...sequence(reader, true));
}

interface Reader {
  readonly tex: string;
  at: number;
}

function sequence(reader: Reader, slanted: boolean): Node[] {
  const nodes: Node[] = [];
  while (reader.at < reader.tex.length && reader.tex[reader.at] !== "}") nodes.push(...atom(reader, slanted));
  return nodes;
}

function atom(reader: Reader, slanted: boolean): Node[] {
  const character = reader.tex[reader.at]!;
  if (character === "\\") return command(reader, slanted);
  reader.at += 1;
  if (character === "{") {
    const inside = sequence(reader, slanted);
    reader.at += 1;
    return inside;
  }
  if (character === "_" || character === "^") {
    return [h(character === "_" ? "sub" : "sup", {}, ...atom(reader, slanted))];
  }
  if (character === " " || character === "~") return [];
  return [letter(character, slanted)];
}

function command(reader: Reader, slanted: boolean): Node[] {
  const [whole, name = ""] = /^\\([A-Za-z]+|.)\s*/.exec(reader.tex.slice(reader.at))!;
  reader.at += whole.length;
  const accent = accents[name];
  if (accent !== undefined) {
    const under = atom(reader, slanted);
    const [first] = under;
    if (first) first.textContent = `${first.textContent}${accent}`.normalize("NFC");
    return under;
  }
  if (name === "mathrm" || name === "text" || name === "mathit" || name === "operatorname") return atom(reader, name === "mathit");
  if (letters[name] !== undefined) return [letter(letters[name], slanted && !/[Α-Ω]/.test(letters[name]))];
  return /^[,;:! ]$/.test(name) || name === "quad" ? [] : [letter(name, false)];
}

function letter(text: string, slanted: boolean): Node {
  return h(slanted && /\p{L}/u.test(text) ? "i" : "span", {}, text);
}
