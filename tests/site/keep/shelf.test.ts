import { expect, test } from "vitest";
import { fileName } from "../../../site/keep/files";
import { mostDrafts, openingOf, renamed, surplus } from "../../../site/keep/shelf";
import { timeWords } from "../../../site/keep/time";
import { readBuild, writeBuild } from "../../../worksheets/build/file";
import { withInput } from "../../../worksheets/build/build";
import { build } from "../build";
import { graph } from "../fixture";
import { kept } from "./keptBuild";

const files = { read: (text: string) => readBuild(text, graph), write: (each: typeof build) => writeBuild(each, graph) };

test("openingOf() opens the build as it was left, and measures changes from where it began", () => {
  const changed = withInput(build, "cell", "driveRatio", 2.5);
  const opening = openingOf(kept({ text: files.write(changed) }), files, graph);
  expect(opening).toMatchObject({ build: changed, opened: build, installation: "truck", units: { system: "US" } });
});

test("openingOf() goes on with what it can read, and says which field it cannot", () => {
  expect(openingOf(kept({ text: "{}" }), files, graph)).toEqual({ message: expect.stringContaining("format") });
  const opening = openingOf(kept({ openedText: "?", installation: "__proto__", units: { own: { power: "bar" } } as never }), files, graph);
  expect(opening).toMatchObject({ opened: build, installation: "cell", units: { system: "SI" } });
});

test("renamed() renames the build within the record, and makes it stay", () => {
  const record = renamed(kept(), "Second try", files)!;
  expect(record).toMatchObject({ name: "Second try", named: true });
  expect(files.read(record.text)).toMatchObject({ build: { name: "Second try" } });
  expect(renamed(kept({ text: "" }), "x", files)).toBeUndefined();
});

test("surplus() are the oldest that were never named, and none that is open", () => {
  const drafts = Array.from({ length: mostDrafts + 3 }, (_, i) => kept({ id: `d${i}`, time: 100 - i, writer: `tab ${i}` }));
  const records = [...drafts, kept({ id: "named", time: 0, named: true })];
  expect(surplus(records, new Set()).map(({ id }) => id)).toEqual(["d20", "d21", "d22"]);
  expect(surplus(records, new Set(["tab 21"])).map(({ id }) => id)).toEqual(["d20", "d22"]);
});

test("timeWords() tells the time of today, and the day of any other", () => {
  const now = new Date(2026, 10, 25, 18, 30).getTime();
  expect(timeWords(new Date(2026, 10, 25, 14, 5).getTime(), now)).toBe("14:05");
  expect(timeWords(new Date(2026, 10, 24, 14, 5).getTime(), now)).toBe("24 Nov, 14:05");
  expect(timeWords(new Date(2025, 0, 2, 0, 7).getTime(), now)).toMatch(/^2 Jan 2025, (00|24):07$/);
});

test.each([
  ["Hollowfell 10.2", "hollowfell-10-2"],
  ["../../etc/passwd", "etc-passwd"],
  ["<img src=x onerror=alert(1)>", "img-src-x-onerror-alert-1"],
  ["Überland №7", "überland-7"],
  ["…", "build"],
])("fileName(%j) is a plain name", (name, plain) => {
  expect(fileName(name)).toBe(plain);
});
