import { systemClock } from "../platform/clock.ts";
import type { Context } from "../platform/context.ts";
import { database } from "../store/database.ts";
import { currentPerson } from "./current-person.ts";

/** The context of the request in hand: the process's database, whoever is signed in, the time now. */
export async function requestContext(): Promise<Context> {
  return { db: database(), person: await currentPerson(), clock: systemClock };
}
