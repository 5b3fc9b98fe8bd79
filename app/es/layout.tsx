import type { Metadata } from "next";
import type { ReactNode } from "react";
import { SiteDocument } from "@/app/_site/document.tsx";
import { catalogueIn } from "@/lib/wording/catalogue.ts";

export const metadata: Metadata = { description: catalogueIn.es.site.description };

export default function SpanishLayout({ children }: { children: ReactNode }) {
  return <SiteDocument language="es">{children}</SiteDocument>;
}
