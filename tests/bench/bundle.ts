import { brotliCompressSync, gzipSync } from "node:zlib";
import type { Browser, Response } from "playwright-core";
import { aligned } from "./table";

/** Most JavaScript that the first load may bring, compressed as servers do it with files that do not change [kB] */
const mostScript = 200;

/** What the first load of the page brings, compressed as a server would, and how long until it can be used. */
export async function bundleReport(address: string, browser: Browser): Promise<string> {
  const page = await browser.newPage({ viewport: { width: 1440, height: 900 } });
  try {
    const responses: Response[] = [];
    page.on("response", (response) => responses.push(response));
    const start = performance.now();
    await page.goto(address);
    await page.locator("input[type=range]").first().waitFor({ state: "visible" });
    const usable = performance.now() - start;
    await page.waitForLoadState("networkidle");
    const sizes = { script: 0, stylesheet: 0, other: 0 };
    let gzipped = 0;
    for (const response of responses) {
      const type = response.request().resourceType();
      const body = await response.body();
      sizes[type === "script" || type === "stylesheet" ? type : "other"] += brotliCompressSync(body).length;
      if (type === "script") gzipped += gzipSync(body, { level: 9 }).length;
    }
    const script = sizes.script / 1000;
    return aligned([
      ["", "measured", "budget", ""],
      [
        "JavaScript on first load, Brotli",
        `${script.toFixed(1)} kB`,
        `${mostScript} kB`,
        script <= mostScript ? "kept" : "MISSED",
      ],
      ["  the same with gzip", `${(gzipped / 1000).toFixed(1)} kB`, "", ""],
      ["Styles on first load, Brotli", `${(sizes.stylesheet / 1000).toFixed(1)} kB`, "", ""],
      ["Everything else, Brotli", `${(sizes.other / 1000).toFixed(1)} kB`, "", ""],
      ["First slider to be seen after", `${usable.toFixed(0)} ms`, "1000 ms", usable <= 1000 ? "kept" : "MISSED"],
    ]);
  } finally {
    await page.close();
  }
}
