"use client";

import { brokenPage } from "@/lib/wording/catalogue.ts";
import { Actions, Button } from "./_components/button.tsx";
import { PageHead } from "./_components/entry.tsx";

/** What a reader sees when the program itself failed. The digest lets the owner find the line in the server's log. */
export default function BrokenPage({ error, reset }: { error: Error & { digest?: string }; reset: () => void }) {
  return (
    <>
      <PageHead title={brokenPage.title}>
        <p>{brokenPage.text}</p>
        {error.digest ? <p className="soft small">Mark of this error: {error.digest}</p> : null}
      </PageHead>
      <Actions>
        <Button kind="primary" onClick={reset}>
          Try again
        </Button>
      </Actions>
    </>
  );
}
