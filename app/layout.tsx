// First, so that the order of the layers is told before any component speaks.
import "./globals.css";

import type { Metadata, Viewport } from "next";
import type { ReactNode } from "react";
import { catalogueIn } from "@/lib/wording/catalogue.ts";

export const metadata: Metadata = {
  title: { default: catalogueIn.en.site.name, template: `%s – ${catalogueIn.en.site.name}` },
  description: catalogueIn.en.site.description,
};

export const viewport: Viewport = {
  width: "device-width",
  initialScale: 1,
  themeColor: [
    { media: "(prefers-color-scheme: light)", color: "#f6f7f1" },
    { media: "(prefers-color-scheme: dark)", color: "#15171a" },
  ],
};

/** The document itself is made by the layouts below: each knows its language from its place in the address. */
export default function RootLayout({ children }: { children: ReactNode }) {
  return children;
}
