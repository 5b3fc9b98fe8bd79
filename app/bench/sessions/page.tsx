import type { Metadata } from "next";
import { Actions, ButtonLink } from "@/app/_components/button.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { listInstruments } from "@/lib/store/instruments.ts";
import { checkedSessions, joinedAsItStands, listSessions } from "@/lib/store/sessions.ts";
import { dayStates, sittingTime } from "@/lib/wording/sessions.ts";
import { BenchTabs } from "../bench-tabs.tsx";
import { LeftOver } from "./left-over.tsx";

export const metadata: Metadata = { title: "Sessions" };

export default async function SessionsPage() {
  const db = database();
  const [sessions, instruments, joined] = await Promise.all([
    listSessions(db),
    listInstruments(db),
    joinedAsItStands(db),
  ]);
  const checked = new Map(
    (
      await checkedSessions(
        db,
        sessions.map((s) => s.id),
      )
    ).map(({ session, fitness }) => [session.id, dayStates(fitness.elements)]),
  );
  return (
    <>
      <PageHead title="Sessions">
        <p>One sitting with an analyser. Its check standards show whether the analyser was fit for what was read.</p>
      </PageHead>
      <BenchTabs current={paths.benchSessions()} />
      <Ledger>
        <Entry title="Sessions" id="sessions">
          <Actions>
            <ButtonLink kind="primary" href={paths.benchNewSession()}>
              Open a session
            </ButtonLink>
          </Actions>
          {sessions.length === 0 ? (
            <EmptyState title="No sessions yet" headingLevel={3}>
              <p>Open one before you measure, or from the times of a file that is loaded.</p>
            </EmptyState>
          ) : (
            <DataTable
              caption="Sessions, the latest first"
              hideCaption
              rows={sessions}
              rowKey={(s) => s.id}
              columns={[
                {
                  key: "time",
                  head: "When",
                  roomy: true,
                  cell: (s) => <a href={paths.benchSession(s.id)}>{sittingTime(s)}</a>,
                },
                { key: "instrument", head: "Analyser", nowrap: true, cell: (s) => s.instrument.name },
                { key: "fit", head: "Was it fit?", roomy: true, cell: (s) => checked.get(s.id) },
                { key: "readings", head: "Readings", numeric: true, cell: (s) => s.readings },
                { key: "checks", head: "Of them checks", numeric: true, cell: (s) => s.checks },
              ]}
            />
          )}
        </Entry>
        <LeftOver joined={joined} sessions={sessions} instruments={instruments} />
      </Ledger>
    </>
  );
}
