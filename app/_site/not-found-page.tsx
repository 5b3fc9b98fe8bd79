import { PageHead } from "@/app/_components/entry.tsx";
import { SearchForm } from "@/app/_components/search-form.tsx";
import { catalogueIn } from "@/lib/wording/catalogue.ts";
import type { Language } from "@/lib/wording/language.ts";

/** An address at which there is nothing: told in full without scripts (not-here.mjs). */
export function NotFoundPage({ language }: { language: Language }) {
  const words = catalogueIn[language].notFound;
  return (
    <>
      <PageHead title={words.title}>
        <p>{words.text}</p>
      </PageHead>
      <SearchForm id="lost-search" label={words.search} size="large" language={language} />
    </>
  );
}
