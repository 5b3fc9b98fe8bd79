import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { PageHead } from "@/app/_components/entry.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { findCheckStandard } from "@/lib/store/check-standards.ts";
import { database } from "@/lib/store/database.ts";
import { listInstruments } from "@/lib/store/instruments.ts";
import { BenchTabs } from "../../../bench-tabs.tsx";
import { StandardForm } from "../../standard-form.tsx";

export const metadata: Metadata = { title: "Change a check standard" };

export default async function EditCheckStandardPage({ params }: { params: Promise<{ id: string }> }) {
  const { id } = await params;
  const db = database();
  const [standard, instruments] = await Promise.all([findCheckStandard(db, { id }), listInstruments(db)]);
  if (!standard) notFound();
  return (
    <>
      <PageHead kicker={standard.name} title="Change this check standard">
        <p>Every session in which it was read is worked out afresh. Published pages stay as they are.</p>
      </PageHead>
      <BenchTabs current={paths.benchCheckStandards()} />
      <StandardForm standard={standard} modes={[...new Set(instruments.flatMap((i) => i.modes))]} />
    </>
  );
}
