import type { TestProject } from "vitest/node";
import { serveScenario } from "./serve-scenario.ts";

declare module "vitest" {
  export interface ProvidedContext {
    base: string;
    passwords: Record<string, string>;
  }
}

/** Once for all browser tests: the built product over the scenario. */
export default async function setup(project: TestProject): Promise<() => Promise<void>> {
  const { base, passwords, stop } = await serveScenario();
  project.provide("base", base);
  project.provide("passwords", passwords);
  return stop;
}
