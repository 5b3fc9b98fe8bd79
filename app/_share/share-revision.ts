import { notFound } from "next/navigation";
import { loadRevision } from "@/app/(catalogue)/items/[slug]/load-item.ts";
import type { PublishedItem } from "@/lib/store/published.ts";
import type { Language } from "@/lib/wording/language.ts";

export type ShareProps = {
  params: Promise<{ slug: string }>;
  searchParams: Promise<Record<string, string | string[] | undefined>>;
  language?: Language;
};

/** The revision that a page to print asks for with `?revision=`; the newest without it. Anything else is not found. */
export async function shareRevision({
  params,
  searchParams,
}: ShareProps): Promise<{ item: PublishedItem; newest: number }> {
  const { slug } = await params;
  const { revision } = await searchParams;
  if (revision !== undefined && (typeof revision !== "string" || !/^[1-9]\d{0,6}$/.test(revision))) notFound();
  const loaded = await loadRevision(slug, revision === undefined ? null : Number(revision));
  if (!loaded) notFound();
  return { item: loaded.item, newest: loaded.newest.revision };
}
