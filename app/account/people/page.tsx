import type { Metadata } from "next";
import { ActionForm } from "@/app/_components/action-form.tsx";
import { ConfirmDialog } from "@/app/_components/confirm-dialog.tsx";
import { DataTable } from "@/app/_components/data-table.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { SelectField, TextField } from "@/app/_components/field.tsx";
import { WorkplaceBar } from "@/app/_components/workplace-bar.tsx";
import { requirePerson } from "@/lib/access/require-person.ts";
import { systemClock } from "@/lib/platform/clock.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { openInvitations } from "@/lib/store/invitations.ts";
import { listPeople } from "@/lib/store/people.ts";
import { peopleWithSecondStep } from "@/lib/store/second-steps.ts";
import { inviteWords, passwordLinkWords, roleWords, secondStepWords } from "@/lib/wording/account.ts";
import { plainDate } from "@/lib/wording/formats.ts";
import { NewPasswordField } from "../new-password-field.tsx";
import { addMember, inviteMember, makePasswordLink, removeSecondStep, withdrawInvitation } from "./actions.ts";

export const metadata: Metadata = { title: "People", robots: { index: false } };

const roleChoices = [
  { value: "tester", label: "Tester: loads readings, publishes items" },
  { value: "reviewer", label: "Reviewer: reads before publishing" },
  { value: "owner", label: "Owner: all of it, and people" },
];

export default async function PeoplePage() {
  const person = await requirePerson("manage-people", paths.people());
  const people = await listPeople(database());
  const withSecondStep = await peopleWithSecondStep(database());
  const invitations = await openInvitations(database(), systemClock());
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
              {
                key: "second-step",
                head: secondStepWords.column,
                cell: (p) => (
                  <>
                    {secondStepWords.state(withSecondStep.has(p.id))}
                    {withSecondStep.has(p.id) && p.id !== person.id ? (
                      <>
                        {" · "}
                        <ConfirmDialog
                          ask={secondStepWords.remove}
                          title={secondStepWords.removeTitle(p.name)}
                          form={
                            <ActionForm
                              action={removeSecondStep.bind(null, p.id)}
                              submit={secondStepWords.removeSubmit}
                              compact
                            />
                          }
                        >
                          <p>{secondStepWords.removeLead}</p>
                        </ConfirmDialog>
                      </>
                    ) : null}
                  </>
                ),
              },
              {
                key: "password",
                head: passwordLinkWords.column,
                cell: (p) =>
                  p.id === person.id ? (
                    passwordLinkWords.own
                  ) : (
                    <ConfirmDialog
                      ask={passwordLinkWords.ask}
                      title={passwordLinkWords.askTitle(p.name)}
                      keep={passwordLinkWords.close}
                      form={
                        <ActionForm
                          action={makePasswordLink.bind(null, p.id)}
                          submit={passwordLinkWords.submit}
                          compact
                        />
                      }
                    >
                      <p>{passwordLinkWords.lead}</p>
                    </ConfirmDialog>
                  ),
              },
            ]}
          />
        </Entry>
        <Entry title={inviteWords.title} id="invite">
          <p>{inviteWords.lead}</p>
          <ActionForm action={inviteMember} submit={inviteWords.submit}>
            <TextField name="email" id="invite-email" label="E-mail" type="email" required width={32} />
            <SelectField name="role" id="invite-role" label="Role" choices={roleChoices} defaultValue="tester" />
          </ActionForm>
          {invitations.length === 0 ? (
            <p>{inviteWords.none}</p>
          ) : (
            <DataTable
              caption={inviteWords.openTitle}
              rows={invitations}
              rowKey={(i) => i.id}
              columns={[
                { key: "email", head: "E-mail", cell: (i) => i.email },
                {
                  key: "kind",
                  head: inviteWords.kind,
                  cell: (i) => inviteWords.kindOf(roleWords[i.role], i.account?.name),
                },
                { key: "until", head: "Works until", cell: (i) => plainDate(i.expiresAt.toISOString().slice(0, 10)) },
                {
                  key: "withdraw",
                  head: inviteWords.withdraw,
                  cell: (i) => (
                    <ActionForm
                      action={withdrawInvitation.bind(null, i.id)}
                      submit={inviteWords.withdraw}
                      submitKind="quiet"
                      compact
                    />
                  ),
                },
              ]}
            />
          )}
        </Entry>
        <Entry title="Add somebody who is here" id="add">
          <ActionForm action={addMember} submit="Add">
            <TextField name="name" label="Name" required width={32} />
            <TextField name="email" label="E-mail" type="email" required width={32} />
            <NewPasswordField label="First password" also="They choose it here, beside you." />
            <SelectField name="role" label="Role" choices={roleChoices} defaultValue="tester" />
          </ActionForm>
        </Entry>
      </Ledger>
    </>
  );
}
