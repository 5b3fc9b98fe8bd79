import type { Metadata } from "next";
import { PageHead } from "@/app/_components/entry.tsx";
import { FileDrop } from "@/app/_components/file-drop.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { BenchTabs } from "../bench-tabs.tsx";

export const metadata: Metadata = { title: "Load a file" };

export default async function ImportPage({ searchParams }: { searchParams: Promise<{ problem?: string }> }) {
  const { problem } = await searchParams;
  return (
    <>
      <PageHead title="Load a file">
        <p>
          The file is kept as it came, byte for byte. Then you are shown what each column seems to be, and you say what
          the file does not. Nothing is guessed, and no row is lost.
        </p>
      </PageHead>
      <BenchTabs current={paths.benchImport()} />
      <FileDrop
        action={`${paths.benchImport()}/upload`}
        label="The analyser’s file"
        hint="Text with columns (CSV, TSV, semicolons) up to 50 MB each, or a workbook (XLSX, ODS). Drop one or several here, or choose them."
        accept=".csv,.tsv,.txt,.dat,.xlsx,.ods,text/*"
        submit="Read the file"
        nextText="Say what its columns are"
        problem={problem?.slice(0, 1000)}
      />
    </>
  );
}
