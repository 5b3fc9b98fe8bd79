import { copyFileSync, mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import type { Context } from "../../lib/platform/context.ts";
import { openDatabase } from "../../lib/store/database.ts";
import { type CaseKind, caseBytes } from "./case-bytes.ts";
import { type Ending, runFile, runPicture } from "./cases.ts";

/** What the one who watches is told: a case begins, a case ended. Without the second within its time, the case hangs. */
export type Word = { begins: number } | { ended: number; ending: Ending; cpuMs: number };
export type Order = {
  kind: CaseKind;
  from: number;
  to: number;
  seed: number;
  baseDatabase: string;
  scratch: string;
};

const tell = (word: Word): void => void process.send?.(word);
/** Cases that share a database; a new one then, so that look-ups stay short. */
const casesInOne = 250;

async function workplace(
  order: Order,
  turn: number,
): Promise<{ context: Context; itemId: string; dataDir: string; close: () => Promise<void> }> {
  const dataDir = join(order.scratch, `${order.kind}-${turn}`);
  mkdirSync(dataDir, { recursive: true });
  const file = join(order.scratch, `${order.kind}-${turn}.db`);
  copyFileSync(order.baseDatabase, file);
  const db = openDatabase(file);
  const person = { id: "fuzz", name: "Fuzz", email: "fuzz@example.org", role: "tester" as const };
  await db.user.create({ data: person });
  const words = { slug: "fuzz", name: "Fuzz", category: "other", ageGroup: "unknown", createdById: person.id };
  const { id: itemId } = await db.item.create({ data: { ...words, foodContact: false, mouthable: false } });
  return {
    context: { db, person, clock: () => new Date("2026-11-20T10:00:00Z") },
    itemId,
    dataDir,
    close: async () => {
      await db.$disconnect();
      rmSync(dataDir, { recursive: true, force: true });
      for (const end of ["", "-wal", "-shm"]) rmSync(file + end, { force: true });
    },
  };
}

async function work(order: Order): Promise<void> {
  let place = await workplace(order, order.from);
  for (let n = order.from; n < order.to; n += 1) {
    if (n > order.from && n % casesInOne === 0) {
      await place.close();
      place = await workplace(order, n);
    }
    const file = await caseBytes(order, n);
    tell({ begins: n });
    const before = process.cpuUsage();
    let ending: Ending;
    try {
      ending =
        order.kind === "files"
          ? await runFile(place.context, file)
          : await runPicture(place.context, place.itemId, file, place.dataDir);
    } catch (error) {
      ending = {
        end: "bug",
        what: `threw ${error instanceof Error ? (error.stack ?? error.message).slice(0, 600) : error}`,
      };
    }
    const { user, system } = process.cpuUsage(before);
    tell({ ended: n, ending, cpuMs: (user + system) / 1000 });
  }
  await place.close();
}

if (process.send)
  process.once("message", (order: Order) => {
    void work(order).then(() => process.exit(0));
  });
