import { systemClock } from "../../lib/platform/clock.ts";
import { openDatabase } from "../../lib/store/database.ts";
import { problemSentence } from "../../lib/wording/problems.ts";
import { removeSecondStepAtMachine } from "../../lib/workflows/remove-second-step.ts";
import { registryPlace } from "./registry-place.ts";
import { UsageError } from "./usage-error.ts";

/**
 * `npm run assay -- remove-second-step E-MAIL`: for an owner who has lost phone and recovery codes and whom nobody else could let in. Whoever
 * runs it has the machine, and with it the database; it is written down all the same.
 */
export async function run(args: string[]): Promise<number> {
  const [email, ...others] = args;
  if (email === undefined || others.length > 0)
    throw new UsageError("Name one person: npm run assay -- remove-second-step name@example.org.");
  const db = openDatabase(registryPlace().databaseUrl);
  try {
    const outcome = await removeSecondStepAtMachine(db, email, systemClock);
    if (!outcome.ok) throw new UsageError(outcome.problems.map(problemSentence).join(" "));
    process.stdout.write(`The second step of ${outcome.value.name} is gone; the password alone lets them in.\n`);
    return 0;
  } finally {
    await db.$disconnect();
  }
}
