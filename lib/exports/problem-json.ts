import * as z from "zod";
import { paths } from "../platform/paths.ts";
import type { Problem } from "../quantity/problem.ts";
import { problemSentence } from "../wording/problems.ts";
import { absoluteUrl } from "./published-revision.ts";

export const problemJsonType = "application/problem+json";

/** HTTP status and title of each problem the public API answers with. */
export const problemTypes = {
  "invalid-form": { status: 400, title: "A parameter of the query is not understood" },
  "bad-cursor": { status: 400, title: "The cursor does not belong to this query" },
  "not-signed-in": { status: 401, title: "Signing in is needed" },
  "not-allowed": { status: 403, title: "The role does not allow this" },
  "not-found": { status: 404, title: "Nothing stands at this address" },
  "unknown-item": { status: 404, title: "No such item" },
  "unknown-log-entry": { status: 404, title: "No such entry of the log" },
  "unknown-revision": { status: 404, title: "No such revision of this item" },
  "stale-draft": { status: 409, title: "The draft has changed meanwhile" },
  "too-large": { status: 413, title: "Too large" },
  "rate-limited": { status: 429, title: "Too many requests" },
  "read-failed": { status: 500, title: "The server could not read what was asked for" },
  "store-failed": { status: 500, title: "The server could not answer" },
} as const satisfies Record<string, { status: number; title: string }>;

/** The body of an answer that reports a problem (RFC 9457 §3), with our own members beside the standard ones. */
export const problemJsonSchema = z.object({
  type: z.string(),
  title: z.string(),
  status: z.number().int().min(400).max(599),
  detail: z.string(),
  instance: z.string().optional(),
  code: z.string(),
  where: z
    .object({
      file: z.string().optional(),
      row: z.number().optional(),
      column: z.string().optional(),
      field: z.string().optional(),
    })
    .optional(),
  found: z.string().optional(),
  allowed: z.string().optional(),
});
export type ProblemJson = z.infer<typeof problemJsonSchema>;

/**
 * A problem as RFC 9457 has it. `type` points into the OpenAPI document, where each code is described; `status` is the
 * code's own, or the one given (400 for a code that has none).
 */
export function problemJson(
  problem: Problem,
  { baseUrl, instance, status }: { baseUrl: string; instance?: string; status?: number },
): ProblemJson {
  const known = (problemTypes as Record<string, { status: number; title: string }>)[problem.code];
  const { code, where, found, allowed } = problem;
  return {
    type: known ? `${absoluteUrl(baseUrl, paths.api.openapi())}#/x-problem-types/${code}` : "about:blank",
    title: known?.title ?? "The request cannot be answered",
    status: status ?? known?.status ?? 400,
    detail: problemSentence(problem),
    ...(instance === undefined ? {} : { instance }),
    code,
    ...(where === undefined ? {} : { where }),
    ...(found === undefined ? {} : { found }),
    ...(allowed === undefined ? {} : { allowed }),
  };
}
