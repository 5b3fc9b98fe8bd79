import { access, constants, statfs } from "node:fs/promises";
import { environment } from "@/lib/platform/environment.ts";
import { database } from "@/lib/store/database.ts";
import { newestHead } from "@/lib/store/log-heads.ts";
import { lastEntry } from "@/lib/store/publications.ts";

export type Health = { ready: boolean; checks: { database: string; disk: string; log: string } };

/** Below this the next photo or import may not fit (our own choice). */
const leastFree = 200_000_000;

/** What the product stands on, each with a word for people; `tell` hears why something does not work. */
export async function health(tell: (what: string, error: unknown) => void): Promise<Health> {
  const failed = (what: string, says: string) => (error: unknown) => {
    tell(what, error);
    return { ok: false, says };
  };
  const [disk, log] = await Promise.all([
    diskState(environment().dataDir).catch(failed("disk", "the data folder cannot be written")),
    logState().catch(failed("database", "the database does not answer")),
  ]);
  const down = log.says === "the database does not answer";
  return {
    ready: disk.ok && log.ok,
    checks: { database: down ? log.says : "answers", disk: disk.says, log: down ? "not known" : log.says },
  };
}

async function diskState(dataDir: string): Promise<{ ok: boolean; says: string }> {
  await access(dataDir, constants.W_OK);
  const { bavail, bsize } = await statfs(dataDir);
  const free = bavail * bsize;
  return free < leastFree
    ? { ok: false, says: `nearly full, ${Math.round(free / 1e6)} MB left` }
    : { ok: true, says: "room to write" };
}

async function logState(): Promise<{ ok: boolean; says: string }> {
  const last = await lastEntry(database());
  if (!last) return { ok: true, says: "no entry yet" };
  const signed = await newestHead(database());
  return { ok: true, says: `head ${last.seq}${signed?.seq === last.seq ? ", signed" : ", not signed yet"}` };
}
