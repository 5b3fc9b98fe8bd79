import { notFoundPage } from "@/lib/wording/catalogue.ts";
import { PageHead } from "./_components/entry.tsx";
import { SearchForm } from "./_components/search-form.tsx";

export default function NotFound() {
  return (
    <>
      <PageHead title={notFoundPage.title}>
        <p>{notFoundPage.text}</p>
      </PageHead>
      <SearchForm id="lost-search" label="Look for it here" size="large" />
    </>
  );
}
