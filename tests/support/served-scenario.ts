import { rmSync } from "node:fs";
import type { TestProject } from "vitest/node";
import { startPostgres } from "../../commands/postgres.mjs";
import { type LoadedScenario, loadScenario } from "./serve-scenario.ts";

declare module "vitest" {
  export interface ProvidedContext {
    scenario: LoadedScenario;
  }
}

/**
 * Once for all browser tests: the scenario, loaded. Each file of tests serves a copy of its own. With
 * ASSAY_TEST_DATABASE=postgres its records lie on a PostgreSQL server of the run's own, which keeps every write as a real one does.
 */
export default async function setup(project: TestProject): Promise<() => void> {
  const server = process.env.ASSAY_TEST_DATABASE === "postgres" ? await startPostgres({ durable: true }) : null;
  let scenario: LoadedScenario;
  try {
    scenario = loadScenario(server);
  } catch (error) {
    server?.stop();
    throw error;
  }
  project.provide("scenario", scenario);
  return () => {
    server?.stop();
    rmSync(scenario.folder, { recursive: true, force: true });
  };
}
