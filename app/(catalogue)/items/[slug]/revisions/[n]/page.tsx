import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { alternates } from "@/app/_site/alternates.ts";
import { citation, citationTags } from "@/lib/exports/citation.ts";
import { systemClock } from "@/lib/platform/clock.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { catalogueIn } from "@/lib/wording/catalogue.ts";
import { itemPageIn } from "@/lib/wording/item-page.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { ItemView, RevisionNotice } from "../../../../_item/item-view.tsx";
import { MakerAnswers } from "../../../../_item/maker-answers.tsx";
import { loadRevision } from "../../load-item.ts";
import { revisionNumber } from "./revision-number.ts";

type Props = { params: Promise<{ slug: string; n: string }>; language?: Language };

async function load({ params }: Props) {
  const { slug, n } = await params;
  const revision = revisionNumber(n);
  return revision === null ? null : loadRevision(slug, revision);
}

export async function generateMetadata({ language = "en", ...props }: Props): Promise<Metadata> {
  const loaded = await load(props);
  if (!loaded) return {};
  const { snapshot } = loaded.item;
  return {
    title: itemPageIn[language].revisionTitle(snapshot.item.name, snapshot.revision),
    alternates: alternates(paths.item(snapshot.slug), language),
    other: citationTags(citation(loaded.item, environment().baseUrl).meta),
    robots: loaded.newest.revision === snapshot.revision ? null : { index: false },
  };
}

/** One revision for good: this address never shows anything else. */
export default async function RevisionPage({ language = "en", ...props }: Props) {
  const revisionBanner = catalogueIn[language].banner;
  const loaded = await load(props);
  if (!loaded) notFound();
  const { item, revisions, newest, changes, makerAnswers } = loaded;
  const { snapshot } = item;
  const old = newest.revision !== snapshot.revision;
  const link = { href: pathsIn[language].item(snapshot.slug), text: revisionBanner.linkText };
  return (
    <>
      {old && newest.kind === "withdrawal" ? (
        <RevisionNotice
          title={revisionBanner.withdrawnTitle}
          text={revisionBanner.withdrawn}
          link={link}
          language={language}
        />
      ) : old ? (
        <RevisionNotice
          title={revisionBanner.newerTitle}
          text={revisionBanner.newer(snapshot.revision, newest.revision)}
          link={link}
          language={language}
        />
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
