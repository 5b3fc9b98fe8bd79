import type { Metadata } from "next";
import { ActionForm } from "@/app/_components/action-form.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { TextField } from "@/app/_components/field.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { searchPage } from "@/lib/wording/catalogue.ts";
import { requestPage } from "@/lib/wording/test-requests.ts";
import { requestTest } from "./actions.ts";

type Props = { searchParams: Promise<Record<string, string | string[] | undefined>> };

export const metadata: Metadata = { title: requestPage.title, robots: { index: false } };

export default async function NewRequestPage({ searchParams }: Props) {
  const asked = [(await searchParams)["q"] ?? ""].flat()[0] ?? "";
  return (
    <>
      <PageHead title={requestPage.title}>
        <p>{requestPage.lead}</p>
      </PageHead>
      <ActionForm action={requestTest} submit={requestPage.send}>
        <TextField
          name="description"
          label={requestPage.label}
          hint={requestPage.hint}
          defaultValue={asked.slice(0, 300)}
          maxLength={300}
          required
        />
        <p className="soft">{requestPage.privacy}</p>
      </ActionForm>
      <Warning>{requestPage.caution}</Warning>
      <ul>
        {searchPage.whatToDo.slice(2).map((sentence) => (
          <li key={sentence}>{sentence}</li>
        ))}
      </ul>
    </>
  );
}
