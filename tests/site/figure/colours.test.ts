import { lab, rgb } from "d3";
import { describe, expect, test } from "vitest";
import { onPaper, themes, type Tokens } from "./tokens";

type Triple = readonly [number, number, number];

/** Light of each primary, 0 to 1, from the screen's number. IEC 61966-2-1 (1999), sRGB. */
function linear(colour: string): Triple {
  const { r, g, b } = rgb(colour);
  const light = (channel: number) => (channel / 255 <= 0.04045 ? channel / 255 / 12.92 : ((channel / 255 + 0.055) / 1.055) ** 2.4);
  return [light(r), light(g), light(b)];
}

/** Contrast ratio of two colours. WCAG 2.2, definitions of contrast ratio and relative luminance. */
function contrast(a: string, b: string): number {
  const luminance = (colour: string) => {
    const [r, g, b] = linear(colour);
    return 0.2126 * r + 0.7152 * g + 0.0722 * b;
  };
  const [high, low] = [luminance(a), luminance(b)].sort((x, y) => y - x) as [number, number];
  return (high + 0.05) / (low + 0.05);
}

/**
 * Colours as they are seen without one kind of cone, over linear light.
 * G. M. Machado, M. M. Oliveira, L. A. F. Fernandes, "A physiologically-based model for simulation of color vision
 * deficiency", IEEE Transactions on Visualization and Computer Graphics 15 (2009), severity 1.0 (matrices from memory).
 */
const deficiencies: Readonly<Record<string, readonly [Triple, Triple, Triple]>> = {
  none: [
    [1, 0, 0],
    [0, 1, 0],
    [0, 0, 1],
  ],
  protanopia: [
    [0.152286, 1.052583, -0.204868],
    [0.114503, 0.786281, 0.099216],
    [-0.003882, -0.048116, 1.051998],
  ],
  deuteranopia: [
    [0.367322, 0.860646, -0.227968],
    [0.280085, 0.672501, 0.047413],
    [-0.01182, 0.04294, 0.968881],
  ],
  tritanopia: [
    [1.255528, -0.076749, -0.178779],
    [-0.078411, 0.930809, 0.147602],
    [0.004733, 0.691367, 0.3039],
  ],
};

function seen(colour: string, deficiency: string): string {
  const light = linear(colour);
  const channel = (row: Triple) => {
    const value = Math.min(1, Math.max(0, row[0] * light[0] + row[1] * light[1] + row[2] * light[2]));
    return 255 * (value <= 0.0031308 ? 12.92 * value : 1.055 * value ** (1 / 2.4) - 0.055);
  };
  const [r, g, b] = deficiencies[deficiency]!.map(channel) as [number, number, number];
  return rgb(r, g, b).toString();
}

/** Distance of two colours in CIE Lab (1976). About 2.3 can just be told apart. */
function distance(a: string, b: string): number {
  const [p, q] = [lab(a), lab(b)];
  return Math.hypot(p.l - q.l, p.a - q.a, p.b - q.b);
}

const texts = ["ink", "mute", "act", "near", "past", "held"];
const series = ["series-1", "series-2", "series-3", "series-4", "series-5"];
const grounds = ["page", "panel"];
const colour = (tokens: Tokens, name: string) => {
  const value = tokens[name];
  if (value === undefined) throw new Error(`there is no token --${name}`);
  return value;
};

test("contrast, seen and distance agree with what is known of black, white and grey", () => {
  expect(contrast("#000000", "#ffffff")).toBeCloseTo(21, 10);
  // WCAG's technique G18 speaks of #767676 on white as the lightest grey at 4.5:1.
  expect(contrast("#767676", "#ffffff")).toBeGreaterThan(4.5);
  expect(contrast("#777777", "#ffffff")).toBeLessThan(4.5);
  expect(distance("#000000", "#ffffff")).toBeCloseTo(100, 3);
  // Each row of a matrix sums to one: greys stay what they are.
  for (const [name, rows] of Object.entries(deficiencies)) {
    for (const row of rows) expect(row[0] + row[1] + row[2], name).toBeCloseTo(1, 5);
    expect(distance(seen("#808080", name), "#808080")).toBeLessThan(0.5);
  }
  // Red and green of like lightness come near each other without the cone for long or middle waves.
  for (const name of ["protanopia", "deuteranopia"]) {
    expect(distance(seen("#b05a2c", name), seen("#6f7a1e", name))).toBeLessThan(distance("#b05a2c", "#6f7a1e") / 2);
  }
});

describe.each(Object.entries(themes))("colours: %s", (_, tokens) => {
  test.each(texts)("text in --%s has 4.5 to 1 on page and panel", (name) => {
    for (const ground of grounds) {
      expect(contrast(colour(tokens, name), colour(tokens, ground)), ground).toBeGreaterThanOrEqual(4.5);
    }
  });

  test.each([...series, "edge"])("marks in --%s have 3 to 1 on page and panel", (name) => {
    for (const ground of grounds) {
      expect(contrast(colour(tokens, name), colour(tokens, ground)), ground).toBeGreaterThanOrEqual(3);
    }
  });

  test("words on the fill of what is past have 4.5 to 1", () => {
    expect(contrast(colour(tokens, "on-past"), colour(tokens, "past"))).toBeGreaterThanOrEqual(4.5);
  });

  test.each(Object.keys(deficiencies))("no two series come near each other, nor those of the drawings the ink: %s", (deficiency) => {
    for (const together of [series, ["ink", "series-1", "series-3"]]) {
      const colours = together.map((name) => seen(colour(tokens, name), deficiency));
      for (const [i, one] of colours.entries()) {
        for (const [j, other] of colours.entries()) {
          // Eight times what can just be told apart.
          if (i < j) expect(distance(one, other), `${together[i]} and ${together[j]}`).toBeGreaterThanOrEqual(20);
        }
      }
    }
  });
});

describe("colours of drawings in files", () => {
  test("are those of print", () => {
    for (const [name, value] of Object.entries(onPaper)) expect(value, name).toBe(themes["print"]![name]);
    expect(Object.keys(onPaper).length).toBeGreaterThan(8);
  });
});
