import { fileURLToPath } from "node:url";
import { defineConfig } from "vitest/config";

const root = fileURLToPath(new URL(".", import.meta.url));

export default defineConfig({
  resolve: { alias: [{ find: /^@\//, replacement: `${root}/` }] },
  test: {
    include: ["tests/**/*.test.{ts,tsx}"],
    exclude: ["tests/browser/**"],
    globalSetup: ["tests/support/base-database.ts"],
    setupFiles: ["tests/support/seeded-properties.ts"],
    testTimeout: 30_000,
  },
});
