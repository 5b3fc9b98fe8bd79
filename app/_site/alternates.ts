import type { Metadata } from "next";
import { environment } from "@/lib/platform/environment.ts";
import { type Language, languages, recordLanguage } from "@/lib/wording/language.ts";
import { pathIn } from "@/lib/wording/localized-paths.ts";

/** The page's own address and that of its twin in each language, for search engines. `path` is the English one. */
export function alternates(path: string, language: Language): NonNullable<Metadata["alternates"]> {
  const { baseUrl } = environment();
  const at = (one: Language): string => `${baseUrl}${pathIn(path, one)}`;
  return {
    canonical: at(language),
    languages: { ...Object.fromEntries(languages.map((one) => [one, at(one)])), "x-default": at(recordLanguage) },
  };
}
