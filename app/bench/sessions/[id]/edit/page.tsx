import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { PageHead } from "@/app/_components/entry.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { listInstruments } from "@/lib/store/instruments.ts";
import { listPeople } from "@/lib/store/people.ts";
import { findSession } from "@/lib/store/sessions.ts";
import { BenchTabs } from "../../../bench-tabs.tsx";
import { SessionForm } from "../../session-form.tsx";

export const metadata: Metadata = { title: "Change a session" };

export default async function EditSessionPage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const db = database();
  const [session, instruments, people] = await Promise.all([findSession(db, id), listInstruments(db), listPeople(db)]);
  if (!session) notFound();
  return (
    <>
      <PageHead kicker={session.label} title="Change this session">
        <p>Readings join and leave it as its times change.</p>
      </PageHead>
      <BenchTabs current={paths.benchSessions()} />
      <SessionForm id={id} session={session} instruments={instruments} people={people} />
    </>
  );
}
