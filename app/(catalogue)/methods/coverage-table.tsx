import { type Column, DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Entry } from "@/app/_components/entry.tsx";
import { type CoverageLine, coverageTableIn } from "@/lib/wording/coverage-table.ts";
import type { Language } from "@/lib/wording/language.ts";

const columnsIn = (coverageTable: (typeof coverageTableIn)["en"]): Column<CoverageLine>[] => [
  ...(["spots", "spread", "error", "parts"] as const).map((key) => ({
    ...{ key, head: coverageTable.columns[key], numeric: true },
    cell: (line: CoverageLine) => line[key],
  })),
  ...coverageTable.shareColumns.map((head, place) => ({
    ...{ key: head, head, roomy: true },
    cell: (line: CoverageLine) => line.cells[place],
  })),
];

/** How often the stated ranges were right in simulated parts: in words first, every kind of part folded beneath. */
export function CoverageTable({ language }: { language: Language }) {
  const coverageTable = coverageTableIn[language];
  const columns = columnsIn(coverageTable);
  return (
    <Entry title={coverageTable.title} id="coverage">
      <p>{coverageTable.lead}</p>
      <p>{coverageTable.aims}</p>
      {coverageTable.shortTitle ? (
        <Disclosure summary={coverageTable.shortTitle} open={coverageTable.short.length <= 8}>
          <ul>
            {coverageTable.short.map((sentence) => (
              <li key={sentence}>{sentence}</li>
            ))}
          </ul>
        </Disclosure>
      ) : null}
      <p className="soft">{coverageTable.reading}</p>
      <div className="no-print">
        {coverageTable.groups.map(({ shape, title, lines }) => (
          <Disclosure key={shape} summary={title}>
            <DataTable caption={title} hideCaption columns={columns} rows={lines} rowKey={(line) => line.key} />
          </Disclosure>
        ))}
      </div>
      <p className="print-only">{coverageTable.onPaper}</p>
      <p className="soft">{coverageTable.made}</p>
    </Entry>
  );
}
