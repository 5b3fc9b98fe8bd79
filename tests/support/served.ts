import { afterAll, beforeAll, inject } from "vitest";
import { type Served, serveScenario } from "./serve-scenario.ts";

let server: Served | undefined;

/** The server of this file of tests, over its own copy of the scenario, so that no order of files changes what a test sees. */
export function served(): Served {
  if (!server) throw new Error("The server of this file of tests has not been started.");
  return server;
}

beforeAll(async () => {
  // With a line for every request, which some tests read.
  server = await serveScenario(inject("scenario"), { LOG_LEVEL: "info" });
});
afterAll(() => server?.stop());
