import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { PageHead } from "@/app/_components/entry.tsx";
import { WorkplaceBar } from "@/app/_components/workplace-bar.tsx";
import { auth } from "@/lib/access/auth.ts";
import { currentPerson } from "@/lib/access/current-person.ts";
import { recoveryCodes } from "@/lib/access/second-step.ts";
import { environment } from "@/lib/platform/environment.ts";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { hasSecondStep } from "@/lib/store/second-steps.ts";
import { secondStepWords as words } from "@/lib/wording/account.ts";
import { SecondStepForms } from "./second-step-forms.tsx";

export const metadata: Metadata = { title: words.title, robots: { index: false } };

export default async function SecondStepPage() {
  const person = await currentPerson();
  if (!person) redirect(paths.signIn());
  const on = await hasSecondStep(database(), person.id);
  const left = on ? (await recoveryCodes(auth(), person.id)).length : 0;
  return (
    <>
      <WorkplaceBar person={person} current="account" />
      <PageHead title={words.title}>
        <p>{words.lead}</p>
        <p>{on ? words.on : words.off}</p>
      </PageHead>
      <SecondStepForms
        on={on}
        left={left}
        codesFor={words.codesFor(person.email, new URL(environment().baseUrl).host)}
      />
    </>
  );
}
