import type { ReactNode } from "react";
import { inEnglish, type Language, recordLanguage } from "@/lib/wording/language.ts";
import { leavesLanguage } from "@/lib/wording/localized-paths.ts";

/** A link to a page of ours; one that leaves the language of this page says so, in words and for machines. */
export function PageLink({
  href,
  language,
  className,
  children,
}: {
  href: string;
  language: Language;
  className?: string | undefined;
  children: ReactNode;
}) {
  const leaves = leavesLanguage(href, language);
  return (
    <a href={href} hrefLang={leaves ? recordLanguage : undefined} className={className}>
      {children}
      {leaves ? ` ${inEnglish[language]}` : null}
    </a>
  );
}
