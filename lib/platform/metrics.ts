import { createServer, type Server } from "node:http";
import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from "prom-client";

/** Seconds; the usual steps from a kept page to a long import (common practice, no source). */
const buckets = [0.005, 0.01, 0.025, 0.05, 0.1, 0.25, 0.5, 1, 2.5, 5, 10, 30];

function makeMetrics() {
  const register = new Registry();
  const registers = [register];
  collectDefaultMetrics({ register });
  return {
    register,
    requests: new Counter({
      name: "assay_http_requests_total",
      help: "Requests answered, by side of the product, method and status class.",
      labelNames: ["side", "method", "status"],
      registers,
    }),
    seconds: new Histogram({
      name: "assay_http_request_seconds",
      help: "Time from a request's head to the end of its answer.",
      labelNames: ["side"],
      buckets,
      registers,
    }),
    open: new Gauge({ name: "assay_http_requests_open", help: "Requests being answered.", registers }),
    queries: new Histogram({
      name: "assay_database_statement_seconds",
      help: "Time of a statement as the database client saw it.",
      buckets,
      registers,
    }),
  };
}

const shared = globalThis as { cupboardAssayMetrics?: ReturnType<typeof makeMetrics> };
/** Counted whether anybody reads them or not; one set for the process. */
export const metrics = () => {
  shared.cupboardAssayMetrics ??= makeMetrics();
  return shared.cupboardAssayMetrics;
};

const sides = ["items", "api", "data", "bench", "review", "account", "photos", "requests", "healthz", "_next"];

/** The side of the product that a path belongs to, so that there are few series and none holds an item's name. */
export function sideOf(path: string): string {
  const first = path.split("/")[1] ?? "";
  return sides.includes(first) ? first : "pages";
}

/** Serves the metrics to the machine itself and to nobody else. */
export function serveMetrics(port: number): Promise<Server> {
  const server = createServer(async (request, response) => {
    if (request.method !== "GET" || request.url !== "/metrics") {
      response.writeHead(404).end();
      return;
    }
    response.setHeader("content-type", metrics().register.contentType);
    response.end(await metrics().register.metrics());
  });
  return new Promise((resolve, reject) => {
    server.once("error", reject);
    server.listen(port, "127.0.0.1", () => {
      server.unref();
      resolve(server);
    });
  });
}
