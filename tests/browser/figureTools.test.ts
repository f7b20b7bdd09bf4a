import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import axe from "axe-core";
import { csvParseRows } from "d3";
import { type Browser, chromium, type Locator, type Page } from "playwright-core";
import { build, type PreviewServer, preview } from "vite";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { findChromium } from "../../.dev/chromium.mjs";

const configFile = fileURLToPath(new URL("../../vite.config.ts", import.meta.url));
const folder = mkdtempSync(join(tmpdir(), "figure-tools-"));
const complaints: string[] = [];
let server: PreviewServer;
let browser: Browser;
let page: Page;

beforeAll(async () => {
  const executablePath = findChromium();
  if (!executablePath) throw new Error("no Chromium was found; set CHROMIUM_PATH");
  await build({ configFile, logLevel: "error", build: { outDir: folder, emptyOutDir: true } });
  server = await preview({
    configFile,
    logLevel: "error",
    build: { outDir: folder },
    preview: { host: "127.0.0.1", port: 0, strictPort: false, open: false },
  });
  browser = await chromium.launch({ executablePath, args: ["--no-sandbox", "--disable-gpu", "--disable-quic"] });
  page = await browser.newPage({ viewport: { width: 1280, height: 900 }, acceptDownloads: true });
  page.on("console", (message) => complaints.push(message.text()));
  page.on("pageerror", (error) => complaints.push(error.message));
  await page.goto(server.resolvedUrls!.local[0]!);
  await page.locator(".figure-place").first().waitFor({ state: "attached" });
});

afterAll(async () => {
  await browser?.close();
  await server?.close();
  rmSync(folder, { recursive: true, force: true });
});

/** The installation in which a figure stands on the page: of the ways of cooling on land, it shows the one that counts. */
const installationOf = (key: string): string => (key === "towerPlate" ? "Test cell" : "Mountain truck");

/** A figure by its key, brought to the screen and drawn. */
async function figure(key: string): Promise<Locator> {
  await page.getByRole("radio", { name: installationOf(key) }).check({ force: true });
  const found = page.locator(`#figure-${key}`);
  // Figures above it may be drawn on the way, and push it off the screen again.
  await expect
    .poll(
      async () => {
        await found.scrollIntoViewIfNeeded();
        return found.locator("svg").first().isVisible();
      },
      { timeout: 30_000 },
    )
    .toBe(true);
  return found;
}

const line = async (shown: Locator) => (await shown.locator(".mark-line").textContent()) ?? "";

/** Asks for a file and gives its name and content. */
async function saved(shown: Locator, format: string): Promise<{ readonly name: string; readonly content: Buffer }> {
  const [file] = await Promise.all([
    page.waitForEvent("download"),
    shown.locator(".save-line button", { hasText: format }).first().click(),
  ]);
  return { name: file.suggestedFilename(), content: readFileSync(await file.path()) };
}

const keys = [
  "powerStaircase",
  "chargeStaircase",
  "injectionTimeline",
  "nozzleTrade",
  "pumpOverSpeed",
  "pumpsCompared",
  "supplyProfile",
  "tankWarming",
  "boatReach",
  "frontDrives",
  "speedWindows",
  "unitTorque",
  "beltTensions",
  "driveBudgets",
  "installedRuns",
  "picks",
  "heatFlows",
  "seaWaterLine",
  "curveFlows",
  "closedCircuits",
  "curveTemperatures",
  "pumpPlate",
  "failurePlate",
  "dutyPlate",
  "deratingPlate",
  "landPlate",
  "towerPlate",
  "altitude",
  "powerOverSpeed",
  "chargeSteps",
  "pressureShares",
  "compressorField",
  "blowerDrive",
  "powerOverAltitude",
  "arrangementsCompared",
];

test("the page has the figures that this test names", async () => {
  const found = await page.locator(".figure-place").evaluateAll((all) => all.map(({ id }) => id.replace("figure-", "")));
  expect(found.toSorted()).toEqual(keys.toSorted());
});

