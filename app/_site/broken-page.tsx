"use client";

import { Actions, Button } from "@/app/_components/button.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import type { Language } from "@/lib/wording/language.ts";
import { siteWordsIn } from "@/lib/wording/site-words.ts";

export type Broken = { error: Error & { digest?: string }; reset: () => void };

/** What a reader sees when the program itself failed. The digest lets the owner find the line in the server's log. */
export function BrokenPage({ error, reset, language }: Broken & { language: Language }) {
  const words = siteWordsIn[language].broken;
  return (
    <>
      <PageHead title={words.title}>
        <p>{words.text}</p>
        {error.digest ? <p className="soft small">{words.mark(error.digest)}</p> : null}
      </PageHead>
      <Actions>
        <Button kind="primary" onClick={reset}>
          {words.again}
        </Button>
      </Actions>
    </>
  );
}
