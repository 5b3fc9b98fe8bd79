import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { ActionForm } from "@/app/_components/action-form.tsx";
import { Actions, Button, ButtonLink } from "@/app/_components/button.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { Facts } from "@/app/_components/facts.tsx";
import { FileField } from "@/app/_components/field.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { type CheckStandard, checkReadingsOf, findCheckStandard } from "@/lib/store/check-standards.ts";
import { database } from "@/lib/store/database.ts";
import { listInstruments } from "@/lib/store/instruments.ts";
import { checksOverTime } from "@/lib/store/sessions.ts";
import { elementName } from "@/lib/wording/elements.ts";
import { plainDate, withUnit } from "@/lib/wording/formats.ts";
import { materialLabels } from "@/lib/wording/labels.ts";
import { standardStanding, withoutUncertainty } from "@/lib/wording/sessions.ts";
import { BenchTabs } from "../../bench-tabs.tsx";
import { retireCheckStandard } from "../actions.ts";
import { StandardCharts } from "./standard-charts.tsx";
import { StandardReadings } from "./standard-readings.tsx";

export const metadata: Metadata = { title: "A check standard" };

type Props = { params: Promise<{ id: string }>; searchParams: Promise<{ problem?: string }> };

export default async function CheckStandardPage({ params, searchParams }: Props) {
  const { id } = await params;
  const { problem } = await searchParams;
  const db = database();
  const standard = await findCheckStandard(db, { id });
  if (!standard) notFound();
  const [readings, overTime, instruments] = await Promise.all([
    checkReadingsOf(db, id),
    checksOverTime(db, standard),
    listInstruments(db),
  ]);
  const today = new Date().toISOString().slice(0, 10);
  return (
    <>
      <PageHead kicker={materialLabels[standard.material]} title={standard.name}>
        <p>{standard.matrix}</p>
      </PageHead>
      <BenchTabs current={paths.benchCheckStandards()} />
      <Ledger>
        <Entry title="Certificate" id="certificate" aside={standardStanding(standard, today)}>
          {problem ? (
            <Warning>
              <p>{problem.slice(0, 500)}</p>
            </Warning>
          ) : null}
          <CertifiedTable standard={standard} />
          <Facts
            facts={[
              { name: "Certificate", value: standard.certificate },
              { name: "Valid until", value: standard.expiresOn ? plainDate(standard.expiresOn) : "not stated" },
              { name: "Modes", value: standard.modes.join("; ") || "any" },
              { name: "Other names in files", value: standard.otherNames.join("; ") },
              {
                name: "The certificate itself",
                value: standard.certificateKey ? (
                  <a href={paths.benchCertificate(id)}>{standard.certificateName ?? "download it"}</a>
                ) : null,
              },
            ]}
          />
          <Actions>
            <ButtonLink href={paths.benchEditCheckStandard(id)}>Change it</ButtonLink>
          </Actions>
          <Disclosure
            summary={
              standard.certificateKey ? "Put another certificate file in its place" : "Keep the certificate’s file"
            }
          >
            <form action={paths.benchCertificate(id)} method="post" encType="multipart/form-data" className="flow">
              <FileField
                name="file"
                label="The certificate’s file"
                hint="PDF or picture, at most 20 MB. It is kept for people of the bench and never published."
                accept=".pdf,.png,.jpg,.jpeg,.webp"
                required
              />
              <Actions>
                <Button type="submit">Keep it</Button>
              </Actions>
            </form>
          </Disclosure>
        </Entry>
        <StandardCharts standard={standard} overTime={overTime} instruments={instruments} />
        <StandardReadings standard={standard} readings={readings} />
        <Entry title="Out of use" id="retire">
          {standard.retiredAt === null ? (
            <Disclosure summary="Take it out of use">
              <p>Its readings stay and count. In new files it is not recognised any more. It can be brought back.</p>
              <ActionForm action={retireCheckStandard} submit="Take it out of use" submitKind="secondary">
                <input type="hidden" name="id" value={id} />
                <input type="hidden" name="retired" value="yes" />
              </ActionForm>
            </Disclosure>
          ) : (
            <ActionForm action={retireCheckStandard} submit="Bring it back into use" submitKind="secondary" compact>
              <input type="hidden" name="id" value={id} />
            </ActionForm>
          )}
        </Entry>
      </Ledger>
    </>
  );
}

function CertifiedTable({ standard }: { standard: CheckStandard }) {
  const rows = Object.entries(standard.certified).map(([element, values]) => ({ element, ...values }));
  const unstated = rows.filter((r) => r.value !== null && r.U === null).map((r) => r.element);
  return (
    <>
      <DataTable
        caption="Certified values"
        hideCaption
        rows={rows}
        rowKey={(r) => r.element}
        columns={[
          { key: "element", head: "Element", cell: (r) => elementName(r.element) },
          {
            key: "value",
            head: "Certified",
            numeric: true,
            cell: (r) => withUnit(r.value === null ? `< ${r.below}` : String(r.value), r.unit),
          },
          {
            key: "U",
            head: "Uncertainty",
            numeric: true,
            cell: (r) =>
              r.U === null ? (r.value === null ? "–" : "none stated") : `± ${withUnit(String(r.U), r.unit)}`,
          },
          { key: "k", head: "covers", cell: (r) => (r.U === null ? "" : `${r.k} × u`) },
        ]}
      />
      {unstated.length > 0 ? <p>{withoutUncertainty(unstated)}</p> : null}
    </>
  );
}
