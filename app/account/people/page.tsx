import type { Metadata } from "next";
import { ActionForm } from "@/app/_components/action-form.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { SelectField, TextField } from "@/app/_components/field.tsx";
import { WorkplaceBar } from "@/app/_components/workplace-bar.tsx";
import { requirePerson } from "@/lib/access/require-person.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { listPeople } from "@/lib/store/people.ts";
import { addMember } from "./actions.ts";

export const metadata: Metadata = { title: "People", robots: { index: false } };

const roleChoices = [
  { value: "tester", label: "Tester: loads readings, publishes items" },
  { value: "reviewer", label: "Reviewer: reads before publishing" },
  { value: "owner", label: "Owner: all of it, and people" },
];

export default async function PeoplePage() {
  const person = await requirePerson("manage-people", paths.people());
  const people = await listPeople(database());
  return (
    <>
      <WorkplaceBar person={person} current="account" />
      <PageHead title="People" />
      <Ledger>
        <Entry title="Who can sign in" id="people">
          <DataTable
            caption="Who can sign in"
            hideCaption
            rows={people}
            rowKey={(p) => p.id}
            columns={[
              { key: "name", head: "Name", cell: (p) => p.name },
              { key: "email", head: "E-mail", cell: (p) => p.email },
              { key: "role", head: "Role", cell: (p) => p.role },
            ]}
          />
        </Entry>
        <Entry title="Add somebody" id="add">
          <ActionForm action={addMember} submit="Add">
            <TextField name="name" label="Name" required width={32} />
            <TextField name="email" label="E-mail" type="email" required width={32} />
            <TextField
              name="password"
              label="First password"
              hint="At least 10 characters; tell it to them in person"
              type="password"
              minLength={10}
              required
              width={32}
              autoComplete="new-password"
            />
            <SelectField name="role" label="Role" choices={roleChoices} defaultValue="tester" />
          </ActionForm>
        </Entry>
      </Ledger>
    </>
  );
}
