import { problemJson, problemJsonType } from "@/lib/exports/problem-json.ts";
import { systemClock } from "@/lib/platform/clock.ts";
import { environment } from "@/lib/platform/environment.ts";
import { errorFacts, log } from "@/lib/platform/log.ts";
import { takeReadTurn } from "@/lib/platform/read-turns.ts";
import { running } from "@/lib/platform/running.ts";
import { sha256 } from "@/lib/platform/sha256.ts";
import type { Problem } from "@/lib/quantity/problem.ts";

/** Answers for machines: open to every origin, with an ETag and a word on how long they stay true. */
const openToAll = {
  "access-control-allow-origin": "*",
  "access-control-expose-headers": "ETag, Link, Content-Location, Content-Disposition",
};

const lasting = {
  /** A published revision never changes. */
  "for-ever": "public, max-age=31536000, immutable",
  /** Made from what never changes, by a program that may learn to say more. */
  "a-day": "public, max-age=86400",
  /** The newest state: may be kept, must be asked about. */
  newest: "public, max-age=0, must-revalidate",
} as const;

export type ReplyAbout = {
  type: string;
  lasts: keyof typeof lasting;
  /** Made of the text's SHA-256 where it is not given. */
  etag?: string;
  headers?: Record<string, string>;
};

/**
 * The body with its headers, or 304 without it where the reader holds it already (RFC 9110 §13.1.2). A stream is given as a
 * function, so that it is not begun in vain.
 */
export function reply(request: Request, body: string, about: ReplyAbout): Response;
export function reply(
  request: Request,
  body: () => ReadableStream<Uint8Array>,
  about: ReplyAbout & { etag: string },
): Response;
export function reply(request: Request, body: string | (() => ReadableStream<Uint8Array>), about: ReplyAbout) {
  const etag = about.etag ?? `"${typeof body === "string" ? sha256(body) : ""}"`;
  const headers = { ...openToAll, "cache-control": lasting[about.lasts], etag, ...about.headers };
  if (holds(request, etag)) return new Response(null, { status: 304, headers });
  const content = typeof body === "string" ? new TextEncoder().encode(body) : body();
  return new Response(content, { headers: { ...headers, "content-type": about.type } });
}

/** Weak comparison of every tag in If-None-Match, as that header asks for. */
function holds(request: Request, etag: string): boolean {
  const plain = (tag: string): string => tag.trim().replace(/^W\//, "");
  const tags = (request.headers.get("if-none-match") ?? "").split(",").map(plain);
  return tags.includes("*") || tags.includes(plain(etag));
}

export const jsonReply = (request: Request, value: unknown, about: Partial<ReplyAbout> = {}): Response =>
  reply(request, `${JSON.stringify(value)}\n`, { type: "application/json", lasts: "newest", ...about });

/** The first problem as RFC 9457 has it, with its own status. */
export function problemReply(
  request: Request,
  problems: readonly Problem[],
  more: Record<string, string> = {},
): Response {
  const [problem = { code: "read-failed" }] = problems;
  const body = problemJson(problem, { baseUrl: environment().baseUrl, instance: new URL(request.url).pathname });
  return new Response(`${JSON.stringify(body)}\n`, {
    status: body.status,
    headers: { ...openToAll, "content-type": problemJsonType, "cache-control": "no-store", ...more },
  });
}

/**
 * Runs a handler, unless its asker has had many answers in this minute; what breaks is written to the server's own log and answered
 * as a problem that tells nothing of it.
 */
export async function answered(request: Request, work: () => Promise<Response>): Promise<Response> {
  const wait = takeReadTurn(
    request.headers.get("x-forwarded-for") ?? "",
    running().READS_A_MINUTE,
    systemClock().getTime(),
  );
  if (wait > 0)
    return problemReply(request, [{ code: "rate-limited", allowed: `${wait} seconds` }], {
      "retry-after": String(wait),
    });
  try {
    return await work();
  } catch (error) {
    const path = new URL(request.url).pathname;
    log().error({ requestId: request.headers.get("x-request-id"), path, ...errorFacts(error) }, "not answered");
    return problemReply(request, [{ code: "read-failed" }]);
  }
}

/** What a browser asks before it sends If-None-Match from another origin. */
export const preflight = (): Response =>
  new Response(null, {
    status: 204,
    headers: {
      ...openToAll,
      "access-control-allow-methods": "GET, HEAD, OPTIONS",
      "access-control-allow-headers": "If-None-Match",
      "access-control-max-age": "86400",
    },
  });
