import type { Metadata } from "next";
import { ActionForm } from "@/app/_components/action-form.tsx";
import { RadioGroup } from "@/app/_components/choice-field.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { SelectField, TextAreaField, TextField } from "@/app/_components/field.tsx";
import { WorkplaceBar } from "@/app/_components/workplace-bar.tsx";
import { requirePerson } from "@/lib/access/require-person.ts";
import { licenceChoices } from "@/lib/exports/licence.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { registryTerms } from "@/lib/store/registry.ts";
import { setTerms } from "./actions.ts";

export const metadata: Metadata = { title: "Terms", robots: { index: false } };

/** What the owner settles for the whole registry. */
export default async function TermsPage() {
  const person = await requirePerson("set-terms", paths.terms());
  const terms = await registryTerms(database());
  return (
    <>
      <WorkplaceBar person={person} current="account" />
      <PageHead title="Terms">
        <p>What others may do with what is published here, where they can turn to, and how much review a page needs.</p>
      </PageHead>
      <ActionForm action={setTerms} submit="Set these terms">
        <SelectField
          name="licence"
          label="Licence of the published data"
          hint="Stands in every page, file and feed published from now on"
          choices={licenceChoices.map(({ name, title }) => ({ value: name, label: `${title} (${name})` }))}
          defaultValue={terms.licence}
        />
        <TextField
          name="contact"
          label="Contact for corrections"
          hint="An e-mail address, or whatever a reader can write to"
          width={34}
          maxLength={200}
          optional
          defaultValue={terms.contact ?? ""}
        />
        <TextAreaField
          name="rightOfReply"
          label="Right of reply"
          hint="How a maker can answer, in your words. Stands on the page of corrections."
          rows={4}
          maxLength={2000}
          optional
          defaultValue={terms.rightOfReply}
        />
        <RadioGroup
          name="approvalsNeeded"
          legend="How many reviewers must approve before anything is published?"
          hint="A reviewer never counts who took a reading of the item, made it or handed it in."
          defaultValue={String(terms.approvalsNeeded)}
          choices={[
            { value: "1", label: "One" },
            { value: "2", label: "Two different people" },
            {
              value: "0",
              label: "None",
              hint: "Testers may publish unreviewed. Such a page says “Not independently reviewed”.",
            },
          ]}
        />
      </ActionForm>
    </>
  );
}
