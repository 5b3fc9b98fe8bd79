import { mkdirSync, mkdtempSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterEach, expect, it, vi } from "vitest";
import { register } from "@/instrumentation.ts";

afterEach(() => {
  vi.unstubAllEnvs();
  vi.restoreAllMocks();
});

it("the server does not start over secrets that others can read or that are too short, and says which and what to do", async () => {
  const dataDir = mkdtempSync(join(tmpdir(), "assay-start-"));
  mkdirSync(join(dataDir, "keys"), { mode: 0o700 });
  writeFileSync(join(dataDir, "keys", "auth-secret"), "short", { mode: 0o644 });
  vi.stubEnv("NEXT_RUNTIME", "nodejs");
  vi.stubEnv("DATA_DIR", dataDir);
  vi.stubEnv("DATABASE_URL", `file:${join(dataDir, "registry.db")}`);
  vi.stubEnv("BASE_URL", "http://localhost:3000");
  const told = vi.spyOn(console, "error").mockImplementation(() => undefined);
  vi.spyOn(process, "exit").mockImplementation((code) => {
    throw new Error(`ended with ${code}`);
  });
  await expect(register()).rejects.toThrow("ended with 1");
  const [text] = told.mock.calls[0] as [string];
  expect(text).toContain('run: chmod 600 "');
  expect(text).toContain("auth-secret is too short for a secret");
});
