import { systemClock } from "@/lib/platform/clock.ts";
import { environment } from "@/lib/platform/environment.ts";
import type { LogHead } from "@/lib/publication/log-head.ts";
import { database } from "@/lib/store/database.ts";
import { newestHead } from "@/lib/store/log-heads.ts";
import { signLogHead } from "@/lib/workflows/sign-log-head.ts";

/**
 * The log's head, signed now where it was not yet. A key that cannot be read must not take the log from its readers: the
 * trouble goes to the server's own log, and the newest head that is signed is shown.
 */
export async function signedHead(): Promise<LogHead | null> {
  try {
    return await signLogHead(database(), { dataDir: environment().dataDir, clock: systemClock });
  } catch (error) {
    console.error("The log's head could not be signed", error);
    return newestHead(database());
  }
}
