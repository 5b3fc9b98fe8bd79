import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { asWritten, Told } from "@/app/_components/as-written.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { ChangesTable } from "@/app/_draft/changes-table.tsx";
import { alternates } from "@/app/_site/alternates.ts";
import { paths as english } from "@/lib/platform/paths.ts";
import { isDerived } from "@/lib/wording/changes.ts";
import { plainDate } from "@/lib/wording/formats.ts";
import { labelsIn } from "@/lib/wording/labels.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { revisionsIn } from "@/lib/wording/revisions.ts";
import { loadRevision } from "../../../load-item.ts";
import { revisionNumber } from "../revision-number.ts";

type Props = { params: Promise<{ slug: string; n: string }>; language?: Language };

/** Only revisions after the first have one before them. */
async function load({ params }: Props) {
  const { slug, n } = await params;
  const revision = revisionNumber(n);
  return revision === null || revision < 2 ? null : loadRevision(slug, revision);
}

export async function generateMetadata({ language = "en", ...props }: Props): Promise<Metadata> {
  const loaded = await load(props);
  if (!loaded) return {};
  const { slug, item, revision } = loaded.item.snapshot;
  return {
    title: revisionsIn[language].difference.title(item.name, revision),
    alternates: alternates(english.item(slug), language),
    robots: { index: false },
  };
}

/** Two published revisions held side by side, field by field; both stay what they are, and so does this. */
export default async function DifferencePage({ language = "en", ...props }: Props) {
  const differencePage = revisionsIn[language].difference;
  const paths = pathsIn[language];
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
        title={<Told text={differencePage.title(item.name, revision)} own={[item.name]} language={language} />}
        kicker={
          <>
            <a href={paths.item(slug)}>{asWritten(item.name, language)}</a> ·{" "}
            <a href={paths.revision(slug, revision - 1)}>{differencePage.revision(revision - 1)}</a> ·{" "}
            <a href={paths.revision(slug, revision)}>{differencePage.revision(revision)}</a>
          </>
        }
      >
        <p>{differencePage.lead(revision - 1, revision)}</p>
        <p>
          {labelsIn[language].revision[kind]}, {plainDate(publishedAt, language)}.{" "}
          {reason ? <Told text={differencePage.reason(reason)} own={[reason]} language={language} /> : ""}
        </p>
      </PageHead>
      {changes.length === 0 ? <p>{differencePage.same}</p> : null}
      {own.length > 0 ? (
        <ChangesTable changes={own} caption={differencePage.fields(own.length)} language={language} />
      ) : null}
      {derived.length > 0 ? (
        <Disclosure summary={`${differencePage.derived}: ${differencePage.fields(derived.length)}`}>
          <ChangesTable changes={derived} caption={differencePage.derived} language={language} />
        </Disclosure>
      ) : null}
    </>
  );
}
