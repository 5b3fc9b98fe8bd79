import { Entry } from "@/app/_components/entry.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { listInstruments } from "@/lib/store/instruments.ts";
import { listReadings } from "@/lib/store/readings.ts";
import { checkedSessions, joinedAsItStands, listSessions, sessionIdsOfBatch } from "@/lib/store/sessions.ts";
import { counted } from "@/lib/wording/formats.ts";
import { dayStates, sittingTime, uncountedSentence } from "@/lib/wording/sessions.ts";
import { LeftOver } from "./left-over.tsx";

/** Where the readings of one file went: their sessions, the checks among them, and what has no session yet. */
export async function ImportSessions({ batchId }: { batchId: string }) {
  const db = database();
  const [readings, joined, sessions, instruments] = await Promise.all([
    listReadings(db, { batchId, check: true }, 5_000),
    joinedAsItStands(db, { batchId }),
    listSessions(db),
    listInstruments(db),
  ]);
  const own = await sessionIdsOfBatch(db, batchId);
  const checked = await checkedSessions(db, own);
  const ids = new Set(readings.map((r) => r.id));
  return (
    <>
      <Entry title="Sessions and checks" id="sessions" aside={counted(readings.length, "check")}>
        {checked.length > 0 ? (
          <ul>
            {checked.map(({ session, fitness }) => (
              <li key={session.id}>
                <a href={paths.benchSession(session.id)}>{sittingTime(session)}</a>. Was the analyser fit?{" "}
                {dayStates(fitness.elements)}.
              </li>
            ))}
          </ul>
        ) : (
          <p>None of its readings is in a session, so nothing shows whether the analyser was fit.</p>
        )}
        <p>
          {readings.length === 0
            ? "No check standard was recognised by its name. If one was read, say which sample it is on its page: "
            : `${counted(readings.length, "reading was", "readings were")} taken on a check standard and can be put on no part: `}
          <a href={paths.benchCheckStandards()}>check standards</a>.
        </p>
        {checked.flatMap(({ fitness, standards, checkReadings }) =>
          fitness.uncounted
            .filter((u) => ids.has(u.readingId))
            .map(({ readingId, standardId, why }) => {
              const reading = checkReadings.find((r) => r.id === readingId);
              const standard = standards.find((s) => s.id === standardId);
              return (
                <Warning key={readingId}>
                  <p>
                    {uncountedSentence(why, {
                      standard: standard?.name ?? "",
                      mode: reading?.mode ?? null,
                      modes: standard?.modes ?? [],
                      expiresOn: standard?.expiresOn ?? null,
                    })}
                  </p>
                </Warning>
              );
            }),
        )}
      </Entry>
      <LeftOver joined={joined} sessions={sessions} instruments={instruments} />
    </>
  );
}
