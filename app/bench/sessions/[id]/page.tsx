import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { ActionForm } from "@/app/_components/action-form.tsx";
import { Actions, ButtonLink } from "@/app/_components/button.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { currentPerson } from "@/lib/access/current-person.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { listInstruments } from "@/lib/store/instruments.ts";
import { peopleByIds } from "@/lib/store/people.ts";
import { listReadings } from "@/lib/store/readings.ts";
import { checkedSessions, joinedAsItStands, listSessions, type Session } from "@/lib/store/sessions.ts";
import { counted } from "@/lib/wording/formats.ts";
import { shiftSentence, sittingTime, trainingWords } from "@/lib/wording/sessions.ts";
import { BenchTabs } from "../../bench-tabs.tsx";
import { confirmTraining, removeSession, shiftClock } from "../actions.ts";
import { LeftOver } from "../left-over.tsx";
import { SessionCharts } from "./session-charts.tsx";
import { SessionDoubt } from "./session-doubt.tsx";
import { SessionFit } from "./session-fit.tsx";
import { SessionReadings } from "./session-readings.tsx";

export const metadata: Metadata = { title: "A session" };

const mostReadings = 1_000;

export default async function SessionPage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const db = database();
  const [checked] = await checkedSessions(db, [id]);
  if (!checked) notFound();
  const { session } = checked;
  const [readings, sessions, instruments, joined, operators] = await Promise.all([
    listReadings(db, { sessionId: id, viewerId: (await currentPerson())?.id ?? null }, mostReadings),
    listSessions(db),
    listInstruments(db),
    joinedAsItStands(db, { instrumentId: session.instrumentId }),
    peopleByIds(db, session.operatorId ? [session.operatorId] : []),
  ]);
  return (
    <>
      <PageHead kicker={session.instrument.name} title={`Session of ${sittingTime(session)}`} />
      <BenchTabs current={paths.benchSessions()} />
      <Ledger>
        <Entry title="The sitting" id="sitting">
          <Facts
            facts={[
              { name: "Analyser", value: `${session.instrument.name} (${session.instrument.serial})` },
              { name: "Operator", value: session.operatorName ?? operators[0]?.name ?? "not named" },
              { name: "Trained", value: session.trained ? "confirmed" : null },
              { name: "Place", value: session.place },
              { name: "Time zone", value: session.timeZone.replaceAll("_", " ") },
              { name: "Conditions", value: session.conditions },
              { name: "Note", value: session.note },
              { name: "Readings", value: `${session.readings}, of them ${counted(session.checks, "check")}` },
            ]}
          />
          {session.clockShiftMinutes === 0 ? null : <ClockShift session={session} />}
          {session.trained ? null : (
            <>
              <Warning>
                <p>{trainingWords.missing}</p>
              </Warning>
              <ActionForm action={confirmTraining} submit="The operator confirmed it" submitKind="secondary" compact>
                <input type="hidden" name="id" value={id} />
              </ActionForm>
            </>
          )}
          <Actions>
            <ButtonLink href={paths.benchEditSession(id)}>Change this session</ButtonLink>
          </Actions>
        </Entry>
        <SessionFit checked={checked} />
        <SessionDoubt checked={checked} readings={readings} />
        <SessionCharts checked={checked} />
        <SessionReadings checked={checked} readings={readings} />
        <LeftOver joined={{ ...joined, unplaced: [] }} sessions={sessions} instruments={instruments} />
        <Entry title="Take it away" id="remove">
          <Disclosure summary="Take this session away">
            <p>
              Its readings stay, without a session; their pages then say that nothing shows whether the analyser was
              fit.
            </p>
            <ActionForm action={removeSession} submit="Yes, take it away" submitKind="secondary">
              <input type="hidden" name="id" value={id} />
            </ActionForm>
          </Disclosure>
        </Entry>
      </Ledger>
    </>
  );
}

function ClockShift({ session }: { session: Session }) {
  return (
    <>
      <p>{shiftSentence(session.clockShiftMinutes)}</p>
      <ActionForm action={shiftClock} submit="Its clock was right after all" submitKind="quiet" compact>
        <input type="hidden" name="id" value={session.id} />
        <input type="hidden" name="minutes" value="0" />
      </ActionForm>
    </>
  );
}
