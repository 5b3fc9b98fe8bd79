import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { ActionForm } from "@/app/_components/action-form.tsx";
import { Actions, Button, ButtonLink } from "@/app/_components/button.tsx";
import { Entry, Ledger, PageHead } from "@/app/_components/entry.tsx";
import { TextField } from "@/app/_components/field.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { WorkplaceBar } from "@/app/_components/workplace-bar.tsx";
import { currentPerson } from "@/lib/access/current-person.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { hasSecondStep } from "@/lib/store/second-steps.ts";
import { passwordWords, secondStepWords } from "@/lib/wording/account.ts";
import { problemSentence } from "@/lib/wording/problems.ts";
import { changePassword } from "./actions.ts";
import { NewPasswordField } from "./new-password-field.tsx";
import { signOut } from "./sign-in/actions.ts";

export const metadata: Metadata = { title: "Your account", robots: { index: false } };

export default async function AccountPage({ searchParams }: { searchParams: Promise<{ refused?: string }> }) {
  const person = await currentPerson();
  if (!person) redirect(paths.signIn());
  const { refused } = await searchParams;
  const on = await hasSecondStep(database(), person.id);
  return (
    <>
      <WorkplaceBar person={person} current="account" />
      <PageHead title={person.name}>
        <p>
          Signed in as {person.role}, {person.email}.
        </p>
      </PageHead>
      {refused ? <Warning>{problemSentence({ code: "not-allowed", where: { field: refused } })}</Warning> : null}
      <Ledger>
        <Entry title={passwordWords.title} id="your-password">
          <ActionForm action={changePassword} submit={passwordWords.submit} submitKind="secondary">
            <input type="hidden" name="username" autoComplete="username" value={person.email} readOnly />
            <TextField
              name="current"
              label={passwordWords.current}
              type="password"
              autoComplete="current-password"
              required
              width={32}
            />
            <NewPasswordField label={passwordWords.next} />
          </ActionForm>
        </Entry>
        <Entry title={secondStepWords.title} id="second-step">
          <p>
            {secondStepWords.lead} {on ? secondStepWords.on : secondStepWords.off}
          </p>
          <Actions>
            <ButtonLink href={paths.secondStep()}>{secondStepWords.toPage(on)}</ButtonLink>
          </Actions>
        </Entry>
      </Ledger>
      <form action={signOut}>
        <Actions>
          <Button type="submit" kind="quiet">
            Sign out
          </Button>
        </Actions>
      </form>
    </>
  );
}
