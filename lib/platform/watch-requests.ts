import { randomUUID } from "node:crypto";
import { subscribe } from "node:diagnostics_channel";
import type { IncomingMessage, ServerResponse } from "node:http";
import { clientAddress } from "./forwarded.ts";
import { log } from "./log.ts";
import { metrics, sideOf } from "./metrics.ts";

type Begun = { request: IncomingMessage; response: ServerResponse };

const givenId = /^[\w-]{8,64}$/;

/** The path as it may be written down: what is looked for is left out, and so is a one-time link's token. */
export const pathToLog = (url: string): string => (url.split("?")[0] ?? "").replace(/^(\/account\/join\/).+/, "$1…");

/**
 * Sees every request before the product does (Node's own channel of the HTTP server): gives it an id, puts the asker's
 * address where later readers look for it, and counts and logs how it ended. Headers that only a proxy of ours may set are believed
 * from no one else.
 */
export function watchRequests({ trustedProxies, httpsOnly }: { trustedProxies: number; httpsOnly: boolean }): void {
  // Too long, or no HTTP at all: the server answers, nothing of ours sees it (server.mjs).
  subscribe("cupboard-assay:request-unread", (message) => {
    const { code, status } = message as { code: string; status: number };
    log().info({ refused: [code], status }, "request not read");
  });
  subscribe("http.server.request.start", (message) => {
    const { request, response } = message as Begun;
    if (request.url === "/metrics") return;
    const began = performance.now();
    const given = trustedProxies > 0 ? String(request.headers["x-request-id"] ?? "") : "";
    const id = givenId.test(given) ? given : randomUUID();
    const from = request.headers["x-forwarded-for"];
    request.headers["x-request-id"] = id;
    request.headers["x-forwarded-for"] = clientAddress(
      Array.isArray(from) ? from.join(",") : from,
      request.socket.remoteAddress ?? "",
      trustedProxies,
    );
    if (trustedProxies === 0) delete request.headers["x-forwarded-host"];
    response.setHeader("x-request-id", id);
    if (httpsOnly) response.setHeader("strict-transport-security", "max-age=31536000");
    metrics().open.inc();
    response.once("close", () => {
      const ms = performance.now() - began;
      const path = pathToLog(request.url ?? "");
      const side = sideOf(path);
      const method = request.method ?? "";
      const status = response.statusCode;
      metrics().open.dec();
      metrics().requests.inc({ side, method, status: `${Math.floor(status / 100)}xx` });
      metrics().seconds.observe({ side }, ms / 1000);
      log()[status >= 500 ? "warn" : "info"](
        {
          requestId: id,
          method,
          path,
          status,
          ms: Math.round(ms),
          ...(response.writableFinished ? {} : { cutOff: true }),
        },
        "request",
      );
    });
  });
}
