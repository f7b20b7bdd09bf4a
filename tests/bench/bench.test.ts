/** The parts of the bench run, with counts too small to measure anything. */
import { expect, test } from "vitest";
import { costliestLines } from "./costliest";
import { demandLines } from "./demand";
import { evaluationLines } from "./evaluation";
import { subject } from "./fixtureSubject";
import { frameWork, idleWork } from "./frames";
import { matchedLines } from "./matched";
import { quantile, timed } from "./measure";
import { peerLines, ratiosOf } from "./peers";
import { sampled, sampleLines } from "./samples";
import { scalingLines } from "./scaling";
import { scalarCount, steadyRandom } from "./subject";
import { milliseconds, tableOf } from "./table";

test("quantile(sorted, share) meets a row worked by hand", () => {
  expect([0, 0.5, 0.95, 1].map((share) => quantile([1, 2, 3, 4, 5], share))).toEqual([1, 3, 4.8, 5]);
  expect(quantile([7], 0.95)).toBe(7);
});

test("timed(work) runs the warm-up and the runs, in order", () => {
  const seen: number[] = [];
  const { p50, p95, runs } = timed((run) => seen.push(run), 5, 2);
  expect(seen).toEqual([0, 1, 0, 1, 2, 3, 4]);
  expect(runs).toBe(5);
  expect(p50).toBeGreaterThanOrEqual(0);
  expect(p95).toBeGreaterThanOrEqual(p50);
});

test("tableOf(lines) sets a budget beside its measure, and says when it is missed", () => {
  const table = tableOf([
    { what: "Fast", timing: { p50: 0.01234, p95: 0.5, runs: 10 }, budget: 1 },
    { what: "Too slow", timing: { p50: 0.5, p95: 1.5, runs: 10 }, budget: 1, note: "here" },
  ]);
  expect(table.split("\n").slice(1)).toEqual([
    "Fast      0.0123 ms  0.5 ms    1 ms  kept    10",
    "Too slow     0.5 ms  1.5 ms    1 ms  MISSED  10    here",
  ]);
  expect(milliseconds(1234.5)).toBe("1230 ms");
});

test("steadyRandom(seed) lies in 0 to 1, evenly, and the same each time", () => {
  const random = steadyRandom(1);
  const row = Array.from({ length: 4000 }, random);
  expect(row.every((value) => value >= 0 && value < 1)).toBe(true);
  // The mean of 4000 even numbers lies within 4 standard errors of one half.
  expect(Math.abs(row.reduce((a, b) => a + b) / row.length - 0.5)).toBeLessThan(
    (4 * Math.sqrt(1 / 12)) / Math.sqrt(4000),
  );
  expect(steadyRandom(1)()).toBe(row[0]);
});

test("sampled(subject, seed, count) moves the answers, and gives the same ones again", () => {
  const row = sampled(subject(), 3, 20);
  expect(row).toHaveLength(20 * scalarCount(subject()));
  expect(row.some(Number.isNaN)).toBe(false);
  expect(new Set(row.filter((_, i) => i % scalarCount(subject()) === 0)).size).toBe(20);
  expect(sampled(subject(), 3, 20)).toEqual(row);
});

test("the lines of the graph, the demand and the peers are measured", () => {
  const peers = peerLines(10);
  const lines = [
    ...evaluationLines(subject(), 20),
    ...costliestLines(subject(), 5, 3),
    ...demandLines(1),
    ...matchedLines(1),
    ...scalingLines(5, 10),
    ...peers,
  ];
  for (const { timing } of lines) expect(timing.p95).toBeGreaterThan(0);
  expect(ratiosOf(peers)).toMatch(
    /^The compiled graph takes [\d.e+]+ times .* the spreadsheet engine takes [\d.e+]+ times/,
  );
});

test("two workers sample what one thread samples", async () => {
  const lines = await sampleLines(subject(), new URL("./fixtureSubject.ts", import.meta.url).href, {
    alone: 40,
    inWorkers: 60,
  });
  expect(lines).toHaveLength(3);
  expect(lines[0]!.note).toBe("40 samples, 100.0 % of their numbers answered");
});

test("frameWork(events) takes a frame's task apart, and leaves out tasks without a frame and other threads", () => {
  const span = (name: string, ts: number, dur: number, tid = 1) => ({ name, ph: "X", pid: 1, tid, ts, dur });
  const given = { ...span("EventDispatch", 1150, 900), args: { data: { type: "input" } } };
  const frames = frameWork([
    span("RunTask", 0, 900),
    span("FunctionCall", 100, 500),
    span("RunTask", 1000, 9000),
    span("ThreadControllerImpl::RunTask", 1001, 8990),
    span("EventDispatch", 1100, 1000),
    span("FunctionCall", 1200, 800),
    span("FireAnimationFrame", 3000, 4000),
    span("FunctionCall", 3100, 3000),
    span("Layout", 4000, 500),
    span("UpdateLayoutTree", 7000, 700),
    span("Layout", 8000, 300),
    span("Paint", 8500, 200),
    span("RunTask", 3000, 5000, 2),
    given,
    span("RunTask", 20_000, 1000),
    span("FireAnimationFrame", 20_100, 500),
  ]);
  expect(idleWork([span("FireIdleCallback", 7800, 1200), span("FunctionCall", 7900, 1000)])).toEqual([1.2]);
  // Scripts are 1 and 4 ms, less the half that they spend on a layout they force.
  expect(frames).toEqual([
    { all: 9, script: 4.5, style: 0.7, layout: 0.8, paint: 0.2, moved: true },
    { all: 1, script: 0.5, style: 0, layout: 0, paint: 0, moved: false },
  ]);
});
