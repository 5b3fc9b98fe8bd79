import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { alternates } from "@/app/_site/alternates.ts";
import { citation, citationTags } from "@/lib/exports/citation.ts";
import { systemClock } from "@/lib/platform/clock.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { itemAnswer } from "@/lib/wording/answers.ts";
import { catalogueIn } from "@/lib/wording/catalogue.ts";
import type { Language } from "@/lib/wording/language.ts";
import { ItemView, RevisionNotice } from "../../_item/item-view.tsx";
import { MakerAnswers } from "../../_item/maker-answers.tsx";
import { loadRevision } from "./load-item.ts";

type Props = { params: Promise<{ slug: string }>; language?: Language };

export async function generateMetadata({ params, language = "en" }: Props): Promise<Metadata> {
  const { slug } = await params;
  const loaded = await loadRevision(slug, null);
  if (!loaded) return {};
  const { snapshot } = loaded.item;
  return {
    title: snapshot.item.name,
    description: itemAnswer(snapshot, language).headline,
    alternates: {
      ...alternates(paths.item(slug), language),
      types: {
        "application/json": paths.api.item(slug, snapshot.revision),
        "text/csv": paths.api.readings(slug, snapshot.revision),
      },
    },
    other: citationTags(citation(loaded.item, environment().baseUrl).meta),
    robots: snapshot.kind === "withdrawal" ? { index: false } : null,
  };
}

/** The newest revision of an item. */
export default async function ItemPage({ params, language = "en" }: Props) {
  const revisionBanner = catalogueIn[language].banner;
  const { slug } = await params;
  const loaded = await loadRevision(slug, null);
  if (!loaded) notFound();
  const { item, revisions, changes, makerAnswers } = loaded;
  const { snapshot } = item;
  return (
    <>
      {snapshot.kind === "withdrawal" ? (
        <RevisionNotice
          title={revisionBanner.withdrawnTitle}
          text={revisionBanner.withdrawn}
          reason={snapshot.reason}
          language={language}
        />
      ) : null}
      {snapshot.kind === "correction" ? (
        <RevisionNotice title={revisionBanner.correctionTitle} reason={snapshot.reason} language={language} />
      ) : null}
      <ItemView
        snapshot={snapshot}
        entry={item.entry}
        baseUrl={environment().baseUrl}
        revisions={revisions}
        changes={changes}
        today={systemClock().toISOString().slice(0, 10)}
        language={language}
      />
      <MakerAnswers answers={makerAnswers} language={language} />
    </>
  );
}
