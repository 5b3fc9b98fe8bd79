import type { Metadata } from "next";
import { Actions, ButtonLink } from "@/app/_components/button.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { listCheckStandards } from "@/lib/store/check-standards.ts";
import { database } from "@/lib/store/database.ts";
import { plainDate } from "@/lib/wording/formats.ts";
import { materialLabels } from "@/lib/wording/labels.ts";
import { standardStanding } from "@/lib/wording/sessions.ts";
import { BenchTabs } from "../bench-tabs.tsx";

export const metadata: Metadata = { title: "Check standards" };

export default async function CheckStandardsPage() {
  const standards = await listCheckStandards(database());
  const today = new Date().toISOString().slice(0, 10);
  return (
    <>
      <PageHead title="Check standards">
        <p>
          What is known to hold so much of something, read before, between and after the objects. Only by it can a page
          say that the analyser was fit.
        </p>
      </PageHead>
      <BenchTabs current={paths.benchCheckStandards()} />
      <Ledger>
        <Entry title="Check standards" id="standards">
          <Actions>
            <ButtonLink kind="primary" href={paths.benchNewCheckStandard()}>
              Add a check standard
            </ButtonLink>
          </Actions>
          {standards.length === 0 ? (
            <EmptyState title="No check standards yet" headingLevel={3}>
              <p>Without one, every page says that nothing shows whether the analyser was fit.</p>
            </EmptyState>
          ) : (
            <DataTable
              caption="Check standards"
              hideCaption
              rows={standards}
              rowKey={(s) => s.id}
              muted={(s) => s.retiredAt !== null}
              columns={[
                {
                  key: "name",
                  head: "Name",
                  nowrap: true,
                  cell: (s) => <a href={paths.benchCheckStandard(s.id)}>{s.name}</a>,
                },
                { key: "material", head: "Material", cell: (s) => materialLabels[s.material] },
                { key: "elements", head: "Certified for", cell: (s) => Object.keys(s.certified).join(", ") },
                { key: "modes", head: "Modes", roomy: true, cell: (s) => s.modes.join("; ") || "any" },
                {
                  key: "until",
                  head: "Valid until",
                  nowrap: true,
                  cell: (s) => (s.expiresOn ? plainDate(s.expiresOn) : "not stated"),
                },
                { key: "state", head: "State", cell: (s) => standardStanding(s, today) },
              ]}
            />
          )}
        </Entry>
      </Ledger>
    </>
  );
}
