// Where a Chromium is, for the browser tests and the benchmarks.
import { accessSync, constants } from "node:fs";
import { delimiter, join } from "node:path";

const names = ["chromium", "chromium-browser", "google-chrome", "google-chrome-stable", "chrome", "msedge"];
const usualPlaces = [
  "/usr/bin/chromium",
  "/usr/lib/chromium/chromium",
  "/snap/bin/chromium",
  "/Applications/Chromium.app/Contents/MacOS/Chromium",
  "/Applications/Google Chrome.app/Contents/MacOS/Google Chrome",
];

/** Path of a Chromium: CHROMIUM_PATH, then the PATH, then the usual places; null when there is none. */
export function findChromium() {
  const named = process.env.CHROMIUM_PATH;
  if (named) {
    if (runs(named)) return named;
    throw new Error(`CHROMIUM_PATH is ${named}; there is no program there that may be run`);
  }
  const onPath = (process.env.PATH ?? "").split(delimiter).flatMap((folder) => names.map((name) => join(folder, name)));
  return [...onPath, ...usualPlaces].find(runs) ?? null;
}

function runs(path) {
  try {
    accessSync(path, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}
