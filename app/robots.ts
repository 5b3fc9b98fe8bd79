import type { MetadataRoute } from "next";
import { connection } from "next/server";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";

/** Readers' pages are open to all; the workplaces are of no use to a search engine. */
export default async function robots(): Promise<MetadataRoute.Robots> {
  await connection();
  return {
    rules: { userAgent: "*", allow: "/", disallow: [paths.bench(), paths.review(), paths.account(), paths.style()] },
    sitemap: `${environment().baseUrl}${paths.sitemap()}`,
  };
}
