import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { PageHead } from "@/app/_components/entry.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { batchFile } from "@/lib/store/batch-table.ts";
import { database } from "@/lib/store/database.ts";
import { findBatch } from "@/lib/store/imports.ts";
import { problemSentences } from "@/lib/wording/problems.ts";
import { BenchTabs } from "../../bench-tabs.tsx";
import { LoadedImport } from "./loaded-import.tsx";
import { MappingForm } from "./mapping-form.tsx";
import { mappingView } from "./mapping-view.ts";

export const metadata: Metadata = { title: "A file" };

type Props = {
  params: Promise<{ id: string }>;
  searchParams: Promise<{ known?: string; problem?: string; sheet?: string }>;
};

export default async function ImportBatchPage({ params, searchParams }: Props) {
  const { id } = await params;
  const { known, problem, sheet } = await searchParams;
  const db = database();
  const batch = await findBatch(db, id);
  if (!batch) notFound();
  const opened = await batchFile(db, batch, batch.state === "uploaded" ? sheet : null);
  return (
    <>
      <PageHead kicker="File" title={batch.fileName}>
        <p>
          {(batch.size / 1000).toFixed(batch.size < 100_000 ? 1 : 0)} kB, kept as it came. SHA-256{" "}
          <code style={{ overflowWrap: "anywhere" }}>{batch.sha256}</code>
        </p>
      </PageHead>
      <BenchTabs current={paths.benchImport()} />
      {known ? (
        <Warning>This very file is here already: same bytes, same SHA-256. This is the import it has.</Warning>
      ) : null}
      {!opened.ok ? (
        problemSentences(opened.problems).map((text) => <Warning key={text}>{text}</Warning>)
      ) : batch.state === "uploaded" ? (
        <MappingForm
          batch={batch}
          view={await mappingView(db, batch, opened.value)}
          problem={problem?.slice(0, 2000)}
        />
      ) : (
        <LoadedImport batch={batch} table={opened.value.table} />
      )}
    </>
  );
}