describe.each(keys)("%s", (key) => {
  test("is walked mark by mark with the arrow keys, to both ends, and left with Escape", async () => {
    const shown = await figure(key);
    await expect.poll(() => line(shown)).not.toBe("");
    const hint = await line(shown);
    await shown.locator(".drawing").focus();
    await page.keyboard.press("End");
    const last = await line(shown);
    await page.keyboard.press("ArrowRight");
    expect(await line(shown)).toBe(last);
    await page.keyboard.press("Home");
    const read = [await line(shown)];
    for (let step = 0; step < 60 && read.at(-1) !== last; step += 1) {
      await page.keyboard.press("ArrowRight");
      read.push(await line(shown));
      expect(await shown.locator(".cursor-ring").count()).toBeGreaterThan(0);
    }
    expect(read.at(-1)).toBe(last);
    expect(new Set(read).size).toBe(read.length);
    // Each mark reads a row of the numbers, in their order; in these figures every row has a mark.
    await shown.locator(".numbers summary").click();
    // The list is written when the browser tells that it was opened.
    await shown.locator(".figures tbody tr").first().waitFor({ state: "attached" });
    const rows = await shown.locator(".figures tbody tr").evaluateAll((all) =>
      all.map((row) => (row as HTMLTableRowElement).cells[0]!.textContent ?? ""),
    );
    await shown.locator(".numbers summary").click();
    expect(read).toHaveLength(rows.length);
    for (const [i, words] of read.entries()) {
      expect(words.startsWith(rows[i]!), `${words}, ${rows[i]}`).toBe(true);
      // What differs between installations may be words alone.
      if (key !== "installedRuns") expect(words).toMatch(/\d/);
    }
    await shown.locator(".drawing").focus();
    await page.keyboard.press("ArrowLeft");
    expect(await line(shown)).toBe(last);
    await page.keyboard.press("Escape");
    expect([await line(shown), await shown.locator(".cursor").count()]).toEqual([hint, 0]);
  });

  test("reads the mark under the pointer, every one of them", async () => {
    const shown = await figure(key);
    const missed = await shown.locator("svg").first().evaluate((svg) => {
      const rows = [...new Set([...svg.querySelectorAll("[data-row]")].map((mark) => mark.getAttribute("data-row")!))];
      return rows.filter((row) => {
        // Some point of some mark of the row must be met, in steps of three pixels.
        return ![...svg.querySelectorAll(`[data-row="${row}"]`)].some((mark) => {
          mark.scrollIntoView({ block: "center" });
          const { left, top, right, bottom } = mark.getBoundingClientRect();
          for (let x = left + 1; x < right; x += 3) {
            for (let y = top + 1; y < bottom; y += 3) {
              if (document.elementFromPoint(x, y)?.getAttribute("data-row") === row) return true;
            }
          }
          return false;
        });
      });
    });
    expect(missed).toEqual([]);
  });

  test("is saved as a drawing that needs nothing beside it", async () => {
    const shown = await figure(key);
    const { name, content } = await saved(shown, "SVG");
    expect(name).toMatch(/^[\p{L}\p{N}-]+\.svg$/u);
    const text = content.toString("utf8");
    expect(text).not.toMatch(/ style=| class=|data-row|var\(|url\(|NaN|undefined|<script|href=/);
    const title = await shown.locator("figcaption strong").textContent();
    const found = await page.evaluate((source) => {
      const file = new DOMParser().parseFromString(source, "image/svg+xml");
      const svg = file.documentElement;
      return {
        root: svg.nodeName,
        title: file.getElementById(svg.getAttribute("aria-labelledby")!)?.textContent,
        description: file.getElementById(svg.getAttribute("aria-describedby")!)?.textContent,
        box: svg.getAttribute("viewBox")!.split(" ").map(Number),
        families: [...new Set([...file.querySelectorAll("[font-family]")].map((each) => each.getAttribute("font-family")))],
        labels: file.querySelectorAll("text").length,
      };
    }, text);
    expect(found).toMatchObject({ root: "svg", title, description: await shown.locator(".described").textContent() });
    expect(found.families.filter((family) => family !== "sans-serif" && family !== "serif")).toEqual([]);
    // 760 px and its margins, whatever the screen's width.
    expect(found.box.slice(0, 3)).toEqual([-12, -12, 784]);
    expect(found.labels).toBeGreaterThan(3);
  });

  test("is saved as a picture of twice its size, on white, and not blank", async () => {
    const shown = await figure(key);
    const drawing = (await saved(shown, "SVG")).content.toString("utf8");
    const height = Number(/viewBox="-12 -12 784 (\d+)"/.exec(drawing)![1]);
    const { name, content } = await saved(shown, "PNG");
    expect(name.endsWith(".png")).toBe(true);
    // PNG specification, section 11.2.1: width and height follow the signature and the chunk's head.
    expect(content.subarray(1, 4).toString("latin1")).toBe("PNG");
    expect([content.readUInt32BE(16), content.readUInt32BE(20)]).toEqual([2 * 784, 2 * height]);
    const seen = await page.evaluate(async (base64) => {
      const bytes = Uint8Array.from(atob(base64), (letter) => letter.charCodeAt(0));
      const image = await createImageBitmap(new Blob([bytes], { type: "image/png" }));
      const canvas = new OffscreenCanvas(image.width, image.height);
      const context = canvas.getContext("2d")!;
      context.drawImage(image, 0, 0);
      const { data } = context.getImageData(0, 0, image.width, image.height);
      let [inked, clear] = [0, 0];
      for (let i = 0; i < data.length; i += 4) {
        if (data[i + 3]! < 255) clear += 1;
        if (data[i]! < 200) inked += 1;
      }
      return { corner: [...data.slice(0, 3)], inked: inked / (data.length / 4), clear };
    }, content.toString("base64"));
    expect(seen).toMatchObject({ corner: [255, 255, 255], clear: 0 });
    expect(seen.inked).toBeGreaterThan(0.005);
    expect(seen.inked).toBeLessThan(0.5);
  });

  test("is saved as its numbers, which are those of the table", async () => {
    const shown = await figure(key);
    const { name, content } = await saved(shown, "CSV");
    expect(name).toMatch(/\.csv$/);
    const text = content.toString("utf8");
    expect(text.startsWith("\ufeff")).toBe(true);
    const [head, ...rows] = csvParseRows(text.slice(1));
    await shown.locator(".numbers summary").click();
    const table = await shown.locator(".figures").evaluate((each) =>
      [...(each as HTMLTableElement).rows].map((row) => [...row.cells].map((cell) => (cell.textContent ?? "").trim())),
    );
    await shown.locator(".numbers summary").click();
    expect(head!.map((each) => each.replace(/ \[(.+)\]$/, " $1"))).toEqual(table[0]);
    expect(rows).toHaveLength(table.length - 1);
    for (const [i, row] of rows.entries()) {
      for (const [j, field] of row.entries()) {
        const shownText = table[i + 1]![j]!;
        const number = Number(shownText.replace("−", "-").replaceAll("\u202f", ""));
        if (Number.isNaN(number)) expect(field).toBe(shownText);
        // The table shows six digits.
        else expect(Math.abs(Number(field) - number)).toBeLessThanOrEqual(5.01e-6 * Math.abs(number) + 1e-12);
      }
    }
  });
});

test("a mark stays ringed and is read anew while values change", async () => {
  const shown = await figure("altitude");
  await shown.locator(".drawing").focus();
  await page.keyboard.press("Home");
  const before = await line(shown);
  await page.keyboard.press("u");
  await page.waitForFunction((old) => document.querySelector("#figure-altitude .mark-line")?.textContent !== old, before);
  expect(await line(shown)).toMatch(/ft/);
  expect(await shown.locator(".cursor-ring").count()).toBe(1);
  await page.keyboard.press("u");
  await page.waitForFunction((old) => (document.querySelector("#figure-altitude .mark-line") as HTMLElement).textContent === old, before);
  await page.keyboard.press("Escape");
});

test("a drawing in a file is the same by night", async () => {
  const shown = await figure("heatFlows");
  const day = (await saved(shown, "SVG")).content;
  await page.emulateMedia({ colorScheme: "dark", forcedColors: "active" });
  const night = (await saved(shown, "SVG")).content;
  await page.emulateMedia({ colorScheme: "light", forcedColors: "none" });
  const elements = (file: Buffer) => file.toString("utf8").split(/(?=<)/);
  expect(elements(night)).toEqual(elements(day));
});

test("every laid-out table and the ledger are saved as CSV", async () => {
  const tables = page.locator(".tabulated .save-line button");
  const count = await tables.count();
  expect(count).toBeGreaterThan(0);
  for (let i = 0; i < count; i += 1) {
    const region = page.locator(".tabulated").filter({ has: page.locator("button") }).nth(i);
    await region.scrollIntoViewIfNeeded();
    if (!(await region.locator(".save-line").isVisible())) continue;
    const rows = csvParseRows((await saved(region, "CSV")).content.toString("utf8").slice(1));
    expect(rows).toHaveLength((await region.locator("tbody tr").count()) + 1);
  }
  const book = page.locator("#ledger");
  await book.scrollIntoViewIfNeeded();
  const { name, content } = await saved(book, "CSV");
  expect(name).toMatch(/-ledger\.csv$/);
  const rows = csvParseRows(content.toString("utf8").slice(1));
  expect(rows).toHaveLength((await book.locator("tbody tr").count()) + 1);
  expect(rows[0]).toEqual(["Part", "Quantity", "Demand", "Rule", "Capacity", "Unit", "Room [%]", "Standing"]);
});

test("paper has neither the words for saving nor the ring", async () => {
  const shown = await figure("altitude");
  await shown.locator(".drawing").focus();
  await page.keyboard.press("Home");
  await page.emulateMedia({ media: "print" });
  for (const unseen of [".save-line", ".mark-line", ".cursor"]) {
    expect(await shown.locator(unseen).isVisible(), unseen).toBe(false);
  }
  await page.emulateMedia({ media: "screen" });
});

test.each(["light", "dark"] as const)("axe finds nothing wrong in the figures: %s", async (colorScheme) => {
  await page.emulateMedia({ colorScheme });
  // Devtools' evaluation is not held to the page's policy.
  await page.evaluate(axe.source);
  for (const installation of new Set(keys.map(installationOf))) {
    const its = keys.filter((key) => installationOf(key) === installation);
    for (const key of its) {
      const shown = await figure(key);
      await shown.locator(".numbers summary").click();
      await shown.locator(".drawing").focus();
      await page.keyboard.press("Home");
    }
    const found = await page.evaluate(async () => {
      const { violations } = await (window as unknown as { axe: typeof axe }).axe.run("figure.figure", { resultTypes: ["violations"] });
      return violations.map(({ id, nodes }) => `${id}: ${nodes.map(({ html }) => html.slice(0, 120)).join(" | ")}`);
    });
    expect(found).toEqual([]);
    for (const key of its) await (await figure(key)).locator(".numbers summary").click();
  }
  await page.emulateMedia({ colorScheme: "light" });
  // Every figure's every number is looked at.
}, 240_000);

test("the browser complained of nothing", () => {
  expect(complaints).toEqual([]);
});
