import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { citation, citationTags } from "@/lib/exports/citation.ts";
import { systemClock } from "@/lib/platform/clock.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { revisionBanner } from "@/lib/wording/catalogue.ts";
import { ItemView, RevisionNotice } from "../../../../_item/item-view.tsx";
import { MakerAnswers } from "../../../../_item/maker-answers.tsx";
import { loadRevision } from "../../load-item.ts";
import { revisionNumber } from "./revision-number.ts";

type Props = { params: Promise<{ slug: string; n: string }> };

async function load({ params }: Props) {
  const { slug, n } = await params;
  const revision = revisionNumber(n);
  return revision === null ? null : loadRevision(slug, revision);
}

// Rendered once and kept until something published changes (page-cache.mjs).
export const dynamic = "force-static";
export const generateStaticParams = () => [];

export async function generateMetadata(props: Props): Promise<Metadata> {
  const loaded = await load(props);
  if (!loaded) return {};
  const { snapshot } = loaded.item;
  return {
    title: `${snapshot.item.name}, revision ${snapshot.revision}`,
    alternates: { canonical: `${environment().baseUrl}${paths.item(snapshot.slug)}` },
    other: citationTags(citation(loaded.item, environment().baseUrl).meta),
    robots: loaded.newest.revision === snapshot.revision ? null : { index: false },
  };
}

/** One revision for good: this address never shows anything else. */
export default async function RevisionPage(props: Props) {
  const loaded = await load(props);
  if (!loaded) notFound();
  const { item, revisions, newest, changes, makerAnswers } = loaded;
  const { snapshot } = item;
  const old = newest.revision !== snapshot.revision;
  const link = { href: paths.item(snapshot.slug), text: revisionBanner.linkText };
  return (
    <>
      {old && newest.kind === "withdrawal" ? (
        <RevisionNotice title={revisionBanner.withdrawnTitle} text={revisionBanner.withdrawn} link={link} />
      ) : old ? (
        <RevisionNotice
          title={revisionBanner.newerTitle}
          text={revisionBanner.newer(snapshot.revision, newest.revision)}
          link={link}
        />
      ) : null}
      <ItemView
        snapshot={snapshot}
        entry={item.entry}
        baseUrl={environment().baseUrl}
        revisions={revisions}
        changes={changes}
        today={systemClock().toISOString().slice(0, 10)}
      />
      <MakerAnswers answers={makerAnswers} />
    </>
  );
}
