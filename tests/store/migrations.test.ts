import { spawnSync } from "node:child_process";
import { join } from "node:path";
import { pathToFileURL } from "node:url";
import { expect, it } from "vitest";
import { freshDatabase } from "../support/test-context.ts";

const commands = pathToFileURL(join(import.meta.dirname, "..", "..", "commands", "migrate.mjs")).href;

/** In a process of its own: the engine keeps its connection until the process ends. */
function differenceOf(target: string): string {
  const script = `import { difference } from ${JSON.stringify(commands)};
    process.stdout.write(await difference(process.argv[1]));
    process.exit(0);`;
  const run = spawnSync(process.execPath, ["--input-type=module", "-e", script, target], { encoding: "utf8" });
  if (run.status !== 0) throw new Error(run.stderr);
  return run.stdout;
}

it("a migrated database is what the models say, nothing more and nothing less", async () => {
  const { db, url } = freshDatabase();
  const target = url.replace(/^file:/, "");
  expect(differenceOf(target)).toBe("");
  await db.$executeRaw`ALTER TABLE "Item" ADD COLUMN "left" TEXT`;
  await db.$disconnect();
  expect(differenceOf(target)).toContain(`"Item"`);
});
