import type { Metadata } from "next";
import { NotFoundPage } from "@/app/_site/not-found-page.tsx";
import { catalogueIn } from "@/lib/wording/catalogue.ts";

// What is answered for every address under /es at which there is nothing (not-here.mjs).
export const dynamic = "force-dynamic";
export const metadata: Metadata = { title: catalogueIn.es.notFound.title, robots: { index: false } };

export default function NotHereInSpanish() {
  return <NotFoundPage language="es" />;
}
