import fc from "fast-check";
import { afterEach, expect, test, vi } from "vitest";
import { mostSigns, packed, unpacked } from "../../../site/keep/packed";

afterEach(() => vi.unstubAllGlobals());

test("unpacked(packed(text)) is the text, whatever it is, in signs that an address leaves alone", async () => {
  const property = fc.asyncProperty(fc.string({ unit: "binary", maxLength: 400 }), async (text) => {
    const code = await packed(text);
    expect(code).toMatch(/^1\.[\w-]*$/);
    expect(await unpacked(code)).toBe(text);
  });
  await fc.assert(property, { seed: 20260101, numRuns: 100 });
});

test("packed() goes without deflating where the browser cannot, and is read by one that can", async () => {
  vi.stubGlobal("CompressionStream", undefined);
  const code = await packed('{"a":"µ"}');
  expect(code).toBe("0.eyJhIjoiwrUifQ");
  vi.unstubAllGlobals();
  expect(await unpacked(code)).toBe('{"a":"µ"}');
});

test.each([
  ["", "damaged"],
  ["1", "damaged"],
  ["1.<script>", "damaged"],
  ["1.%00", "damaged"],
  ["7.AAAA", 'version "7"'],
  ["1.AAAA", "a part of it is missing"],
  ["0.A", "a part of it is missing"],
  ["0._w", "a part of it is missing"],
  [`1.${"A".repeat(mostSigns)}`, "at most 16 kB"],
])("unpacked(%j) says what is wrong", async (code, words) => {
  await expect(unpacked(code)).rejects.toThrow(words);
});

test("unpacked() cuts short what a few signs blow up to", async () => {
  const code = await packed("0".repeat(5_000_000));
  expect(code.length).toBeLessThan(mostSigns);
  await expect(unpacked(code)).rejects.toThrow("it stands for more than 500 kB");
});

test("unpacked() refuses a link that lost its end", async () => {
  const code = await packed("everything that follows from a change ".repeat(9).concat("and its end"));
  await expect(unpacked(code.slice(0, -6))).rejects.toThrow("missing or changed");
});
