import { z } from "zod";
import type { LogEntry } from "@/lib/publication/snapshot.ts";
import { done, type Outcome, refused } from "@/lib/quantity/problem.ts";
import { revisionsOf, storedRevision } from "@/lib/store/published.ts";
import { readQuery, wholeNumber } from "../../read-query.ts";

const query = z.object({ revision: wholeNumber().optional() });

export type FoundRevision = { entry: LogEntry; json: string /** Asked for by its number. */; fixed: boolean };

/** The revision that an address asks for, the newest without a number. */
export async function findRevision(request: Request, slug: string): Promise<Outcome<FoundRevision>> {
  const asked = readQuery(request, query);
  if (!asked.ok) return asked;
  const revision = asked.value.revision ?? null;
  const stored = await storedRevision(slug, revision);
  if (stored) return done({ ...stored, fixed: revision !== null });
  const revisions = revision === null ? [] : await revisionsOf(slug);
  return revisions.length === 0
    ? refused({ code: "unknown-item", found: slug })
    : refused({ code: "unknown-revision", found: String(revision), allowed: `1 to ${revisions.length}` });
}
