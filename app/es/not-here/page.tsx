import type { Metadata } from "next";
import { NotFoundPage } from "@/app/_site/not-found-page.tsx";
import { catalogueIn } from "@/lib/wording/catalogue.ts";

// Made when the product is built, and answered for every address under /es at which there is nothing (not-here.mjs).
export const dynamic = "force-static";
export const metadata: Metadata = { title: catalogueIn.es.notFound.title, robots: { index: false } };

export default function NotHereInSpanish() {
  return <NotFoundPage language="es" />;
}
