import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    // Two at a time, whatever the machine: many files wait for a browser more than they work.
    maxWorkers: 2,
    sequence: { concurrent: false, shuffle: false },
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
