import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { fileURLToPath } from "node:url";
import { type Browser, chromium } from "playwright-core";
import { build, preview } from "vite";
import { findChromium } from "../../.dev/chromium.mjs";

const configFile = fileURLToPath(new URL("../../vite.config.ts", import.meta.url));

/**
 * Builds the page into a folder of its own, serves it as `vite preview` does, and opens a browser on it.
 *
 * @param use gets the page's address and the browser; both are gone after it
 */
export async function withServedPage(use: (address: string, browser: Browser) => Promise<void>): Promise<void> {
  const executablePath = findChromium();
  if (executablePath === null) throw new Error("no Chromium was found; set CHROMIUM_PATH to the program's path");
  const outDir = mkdtempSync(join(tmpdir(), "airledger-bench-"));
  try {
    await build({ configFile, logLevel: "error", build: { outDir, emptyOutDir: true } });
    // Port 0 takes any free one.
    const server = await preview({
      configFile,
      logLevel: "error",
      build: { outDir },
      preview: { host: "127.0.0.1", port: 0, strictPort: false, open: false },
    });
    const browser = await chromium.launch({
      executablePath,
      args: ["--no-sandbox", "--disable-gpu", "--disable-quic"],
    });
    try {
      await use(server.resolvedUrls!.local[0]!, browser);
    } finally {
      await browser.close();
      await server.close();
    }
  } finally {
    rmSync(outDir, { recursive: true, force: true });
  }
}
