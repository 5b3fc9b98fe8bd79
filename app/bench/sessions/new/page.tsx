import type { Metadata } from "next";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { requirePerson } from "@/lib/access/require-person.ts";
import { shiftedTime } from "@/lib/consistency/join-sessions.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { listInstruments } from "@/lib/store/instruments.ts";
import { listPeople } from "@/lib/store/people.ts";
import { BenchTabs } from "../../bench-tabs.tsx";
import { SessionForm } from "../session-form.tsx";

export const metadata: Metadata = { title: "Open a session" };

type Props = { searchParams: Promise<{ instrument?: string; from?: string; to?: string }> };

const moment = /^\d{4}-\d\d-\d\dT\d\d:\d\d(:\d\d)?(Z|[+-]\d\d:\d\d)$/;

export default async function NewSessionPage({ searchParams }: Props) {
  const person = await requirePerson("see-bench", paths.benchNewSession());
  const { instrument, from, to } = await searchParams;
  const db = database();
  const [instruments, people] = await Promise.all([listInstruments(db), listPeople(db)]);
  // The form has no seconds, and the last reading must not fall outside by its own.
  const session = {
    operatorId: person.id,
    ...(instrument ? { instrumentId: instrument } : {}),
    ...(from && moment.test(from) ? { startedAt: from } : {}),
    ...(to && moment.test(to) ? { endedAt: shiftedTime(to, 1) } : {}),
  };
  return (
    <>
      <PageHead title="Open a session">
        <p>
          {from
            ? "Filled in from the times that the analyser wrote. Put them right where its clock was wrong."
            : "Readings join it by their times, those already loaded and those to come."}
        </p>
      </PageHead>
      <BenchTabs current={paths.benchSessions()} />
      {instruments.length === 0 ? (
        <EmptyState title="No analyser is known yet">
          <p>
            <a href={paths.benchInstruments()}>Add the analyser first</a>.
          </p>
        </EmptyState>
      ) : (
        <SessionForm session={session} instruments={instruments} people={people} />
      )}
    </>
  );
}
