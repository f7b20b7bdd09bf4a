import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Browser, type BrowserContextOptions, chromium, type Page } from "playwright-core";
import { build, preview } from "vite";
import { findChromium } from "../../../.dev/chromium.mjs";

const configFile = fileURLToPath(new URL("../../../vite.config.ts", import.meta.url));
const axe = readFileSync(fileURLToPath(new URL("../../../node_modules/axe-core/axe.min.js", import.meta.url)), "utf8");

/** Where the pictures go at which a person looks. */
export const pictures = fileURLToPath(new URL("../pictures/", import.meta.url));

/** The page as it is served, and one browser for all tests. */
export interface Served {
  readonly browser: Browser;
  /** A page of its own, empty of what others kept, with the notebook shown. */
  open(options?: Opening): Promise<Opened>;
  close(): Promise<void>;
}

export interface Opening extends BrowserContextOptions {
  readonly at?: string;
  /** Runs in the page before its own code. */
  readonly before?: () => void;
}

export interface Opened {
  readonly page: Page;
  /** What the console complained of. */
  readonly complaints: readonly string[];
  close(): Promise<void>;
}

export async function serve(): Promise<Served> {
  const executablePath = findChromium();
  if (executablePath === null) throw new Error("no Chromium was found; set CHROMIUM_PATH to the program's path");
  const outDir = mkdtempSync(join(tmpdir(), "airledger-page-"));
  await build({ configFile, logLevel: "error", build: { outDir, emptyOutDir: true } });
  const server = await preview({ configFile, logLevel: "error", build: { outDir }, preview: { host: "127.0.0.1", port: 0, strictPort: false, open: false } });
  const address = server.resolvedUrls!.local[0]!;
  const browser = await chromium.launch({
    executablePath,
    args: [
      "--headless",
      "--no-sandbox",
      "--disable-gpu",
      "--disable-quic",
      "--no-first-run",
      "--disable-background-networking",
      "--disable-component-update",
      "--disable-sync",
    ],
  });
  return {
    browser,
    open: async ({ at = "", before, ...options } = {}) => {
      const context = await browser.newContext({ viewport: { width: 1440, height: 900 }, ...options });
      const page = await context.newPage();
      const complaints: string[] = [];
      page.on("console", (message) => {
        if (["error", "warning"].includes(message.type())) complaints.push(message.text());
      });
      page.on("pageerror", (error) => complaints.push(error.message));
      if (before) await page.addInitScript(before);
      await page.goto(`${address}${at}`);
      await page.locator("#line-ratedPower .slider").waitFor();
      return { page, complaints, close: () => context.close() };
    },
    close: async () => {
      await browser.close();
      await server.close();
      rmSync(outDir, { recursive: true, force: true });
    },
  };
}

/** Broken rules of access on the page as it stands, or in a part of it, in a line each. */
export async function brokenRules(page: Page, within = "html"): Promise<readonly string[]> {
  await page.evaluate(axe);
  // What the browser skips off the screen has no true place, and would be taken to lie over other things.
  await page.evaluate(() => {
    const all = new CSSStyleSheet();
    all.replaceSync(".passage { content-visibility: visible; }");
    document.adoptedStyleSheets = [all];
  });
  return page.evaluate(async (part) => {
    const { violations } = await (window as unknown as { axe: typeof import("axe-core") }).axe.run(part, { resultTypes: ["violations"], preload: false, iframes: false });
    return violations.flatMap(({ id, nodes }) => nodes.slice(0, 4).map(({ target, failureSummary }) => `${id}: ${target.join(" ")}: ${failureSummary?.split("\n")[1]?.trim()}`));
  }, within);
}
