import { writeSync } from "node:fs";
import { join } from "node:path";
import sharp from "sharp";
import type { Context } from "../../lib/platform/context.ts";
import { openDatabase } from "../../lib/store/database.ts";
import { addPhotoWorkflow } from "../../lib/workflows/add-photo.ts";
import { publishItemWorkflow } from "../../lib/workflows/publish-item.ts";
import { startRevisionWorkflow } from "../../lib/workflows/start-revision.ts";
import { loadReadings, must } from "./bench-item.ts";

/** A process that works on a registry until it is ended: imports, photos, publications. Each thing kept is a line: what, and its id. */
const dataDir = process.argv[2] ?? "";
const db = openDatabase(process.argv[3] ?? join(dataDir, "registry.db"));
const kept = (what: string, id: string) => writeSync(1, `${what} ${id}\n`);

async function work(): Promise<void> {
  const owner = await db.user.findFirstOrThrow({ where: { role: "owner" } });
  const person = { id: owner.id, name: owner.name, email: owner.email, role: "owner" as const };
  const context: Context = { db, person, clock: () => new Date() };
  const { id: itemId } = await db.item.findFirstOrThrow();
  for (let n = 0; ; n += 1) {
    const [reading] = await loadReadings(
      context,
      `No,Sample,Seconds,Pb (ppm),Pb 2σ\n${[1, 2, 3].map((row) => `${n * 10 + row},busy ${process.pid},40,${100 + n}.5,9`).join("\n")}\n`,
    );
    kept("batch", reading?.batchId ?? "");
    const background = { r: n % 256, g: Math.floor(n / 256) % 256, b: process.pid % 256 };
    const bytes = await sharp({ create: { width: 64, height: 48, channels: 3, background } })
      .png()
      .toBuffer();
    const photo = { itemId, alt: "A square of one colour" };
    kept("photo", must(await addPhotoWorkflow(context, photo, { name: "busy.png", bytes }, dataDir)));
    must(await startRevisionWorkflow(context, { itemId, kind: "update", reason: "A revision under load." }));
    const published = await publishItemWorkflow(context, { itemId });
    // The other process may have published what this one started.
    if (published.ok) kept("revision", `${published.value.slug} ${published.value.revision}`);
  }
}
void work();
