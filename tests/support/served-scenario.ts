import { rmSync } from "node:fs";
import type { TestProject } from "vitest/node";
import { type LoadedScenario, loadScenario } from "./serve-scenario.ts";

declare module "vitest" {
  export interface ProvidedContext {
    scenario: LoadedScenario;
  }
}

/** Once for all browser tests: the scenario, loaded. Each file of tests serves a copy of its own. */
export default function setup(project: TestProject): () => void {
  const scenario = loadScenario();
  project.provide("scenario", scenario);
  return () => rmSync(scenario.folder, { recursive: true, force: true });
}
