import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { ChangesTable } from "@/app/_draft/changes-table.tsx";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { isDerived } from "@/lib/wording/changes.ts";
import { counted, plainDate } from "@/lib/wording/formats.ts";
import { revisionLabels } from "@/lib/wording/labels.ts";
import { differencePage } from "@/lib/wording/revisions.ts";
import { loadRevision } from "../../../load-item.ts";
import { revisionNumber } from "../revision-number.ts";

type Props = { params: Promise<{ slug: string; n: string }> };

/** Only revisions after the first have one before them. */
async function load({ params }: Props) {
  const { slug, n } = await params;
  const revision = revisionNumber(n);
  return revision === null || revision < 2 ? null : loadRevision(slug, revision);
}

export async function generateMetadata(props: Props): Promise<Metadata> {
  const loaded = await load(props);
  if (!loaded) return {};
  const { slug, item, revision } = loaded.item.snapshot;
  return {
    title: differencePage.title(item.name, revision),
    alternates: { canonical: `${environment().baseUrl}${paths.item(slug)}` },
    robots: { index: false },
  };
}

/** Two published revisions held side by side, field by field; both stay what they are, and so does this. */
export default async function DifferencePage(props: Props) {
  const loaded = await load(props);
  if (!loaded) notFound();
  const { snapshot } = loaded.item;
  const { slug, item, revision, kind, reason, publishedAt } = snapshot;
  const changes = loaded.changes ?? [];
  const own = changes.filter((change) => !isDerived(change));
  const derived = changes.filter(isDerived);
  return (
    <>
      <PageHead
        title={differencePage.title(item.name, revision)}
        kicker={
          <>
            <a href={paths.item(slug)}>{item.name}</a> ·{" "}
            <a href={paths.revision(slug, revision - 1)}>revision {revision - 1}</a> ·{" "}
            <a href={paths.revision(slug, revision)}>revision {revision}</a>
          </>
        }
      >
        <p>{differencePage.lead(revision - 1, revision)}</p>
        <p>
          {revisionLabels[kind]}, {plainDate(publishedAt)}. {reason ? `Reason: ${reason}` : ""}
        </p>
      </PageHead>
      {changes.length === 0 ? <p>{differencePage.same}</p> : null}
      {own.length > 0 ? <ChangesTable changes={own} caption={counted(own.length, "field")} /> : null}
      {derived.length > 0 ? (
        <Disclosure summary={`${differencePage.derived}: ${counted(derived.length, "field")}`}>
          <ChangesTable changes={derived} caption={differencePage.derived} />
        </Disclosure>
      ) : null}
    </>
  );
}
