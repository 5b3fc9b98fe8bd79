import type { Metadata } from "next";
import { Actions, Button } from "@/app/_components/button.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { ErrorSummary } from "@/app/_components/error-summary.tsx";
import { FileField, TextField } from "@/app/_components/field.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { alternates } from "@/app/_site/alternates.ts";
import { paths } from "@/lib/platform/paths.ts";
import { catalogueIn } from "@/lib/wording/catalogue.ts";
import type { Language } from "@/lib/wording/language.ts";
import { problemSentenceIn } from "@/lib/wording/problems.ts";
import { requestPageIn } from "@/lib/wording/test-requests.ts";
import { largestRequestPhoto } from "@/lib/workflows/request-test.ts";
import { problemOf } from "./request-problem.ts";

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>>; language?: Language };

export async function generateMetadata({ searchParams, language = "en" }: Props): Promise<Metadata> {
  const asked = [(await searchParams)["q"] ?? ""].flat()[0] ?? "";
  return {
    title: requestPageIn[language].title,
    alternates: alternates(paths.requestTest(asked.slice(0, 300)), language),
    robots: { index: false },
  };
}

/** A plain form to a route that takes files; it works without scripts. */
export default async function NewRequestPage({ searchParams, language = "en" }: Props) {
  const requestPage = requestPageIn[language];
  const { search: searchPage, site } = catalogueIn[language];
  const params = await searchParams;
  const asked = ([params["q"] ?? ""].flat()[0] ?? "").slice(0, 300);
  const problem = problemOf(params, asked);
  return (
    <>
      <PageHead title={requestPage.title}>
        <p>{requestPage.lead}</p>
      </PageHead>
      <form action={paths.sendRequest()} method="post" encType="multipart/form-data">
        <input type="hidden" name="language" value={language} />
        <ErrorSummary
          errors={problem ? [{ field: problem.where?.field, text: problemSentenceIn(problem, language) }] : []}
          title={site.mend(1)}
        />
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
      <Warning language={language}>{requestPage.caution}</Warning>
      <ul>
        {searchPage.whatToDo.slice(2).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </>
  );
}
