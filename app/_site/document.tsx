import localFont from "next/font/local";
import { connection } from "next/server";
import type { ReactNode } from "react";
import { database } from "@/lib/store/database.ts";
import { registry } from "@/lib/store/publications.ts";
import { catalogueIn } from "@/lib/wording/catalogue.ts";
import type { Language } from "@/lib/wording/language.ts";
import { SiteFooter } from "../_components/site-footer.tsx";
import { SiteHeader } from "../_components/site-header.tsx";

// Fall-backs cut to the same size, and faces that are taken only when they come in time: the page neither jumps nor flashes.
const serif = localFont({
  // One weight, for headings and what is said loudest; globals.css asks for it on wide screens only, so it is not fetched ahead.
  src: "../../node_modules/@fontsource/source-serif-4/files/source-serif-4-latin-600-normal.woff2",
  weight: "600",
  variable: "--font-serif",
  display: "optional",
  preload: false,
  adjustFontFallback: "Times New Roman",
});
const sans = localFont({
  src: "../../node_modules/@fontsource-variable/source-sans-3/files/source-sans-3-latin-wght-normal.woff2",
  weight: "200 900",
  variable: "--font-sans",
  display: "optional",
  adjustFontFallback: "Arial",
});

/** Whether the registry says that its content is made up. A page must not fail for its foot: without an answer, no notice. */
async function isInvented(): Promise<boolean> {
  await connection();
  try {
    return (await registry(database())).invented;
  } catch {
    return false;
  }
}

/** A whole document in one language: head of the site, the page, foot of the site. Every layout below the root is one. */
export async function SiteDocument({ language, children }: { language: Language; children: ReactNode }) {
  return (
    <html lang={language} className={`${serif.variable} ${sans.variable}`}>
      <body>
        <a className="skip-link" href="#content">
          {catalogueIn[language].site.skip}
        </a>
        <SiteHeader language={language} />
        <main id="content" className="page">
          {children}
        </main>
        <SiteFooter invented={await isInvented()} language={language} />
      </body>
    </html>
  );
}
