"use client";

import { usePathname, useSearchParams } from "next/navigation";
import { Suspense } from "react";
import { languageNames } from "@/lib/wording/language.ts";
import { otherLanguage } from "@/lib/wording/localized-paths.ts";

/** To the page one is on, in the other language, for a list. Kept pages have no question in their address, and no scripts. */
export function LanguageLink() {
  return (
    <Suspense fallback={<Link question="" />}>
      <LinkWithQuestion />
    </Suspense>
  );
}

function LinkWithQuestion() {
  const question = useSearchParams().toString();
  return <Link question={question === "" ? "" : `?${question}`} />;
}

function Link({ question }: { question: string }) {
  const other = otherLanguage(usePathname());
  if (other === null) return null;
  return (
    <li>
      <a href={`${other.path}${question}`} hrefLang={other.language} lang={other.language}>
        {languageNames[other.language]}
      </a>
    </li>
  );
}
