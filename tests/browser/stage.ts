import { mkdtempSync, readdirSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { chromium, type Page } from "playwright-core";
import { build } from "vite";
import { findChromium } from "../../.dev/chromium.mjs";
import type { Seen, Showing, Stage } from "./figuresPage";

declare const stage: Stage;

/** The page on which figures are drawn, in a browser. */
export interface Staged {
  readonly page: Page;
  /** What the console complained of. */
  readonly complaints: readonly string[];
  readonly keys: () => Promise<readonly string[]>;
  readonly show: (showing: Showing) => Promise<Seen>;
  readonly close: () => Promise<void>;
}

/** Builds the page, and opens it under the site's policy: no styles and no scripts but from files. */
export async function openStage(): Promise<Staged> {
  const executablePath = findChromium();
  if (!executablePath) throw new Error("no Chromium was found; set CHROMIUM_PATH");
  const folder = mkdtempSync(join(tmpdir(), "figures-"));
  await build({
    configFile: false,
    root: fileURLToPath(new URL(".", import.meta.url)),
    logLevel: "warn",
    build: {
      outDir: folder,
      emptyOutDir: true,
      modulePreload: false,
      chunkSizeWarningLimit: 2000,
      rollupOptions: {
        input: fileURLToPath(new URL("./figuresPage.ts", import.meta.url)),
        output: { entryFileNames: "page.js", assetFileNames: "[name][extname]" },
      },
    },
  });
  const style = readdirSync(folder).find((name) => name.endsWith(".css"))!;
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
  const page = await browser.newPage();
  const complaints: string[] = [];
  page.on("console", (message) => complaints.push(message.text()));
  page.on("pageerror", (error) => complaints.push(error.message));
  await page.route("**/*", (route) => {
    const name = new URL(route.request().url()).pathname.slice(1);
    const headers = { "content-security-policy": "default-src 'self'" };
    if (name === "") {
      const body = `<!doctype html><title>figures</title><link rel="icon" href="data:,"><link rel="stylesheet" href="/${style}"><script type="module" src="/page.js"></script>`;
      return route.fulfill({
        contentType: "text/html",
        headers: { "content-security-policy": "default-src 'self'; img-src data:" },
        body,
      });
    }
    return route.fulfill({
      contentType: name.endsWith(".js") ? "text/javascript" : "text/css",
      headers,
      body: readFileSync(join(folder, name), "utf8"),
    });
  });
  await page.goto("http://figures.test/");
  await page.waitForFunction("window.stage !== undefined");
  return {
    page,
    complaints,
    keys: () => page.evaluate(() => stage.keys),
    show: (showing) => page.evaluate((what) => stage.show(what), showing),
    close: async () => {
      await browser.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}
