import { createHash } from "node:crypto";
import { readdirSync, readFileSync, writeFileSync } from "node:fs";
import { join, relative, sep } from "node:path";
import { fileURLToPath } from "node:url";
import { defineConfig, type Plugin } from "vite";
import { explanationsApart } from "./.dev/explanationsApart.ts";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));
const offlineFile = "offline.js";

/** Tells the offline worker every file of the build, and a sign of what they hold: another sign is another version. */
function shippedFiles(): Plugin {
  return {
    name: "shipped-files",
    apply: "build",
    writeBundle({ dir }) {
      const paths = readdirSync(dir!, { recursive: true, withFileTypes: true })
        .filter((entry) => entry.isFile() && entry.name !== offlineFile)
        .map((entry) => join(entry.parentPath, entry.name))
        .sort();
      // The page itself goes by its folder's address: some servers send index.html there.
      const files = paths.map((path) => relative(dir!, path).split(sep).join("/").replace(/^index\.html$/, "./"));
      const worker = join(dir!, offlineFile);
      const code = readFileSync(worker, "utf8");
      const sign = createHash("sha256").update(code);
      for (const [i, path] of paths.entries()) sign.update(`\n${files[i]}\n`).update(readFileSync(path));
      const version = sign.digest("hex").slice(0, 16);
      writeFileSync(worker, `const shippedFiles=${JSON.stringify({ version, files })};\n${code}`);
    },
  };
}

export default defineConfig({
  root: here("./site"),
  base: "./",
  plugins: [explanationsApart(), shippedFiles()],
  build: {
    outDir: here("./dist"),
    emptyOutDir: true,
    target: "es2022",
    assetsInlineLimit: 0,
    modulePreload: { polyfill: false },
    chunkSizeWarningLimit: 800,
    rolldownOptions: {
      input: { index: here("./site/index.html"), offline: here("./site/offline/worker.ts") },
      output: {
        entryFileNames: ({ name }) => (name === "offline" ? offlineFile : "assets/[name]-[hash].js"),
        // What the page needs at once comes as one file: in two dozen it is a tenth longer when compressed.
        codeSplitting: { groups: [{ name: "notebook", tags: ["$initial"], test: (id) => !id.endsWith("/offline/worker.ts") }] },
      },
    },
  },
  preview: { host: "127.0.0.1", port: 4173 },
  server: { host: "127.0.0.1" },
});
