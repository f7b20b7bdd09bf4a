import { fileURLToPath } from "node:url";
import { defineConfig } from "vite";

const here = (path: string) => fileURLToPath(new URL(path, import.meta.url));

export default defineConfig({
  root: here("./site"),
  base: "./",
  build: { outDir: here("./dist"), emptyOutDir: true, target: "es2022", assetsInlineLimit: 0, modulePreload: { polyfill: false } },
  preview: { host: "127.0.0.1", port: 4173 },
  server: { host: "127.0.0.1" },
});
