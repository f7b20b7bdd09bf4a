import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Browser, type BrowserContext, chromium, type Locator, type Page } from "playwright-core";
import { build, preview } from "vite";
import { findChromium } from "../../.dev/chromium.mjs";

const configFile = fileURLToPath(new URL("../../vite.config.ts", import.meta.url));
const args =
  "--headless --no-sandbox --disable-gpu --disable-quic --no-first-run --disable-background-networking --disable-component-update --disable-sync";

/** The built page, served as `npm start` serves it, and a browser. */
export interface Served {
  readonly address: string;
  readonly browser: Browser;
  /** Where the built files lie. */
  readonly folder: string;
  close(): Promise<void>;
}

export async function servedPage(): Promise<Served> {
  const executablePath = findChromium();
  if (executablePath === null) throw new Error("no Chromium was found; set CHROMIUM_PATH to the program's path");
  const folder = mkdtempSync(join(tmpdir(), "airledger-keep-"));
  await build({ configFile, logLevel: "error", build: { outDir: folder, emptyOutDir: true } });
  // Port 0 takes any free one.
  const server = await preview({
    configFile,
    logLevel: "error",
    build: { outDir: folder },
    preview: { host: "127.0.0.1", port: 0, strictPort: false, open: false },
  });
  const browser = await chromium.launch({ executablePath, args: args.split(" ") });
  return {
    address: server.resolvedUrls!.local[0]!,
    browser,
    folder,
    close: async () => {
      await browser.close();
      await server.close();
      rmSync(folder, { recursive: true, force: true });
    },
  };
}

/** A reader's tab, and what is done in it. */
export interface Tab {
  readonly page: Page;
  readonly slider: Locator;
  readonly strip: Locator;
  /** Text of the promised power's field. */
  power(): Promise<string>;
  /** Steps the promised power up and waits until the page shows it. */
  step(): Promise<string>;
  /** Presses the button of that name. */
  press(name: string | RegExp): Promise<void>;
  /** What the plain storage and the database hold, as name and text. */
  kept(): Promise<readonly { readonly name: string; readonly text: string }[]>;
}

/** Opens the page in a tab; whatever the browser complains of goes into `complaints`. */
export async function openTab(context: BrowserContext, address: string, complaints: string[]): Promise<Tab> {
  const page = await context.newPage();
  page.on("console", (message) => {
    if (message.type() === "error" || message.type() === "warning") complaints.push(message.text());
  });
  page.on("pageerror", (error) => complaints.push(error.message));
  page.on("dialog", (dialog) => {
    complaints.push(`dialog: ${dialog.message()}`);
    void dialog.dismiss();
  });
  await page.goto(address);
  return tabOf(page);
}

export async function tabOf(page: Page): Promise<Tab> {
  const slider = page.locator('input[type=range][data-input="ratedPower"]').first();
  await slider.waitFor();
  const power = () => slider.inputValue();
  return {
    page,
    slider,
    strip: page.locator(".strip"),
    power,
    step: async () => {
      await slider.focus();
      await page.keyboard.press("ArrowRight");
      return power();
    },
    press: (name) => page.getByRole("button", { name, exact: typeof name === "string" }).first().click(),
    kept: () => page.evaluate(keptInPage),
  };
}

/** Runs in the page. */
async function keptInPage(): Promise<readonly { readonly name: string; readonly text: string }[]> {
  const answer = <T>(request: IDBRequest<T>) =>
    new Promise<T>((resolve, reject) => {
      request.onsuccess = () => resolve(request.result);
      request.onerror = () => reject(request.error);
    });
  const database = await answer(indexedDB.open("airledger", 1));
  const records = await answer(database.transaction("builds").objectStore("builds").getAll());
  database.close();
  return records;
}
