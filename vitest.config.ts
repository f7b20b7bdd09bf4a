import { defineConfig } from "vitest/config";

export default defineConfig({
  test: {
    include: ["tests/**/*.test.ts"],
    sequence: { concurrent: false, shuffle: false },
    testTimeout: 60_000,
    hookTimeout: 120_000,
  },
});
