// First, so that the order of the layers is told before any component speaks.
import "./globals.css";

import type { Metadata, Viewport } from "next";
import localFont from "next/font/local";
import { connection } from "next/server";
import type { ReactNode } from "react";
import { database } from "@/lib/store/database.ts";
import { registry } from "@/lib/store/publications.ts";
import { SiteFooter } from "./_components/site-footer.tsx";
import { SiteHeader } from "./_components/site-header.tsx";

// A fall-back cut to the same size: the page does not jump. The text's own face is "optional", so it never flashes either.
const serif = localFont({
  // One weight, for headings and what is said loudest; globals.css asks for it on wide screens only, so it is not fetched ahead.
  src: "../node_modules/@fontsource/source-serif-4/files/source-serif-4-latin-600-normal.woff2",
  weight: "600",
  variable: "--font-serif",
  display: "swap",
  preload: false,
  adjustFontFallback: "Times New Roman",
});
const sans = localFont({
  src: "../node_modules/@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2",
  weight: "200 900",
  variable: "--font-sans",
  display: "optional",
  adjustFontFallback: "Arial",
});

export const metadata: Metadata = {
  title: { default: "Cupboard Assay", template: "%s – Cupboard Assay" },
  description:
    "Everyday objects tested for lead and other metals: one honest number for each part, with how sure we are.",
};

export const viewport: Viewport = {
  width: "device-width",
  initialScale: 1,
  themeColor: [
    { media: "(prefers-color-scheme: light)", color: "#f6f7f1" },
    { media: "(prefers-color-scheme: dark)", color: "#15171a" },
  ],
};

/** Whether the registry says that its content is made up. A page must not fail for its foot: without an answer, no notice. */
async function isInvented(): Promise<boolean> {
  await connection();
  try {
    return (await registry(database())).invented;
  } catch {
    return false;
  }
}

export default async function RootLayout({ children }: { children: ReactNode }) {
  return (
    <html lang="en" className={`${serif.variable} ${sans.variable}`}>
      <body>
        <a className="skip-link" href="#content">
          Skip to the content
        </a>
        <SiteHeader />
        <main id="content" className="page">
          {children}
        </main>
        <SiteFooter invented={await isInvented()} />
      </body>
    </html>
  );
}
