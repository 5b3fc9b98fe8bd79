import type { Metadata } from "next";
import { connection } from "next/server";
import { z } from "zod";
import { EmptyState } from "@/app/_components/empty-state.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { latestPublished, type PublishedItem } from "@/lib/store/published.ts";
import { comparePage } from "@/lib/wording/catalogue.ts";
import { CompareTable } from "./compare-table.tsx";

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>> };

export const metadata: Metadata = { title: comparePage.title, robots: { index: false } };

const slugs = z.array(z.string().max(120)).transform((list) => [...new Set(list)].slice(0, comparePage.most));

/** Two to four items side by side, for whoever asks which one is theirs. The address holds which. */
export default async function ComparePage({ searchParams }: Props) {
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
            <a href={paths.items()}>See all tested items</a>
          </p>
        </EmptyState>
      ) : (
        <>
          <p>{comparePage.lead}</p>
          <CompareTable snapshots={found.map((item) => item.snapshot)} />
          <Warning>{comparePage.caution}</Warning>
        </>
      )}
    </>
  );
}
