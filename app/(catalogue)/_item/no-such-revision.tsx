import { PageHead } from "@/app/_components/entry.tsx";
import type { Language } from "@/lib/wording/language.ts";
import { pathsIn } from "@/lib/wording/localized-paths.ts";
import { revisionsIn } from "@/lib/wording/revisions.ts";

/** On the address of a revision that does not exist. */
export function NoSuchRevision({ language }: { language: Language }) {
  const words = revisionsIn[language].none;
  return (
    <PageHead title={words.title}>
      <p>{words.text}</p>
      <p>
        <a href={pathsIn[language].items()}>{words.search}</a>
      </p>
    </PageHead>
  );
}
