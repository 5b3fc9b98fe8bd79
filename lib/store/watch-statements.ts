import { errorFacts, log } from "../platform/log.ts";
import { metrics } from "../platform/metrics.ts";
import { running } from "../platform/running.ts";

/** Asked of the client when it is made, so that it tells of each statement. */
export const watched = { log: [{ emit: "event" as const, level: "query" as const }] };

type Told = { query: string; duration: number };
type Teller = { $on: (event: "query", hear: (told: Told) => void) => unknown };

/** Counts every statement's time; one that took long is written to the log as it was prepared, without the values it was given. */
export function watchStatements<T>(client: T): T {
  (client as unknown as Teller).$on("query", ({ query, duration }) => {
    try {
      metrics().queries.observe(duration / 1000);
      if (duration >= running().SLOW_QUERY_MS)
        log().warn(
          { ms: Math.round(duration), statement: query.replaceAll(/\s+/g, " ").slice(0, 500) },
          "slow statement",
        );
    } catch (error) {
      log().error(errorFacts(error), "a statement could not be counted");
    }
  });
  return client;
}
