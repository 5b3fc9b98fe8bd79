import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { Told } from "@/app/_components/as-written.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { alternates } from "@/app/_site/alternates.ts";
import { absoluteUrl } from "@/lib/exports/published-revision.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths as english } from "@/lib/platform/paths.ts";
import { itemPageIn } from "@/lib/wording/item-page.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { recomputeIn } from "@/lib/wording/recompute.ts";
import { RecomputePanel } from "../../../../../_item/recompute-panel.tsx";
import { loadRevision } from "../../../load-item.ts";
import { revisionNumber } from "../revision-number.ts";

type Props = { params: Promise<{ slug: string; n: string }>; language?: Language };

export async function generateMetadata({ params, language = "en" }: Props): Promise<Metadata> {
  const { slug, n } = await params;
  return {
    title: recomputeIn[language].title,
    alternates: alternates(english.recompute(slug, revisionNumber(n) ?? 1), language),
    robots: { index: false },
  };
}

/** Where a reader's own browser makes a revision again: apart from the item's page, which is sent without scripts. */
export default async function RecomputePage({ params, language = "en" }: Props) {
  const { slug, n } = await params;
  const revision = revisionNumber(n);
  const loaded = revision === null ? null : await loadRevision(slug, revision);
  if (!loaded) notFound();
  const { snapshot } = loaded.item;
  const page = english.revision(slug, snapshot.revision);
  return (
    <>
      <PageHead
        title={recomputeIn[language].title}
        kicker={
          <a href={pathsIn[language].revision(slug, snapshot.revision)}>
            <Told
              text={itemPageIn[language].revisionTitle(snapshot.item.name, snapshot.revision)}
              own={[snapshot.item.name]}
              language={language}
            />
          </a>
        }
      />
      <RecomputePanel
        slug={slug}
        revision={snapshot.revision}
        address={absoluteUrl(environment().baseUrl, page)}
        language={language}
      />
    </>
  );
}
