import type { Instrumentation } from "next";

/**
 * Runs once when the server starts: settings and secrets are checked, requests are watched from the first one on. Without an owner, it prints the one-time token that guards the set-up page. A log whose
 * newest entry is not signed yet is signed.
 */
export async function register(): Promise<void> {
  if (process.env.NEXT_RUNTIME !== "nodejs") return;
  const { environment } = await import("./lib/platform/environment.ts");
  await startWatching(environment().baseUrl, environment().dataDir);
  const { database } = await import("./lib/store/database.ts");
  const { offerSetUp } = await import("./lib/workflows/set-up-owner.ts");
  const { paths } = await import("./lib/platform/paths.ts");
  const { signedHead } = await import("./app/_log/signed-head.ts");
  await signedHead();
  const { indexWhatIsMissing } = await import("./lib/store/search-index.ts");
  const { categoryLabels, labelOf } = await import("./lib/wording/labels.ts");
  await indexWhatIsMissing(database(), (category) => labelOf(categoryLabels, category));
  const token = await offerSetUp(database());
  if (token)
    console.log(
      `\nNo owner yet. Open ${environment().baseUrl}${paths.setUp()} and give this one-time token: ${token}\n`,
    );
}

async function startWatching(baseUrl: string, dataDir: string): Promise<void> {
  const { running } = await import("./lib/platform/running.ts");
  const { secretFaults } = await import("./lib/platform/check-secrets.ts");
  const { watchRequests } = await import("./lib/platform/watch-requests.ts");
  const { serveMetrics } = await import("./lib/platform/metrics.ts");
  const { TRUSTED_PROXIES, METRICS_PORT } = running();
  const faults = secretFaults(dataDir);
  if (faults.length > 0) {
    console.error(`The registry does not start: its secrets are not kept well.\n  ${faults.join("\n  ")}`);
    process.exit(1);
  }
  watchRequests({ trustedProxies: TRUSTED_PROXIES, httpsOnly: baseUrl.startsWith("https:") });
  if (METRICS_PORT !== undefined) await serveMetrics(METRICS_PORT);
}

/** An exception while answering: a bug or a broken machine. Written down by the request's id, which the answer carries too. */
export const onRequestError: Instrumentation.onRequestError = async (error, request) => {
  if (process.env.NEXT_RUNTIME !== "nodejs") return;
  const { errorFacts, log } = await import("./lib/platform/log.ts");
  const { pathToLog } = await import("./lib/platform/watch-requests.ts");
  const id = request.headers["x-request-id"];
  log().error(
    { requestId: id, method: request.method, path: pathToLog(request.path), ...errorFacts(error) },
    "not answered",
  );
};
