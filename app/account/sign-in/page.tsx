import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { ActionForm } from "@/app/_components/action-form.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { TextField } from "@/app/_components/field.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { ownerExists } from "@/lib/store/people.ts";
import { signInWords } from "@/lib/wording/account.ts";
import { signIn } from "./actions.ts";

export const metadata: Metadata = { title: "Sign in", robots: { index: false } };

export default async function SignInPage({ searchParams }: { searchParams: Promise<{ next?: string }> }) {
  if (!(await ownerExists(database()))) redirect(paths.setUp());
  const { next = "" } = await searchParams;
  return (
    <>
      <PageHead title="Sign in">
        <p>For the people who test and review. Readers need no account: everything published is open.</p>
      </PageHead>
      <div className="flow">
        <ActionForm action={signIn} submit="Sign in">
          <TextField name="email" label="E-mail" type="email" autoComplete="username" required width={32} />
          <TextField
            name="password"
            label="Password"
            type="password"
            autoComplete="current-password"
            required
            width={32}
          />
          <input type="hidden" name="next" value={next} />
        </ActionForm>
        <p>{signInWords.forgotten}</p>
      </div>
    </>
  );
}
