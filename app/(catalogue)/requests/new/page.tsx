import type { Metadata } from "next";
import { Actions, Button } from "@/app/_components/button.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { ErrorSummary } from "@/app/_components/error-summary.tsx";
import { FileField, TextField } from "@/app/_components/field.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { searchPage } from "@/lib/wording/catalogue.ts";
import { problemSentence } from "@/lib/wording/problems.ts";
import { requestPage } from "@/lib/wording/test-requests.ts";
import { largestRequestPhoto } from "@/lib/workflows/request-test.ts";
import { problemOf } from "./request-problem.ts";

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>> };

export const metadata: Metadata = { title: requestPage.title, robots: { index: false } };

/** A plain form to a route that takes files; it works without scripts. */
export default async function NewRequestPage({ searchParams }: Props) {
  const params = await searchParams;
  const asked = ([params["q"] ?? ""].flat()[0] ?? "").slice(0, 300);
  const problem = problemOf(params, asked);
  return (
    <>
      <PageHead title={requestPage.title}>
        <p>{requestPage.lead}</p>
      </PageHead>
      <form action={paths.sendRequest()} method="post" encType="multipart/form-data">
        <ErrorSummary errors={problem ? [{ field: problem.where?.field, text: problemSentence(problem) }] : []} />
        <TextField
          name="description"
          label={requestPage.label}
          hint={requestPage.hint}
          defaultValue={asked}
          maxLength={300}
          required
        />
        <FileField
          name="photo"
          label={requestPage.photo}
          hint={requestPage.photoHint(largestRequestPhoto / 1e6)}
          accept="image/jpeg,image/png,image/webp,image/avif"
        />
        <p className="soft">{requestPage.privacy}</p>
        <Actions>
          <Button kind="primary" type="submit">
            {requestPage.send}
          </Button>
        </Actions>
      </form>
      <Warning>{requestPage.caution}</Warning>
      <ul>
        {searchPage.whatToDo.slice(2).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </>
  );
}
