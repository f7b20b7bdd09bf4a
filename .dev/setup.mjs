// Brings a fresh checkout to the point where it can run: packages, and with --browser a Chromium.
// Uses nothing but Node, since it runs before anything is installed.
import { execFileSync } from "node:child_process";
import { createHash } from "node:crypto";
import { existsSync, readFileSync, writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { findChromium } from "./chromium.mjs";

const root = fileURLToPath(new URL("..", import.meta.url));
const quiet = process.argv.includes("--quiet");

requireNode(20, 19);
installPackages();
if (process.argv.includes("--browser")) installBrowser();

function requireNode(major, minor) {
  const [haveMajor, haveMinor] = process.versions.node.split(".").map(Number);
  if (haveMajor > major || (haveMajor === major && haveMinor >= minor)) return;
  fail(`Node is ${process.versions.node}; airledger needs ${major}.${minor} or newer.`);
}

/** Runs "npm ci" unless this lock file was already installed by this Node. */
function installPackages() {
  const stamp = `${root}node_modules/.airledger-installed`;
  const wanted = createHash("sha256").update(readFileSync(`${root}package-lock.json`)).update(process.version).digest("hex");
  if (existsSync(stamp) && readFileSync(stamp, "utf8") === wanted) return;
  say("Installing packages (once; about half a minute) …");
  run("npm", ["ci", "--include=dev", "--ignore-scripts", "--no-audit", "--no-fund", "--loglevel=error"]);
  writeFileSync(stamp, wanted);
}

/** Finds a Chromium, or installs the distribution's where that is allowed. */
function installBrowser() {
  if (findChromium()) return;
  const mayInstall = process.getuid?.() === 0 && existsSync("/usr/bin/apt-get");
  if (mayInstall) {
    say("Installing the distribution's Chromium for the browser tests (once; a minute or two) …");
    run("apt-get", ["update", "-qq"]);
    run("apt-get", ["install", "-y", "-qq", "--no-install-recommends", "chromium", "fonts-dejavu", "fonts-liberation"], {
      DEBIAN_FRONTEND: "noninteractive",
    });
  }
  if (!findChromium()) {
    fail("The browser tests need a Chromium and none was found. Install one, or set CHROMIUM_PATH to the program's path.");
  }
}

function run(command, args, env = {}) {
  try {
    // Everything goes to standard error, so that a command's own output stays clean.
    execFileSync(command, args, { cwd: root, stdio: ["ignore", 2, 2], env: { ...process.env, ...env } });
  } catch {
    fail(`"${command} ${args.join(" ")}" failed; its words stand above.`);
  }
}

function say(words) {
  if (!quiet) console.error(words);
}

function fail(words) {
  console.error(words);
  process.exit(1);
}
