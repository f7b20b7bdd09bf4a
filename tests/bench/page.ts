import type { Browser, Locator, Page } from "playwright-core";
import { settledBox } from "../browser/page/settled";
import { type FrameWork, frameWork, idleWork, type TraceEvent } from "./frames";
import { type Measured, timingOf } from "./measure";

/** Inputs whose sliders are dragged: they move several sheets, and stand among lines, drawings and long tables that follow. */
const usual = ["ratedPower", "excessAirRatio", "compressorEfficiency", "bankAInducer", "railPressure", "blowerDriverTeeth", "seaTemperature"];

/**
 * The work inside a frame while a slider is dragged by the mouse: everything that the page's main thread does between
 * the browser's call for a frame and its end, from the hand's event to layout and painting.
 *
 * @param address of the served page
 * @param browser the browser
 * @param steps moves of the mouse for each slider
 * @param dragged keys of the inputs whose sliders are dragged
 */
export async function pageLines(
  address: string,
  browser: Browser,
  steps: number,
  dragged: readonly string[] = usual,
): Promise<readonly Measured[]> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  try {
    await page.goto(address);
    await page.locator("input[type=range]").first().waitFor({ state: "visible" });
    const lines: Measured[] = [];
    for (const key of dragged) {
      const work = await drag(page, browser, key, steps);
      if (work === null) continue;
      const { frames, idle } = work;
      const moved = timingOf(frames.filter((frame) => frame.moved).map(({ all }) => all));
      const note = `${frames.length} frames with work of ${steps} steps; those with another value of the input ${moved.p50.toFixed(1)} / ${moved.p95.toFixed(1)}`;
      lines.push({
        what: `Drag ${key}, all work in a frame`,
        timing: timingOf(frames.map(({ all }) => all)),
        budget: 8,
        note,
      });
      for (const part of ["script", "style", "layout", "paint"] as const) {
        lines.push({ what: `  of which ${part}`, timing: timingOf(frames.map((frame) => frame[part])) });
      }
      if (idle.length > 0) lines.push({ what: "  and in the time left after it", timing: timingOf(idle), note: `${idle.length} times` });
    }
    if (lines.length === 0) throw new Error(`pageLines: the page has no slider for ${dragged.join(", ")}`);
    return lines;
  } finally {
    await page.close();
  }
}

/** What the frames took while a slider was dragged, and what was done between them [ms]; nothing where there is no slider. */
async function drag(
  page: Page,
  browser: Browser,
  key: string,
  steps: number,
): Promise<{ readonly frames: readonly FrameWork[]; readonly idle: readonly number[] } | null> {
  const slider = page.locator(`input[type=range][data-input="${key}"]`).first();
  if ((await slider.count()) === 0) return null;
  const place = await slider.evaluate((element) => {
    const { value, min, max } = element as HTMLInputElement;
    return (Number(value) - Number(min)) / (Number(max) - Number(min));
  });
  // To and fro over a fifth of the track around its place, so that no step repeats the one before it.
  const along = (step: number): number => {
    const swing = 0.1 * Math.sin((2 * Math.PI * step) / 97) + 0.0007 * (step % 7);
    return Math.min(0.95, Math.max(0.05, place + swing));
  };
  const { x, y, width } = await pressed(page, slider, along(0));
  // Past the driver's own mouse, which puts listeners of its own into the page at every move.
  const hand = await page.context().newCDPSession(page);
  const move = async (step: number): Promise<void> => {
    await hand.send("Input.dispatchMouseEvent", { type: "mouseMoved", x: x + width * along(step), y, button: "left", buttons: 1 });
    await new Promise((resolve) => setTimeout(resolve, 17));
  };
  for (let step = 1; step <= 30; step++) await move(step);
  // More categories would have the browser count the whole document in every frame.
  await browser.startTracing(page, { categories: ["toplevel", "devtools.timeline"] });
  for (let step = 31; step <= 30 + steps; step++) await move(step);
  const trace = JSON.parse((await browser.stopTracing()).toString("utf8")) as { traceEvents: readonly TraceEvent[] };
  await page.mouse.up();
  await hand.detach();
  return { frames: frameWork(trace.traceEvents), idle: idleWork(trace.traceEvents) };
}

/**
 * Presses a slider at a share of its width. Where what stands above it came in between and moved it, once more.
 *
 * @returns its left end, its middle and its width
 */
async function pressed(page: Page, slider: Locator, share: number): Promise<{ readonly x: number; readonly y: number; readonly width: number }> {
  for (let tries = 0; tries < 5; tries++) {
    const { x, y, width, height } = await settledBox(page, slider, 700);
    const middle = y + height / 2;
    await page.mouse.move(x + width * share, middle);
    await page.mouse.down();
    if (await slider.evaluate((element) => element === document.activeElement)) return { x, y: middle, width };
    await page.mouse.up();
  }
  throw new Error("pressed: the slider never stood still");
}
