import type { Person } from "../access/permissions.ts";
import type { Database } from "../store/database.ts";
import type { Clock } from "./clock.ts";

/** What every workflow is handed: the database, who is asking, and what time it is. */
export type Context = { db: Database; person: Person | null; clock: Clock };
