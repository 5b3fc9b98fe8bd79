import { z } from "zod";
import { readQuery, wholeNumber } from "@/app/api/v1/read-query.ts";
import type { PackagedFile } from "@/lib/exports/data-package.ts";
import { absoluteUrl } from "@/lib/exports/published-revision.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import type { LogEntry } from "@/lib/publication/snapshot.ts";
import { done, type Outcome, refused } from "@/lib/quantity/problem.ts";
import { database } from "@/lib/store/database.ts";
import { lastEntry } from "@/lib/store/publications.ts";
import { logEntryAt } from "@/lib/store/published.ts";
import { measureFiles, type RegistryFile, registryFileNames } from "@/lib/workflows/registry-files.ts";

const query = z.object({ seq: wholeNumber().optional() });

export type RegistryAt = { head: LogEntry | null; seq: number /** Asked for by its number. */; fixed: boolean };

/** The registry as it stood at entry `?seq=` of the log; as it stands now without one. */
export async function registryAt(request: Request): Promise<Outcome<RegistryAt>> {
  const asked = readQuery(request, query);
  if (!asked.ok) return asked;
  const last = await lastEntry(database());
  const { seq } = asked.value;
  if (seq === undefined) return done({ head: last, seq: last?.seq ?? 0, fixed: false });
  const head = await logEntryAt(seq);
  if (head) return done({ head, seq, fixed: true });
  return refused({ code: "unknown-log-entry", found: String(seq), ...(last ? { allowed: `1 to ${last.seq}` } : {}) });
}

type Packaged = Record<RegistryFile, PackagedFile>;

/**
 * Size and hash of every file at an entry, kept for the few entries asked for last: the files follow from the log's head
 * alone, and making them again for every question would be work for nothing. One entry is measured at a time.
 */
const measured = new Map<string, Promise<Packaged>>();
const mostKept = 4;
let busy: Promise<unknown> = Promise.resolve();

export function packagedFiles({ head, seq }: RegistryAt): Promise<Packaged> {
  const key = head?.hash ?? "";
  const known = measured.get(key);
  if (known) return known;
  const made = busy.then(() => measureAll(seq));
  busy = made.catch(() => measured.delete(key));
  measured.set(key, made);
  const [oldest] = measured.keys();
  if (measured.size > mostKept && oldest !== undefined) measured.delete(oldest);
  return made;
}

/** Each file at an address that names the entry, so that size and hash hold even when more is published meanwhile. */
async function measureAll(seq: number): Promise<Packaged> {
  const sizes = await measureFiles(database(), seq);
  const files = registryFileNames.map((file) => [
    file,
    { path: absoluteUrl(environment().baseUrl, paths.data[file](seq)), ...sizes[file] },
  ]);
  return Object.fromEntries(files) as Packaged;
}
