import type { Metadata } from "next";
import { headers } from "next/headers";
import { redirect } from "next/navigation";
import { ActionForm } from "@/app/_components/action-form.tsx";
import { ButtonLink } from "@/app/_components/button.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { auth } from "@/lib/access/auth.ts";
import { paths } from "@/lib/platform/paths.ts";
import { secondStepWords as words } from "@/lib/wording/account.ts";
import { CodeField } from "../../code-field.tsx";
import { enterSignInCode } from "../actions.ts";

export const metadata: Metadata = { title: words.enterTitle, robots: { index: false } };

/** The second step of a sign-in, for whoever's password was right a moment ago. */
export default async function SignInCodePage({ searchParams }: { searchParams: Promise<{ next?: string }> }) {
  if (!(await auth().api.whoWaitsForCode({ headers: await headers() }))) redirect(paths.signIn());
  const { next = "" } = await searchParams;
  return (
    <>
      <PageHead title={words.enterTitle}>
        <p>{words.enterLead}</p>
      </PageHead>
      <div className="flow">
        <ActionForm
          action={enterSignInCode}
          submit={words.enter}
          after={
            <ButtonLink kind="quiet" href={paths.signIn()}>
              {words.anew}
            </ButtonLink>
          }
        >
          <CodeField label={words.code} hint={words.codeHint} />
          <input type="hidden" name="next" value={next} />
        </ActionForm>
        <p>{words.lost}</p>
      </div>
    </>
  );
}
