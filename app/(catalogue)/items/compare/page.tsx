import type { Metadata } from "next";
import { connection } from "next/server";
import { z } from "zod";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { alternates } from "@/app/_site/alternates.ts";
import { paths } from "@/lib/platform/paths.ts";
import { latestPublished, type PublishedItem } from "@/lib/store/published.ts";
import { comparePage as bounds, catalogueIn } from "@/lib/wording/catalogue.ts";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { CompareTable } from "./compare-table.tsx";

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>>; language?: Language };

export async function generateMetadata({ searchParams, language = "en" }: Props): Promise<Metadata> {
  const asked = slugs.parse([(await searchParams)["item"] ?? []].flat());
  return {
    title: catalogueIn[language].compare.title,
    alternates: alternates(paths.compare(asked), language),
    robots: { index: false },
  };
}

const slugs = z.array(z.string().max(120)).transform((list) => [...new Set(list)].slice(0, bounds.most));

/** Two to four items side by side, for whoever asks which one is theirs. The address holds which. */
export default async function ComparePage({ searchParams, language = "en" }: Props) {
  const { compare: comparePage, search } = catalogueIn[language];
  const asked = slugs.parse([(await searchParams)["item"] ?? []].flat());
  await connection();
  const found = (await Promise.all(asked.map((slug) => latestPublished(slug)))).filter(
    (item): item is PublishedItem => item !== null,
  );
  return (
    <>
      <PageHead title={comparePage.title} />
      {found.length < 2 ? (
        <EmptyState title={comparePage.tooFew}>
          <p>{comparePage.tooFewText}</p>
          <p>
            <a href={pathsIn[language].items()}>{search.seeAll}</a>
          </p>
        </EmptyState>
      ) : (
        <>
          <p>{comparePage.lead}</p>
          <CompareTable snapshots={found.map((item) => item.snapshot)} language={language} />
          <Warning language={language}>{comparePage.caution}</Warning>
        </>
      )}
    </>
  );
}
