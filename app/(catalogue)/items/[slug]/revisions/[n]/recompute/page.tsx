import type { Metadata } from "next";
import { notFound } from "next/navigation";
import { PageHead } from "@/app/_components/entry.tsx";
import { absoluteUrl } from "@/lib/exports/published-revision.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { recomputeWords } from "@/lib/wording/recompute.ts";
import { RecomputePanel } from "../../../../../_item/recompute-panel.tsx";
import { loadRevision } from "../../../load-item.ts";
import { revisionNumber } from "../revision-number.ts";

type Props = { params: Promise<{ slug: string; n: string }> };

export const metadata: Metadata = { title: recomputeWords.title, robots: { index: false } };

/** Where a reader's own browser makes a revision again: apart from the item's page, which is sent without scripts. */
export default async function RecomputePage({ params }: Props) {
  const { slug, n } = await params;
  const revision = revisionNumber(n);
  const loaded = revision === null ? null : await loadRevision(slug, revision);
  if (!loaded) notFound();
  const { snapshot } = loaded.item;
  const page = paths.revision(slug, snapshot.revision);
  return (
    <>
      <PageHead
        title={recomputeWords.title}
        kicker={
          <a href={page}>
            {snapshot.item.name}, revision {snapshot.revision}
          </a>
        }
      />
      <RecomputePanel slug={slug} revision={snapshot.revision} address={absoluteUrl(environment().baseUrl, page)} />
    </>
  );
}
