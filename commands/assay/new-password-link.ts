import { systemClock } from "../../lib/platform/clock.ts";
import { paths } from "../../lib/platform/paths.ts";
import { openDatabase } from "../../lib/store/database.ts";
import { passwordLinkWords } from "../../lib/wording/account.ts";
import { problemSentence } from "../../lib/wording/problems.ts";
import { makePasswordLinkAtMachine } from "../../lib/workflows/make-password-link.ts";
import { registryPlace } from "./registry-place.ts";
import { UsageError } from "./usage-error.ts";

/**
 * `npm run assay -- new-password-link E-MAIL`: for an owner who has forgotten their password and for whom nobody else could make a link.
 * Whoever runs it has the machine, and with it the database; it is written down all the same.
 */
export async function run(args: string[]): Promise<number> {
  const [email, ...others] = args;
  if (email === undefined || others.length > 0)
    throw new UsageError("Name one person: npm run assay -- new-password-link name@example.org.");
  const { databaseUrl, baseUrl } = registryPlace();
  const db = openDatabase(databaseUrl);
  try {
    const outcome = await makePasswordLinkAtMachine(db, email, systemClock);
    if (!outcome.ok) throw new UsageError(outcome.problems.map(problemSentence).join(" "));
    const { name, token } = outcome.value;
    process.stdout.write(`${passwordLinkWords.made(name, `${baseUrl}${paths.join(token)}`)}\n`);
    return 0;
  } finally {
    await db.$disconnect();
  }
}
