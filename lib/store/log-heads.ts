import type { LogHead } from "../publication/log-head.ts";
import type { Db } from "./database.ts";

/** The newest signed head; null where nothing has been signed yet. */
export const newestHead = (db: Db): Promise<LogHead | null> => db.logHead.findFirst({ orderBy: { seq: "desc" } });

/** The head signed over entry number `seq`. */
export const headAt = (db: Db, seq: number): Promise<LogHead | null> => db.logHead.findUnique({ where: { seq } });

/** Keeps a signed head, and answers with the one that is kept: where two processes signed the same entry, the first stands. */
export async function keepHead(db: Db, head: LogHead): Promise<LogHead> {
  await db.$executeRaw`
    INSERT INTO "LogHead" (seq, hash, "signedAt", "publicKey", signature)
    VALUES (${head.seq}, ${head.hash}, ${head.signedAt}, ${head.publicKey}, ${head.signature})
    ON CONFLICT (seq) DO NOTHING`;
  return (await headAt(db, head.seq)) ?? head;
}

/** The first head that each key signed, oldest first: when the registry's key changed. */
export async function firstHeadOfEachKey(db: Db): Promise<LogHead[]> {
  const heads = await db.logHead.findMany({ orderBy: { seq: "asc" } });
  return heads.filter((head, i) => heads.findIndex((other) => other.publicKey === head.publicKey) === i);
}
