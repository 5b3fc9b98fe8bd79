import type { Metadata } from "next";
import { PageHead } from "@/app/_components/entry.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { listInstruments } from "@/lib/store/instruments.ts";
import { BenchTabs } from "../../bench-tabs.tsx";
import { StandardForm } from "../standard-form.tsx";

export const metadata: Metadata = { title: "Add a check standard" };

export default async function NewCheckStandardPage() {
  const modes = [...new Set((await listInstruments(database())).flatMap((i) => i.modes))];
  return (
    <>
      <PageHead title="Add a check standard">
        <p>Copied from its certificate.</p>
      </PageHead>
      <BenchTabs current={paths.benchCheckStandards()} />
      <StandardForm modes={modes} />
    </>
  );
}
