import type { Metadata } from "next";
import { redirect } from "next/navigation";
import { ActionForm } from "@/app/_components/action-form.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { TextField } from "@/app/_components/field.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { database } from "@/lib/store/database.ts";
import { ownerExists } from "@/lib/store/people.ts";
import { NewPasswordField } from "../new-password-field.tsx";
import { makeOwner } from "./actions.ts";

export const metadata: Metadata = { title: "Set up the registry", robots: { index: false } };
export const dynamic = "force-dynamic";

export default async function SetUpPage() {
  if (await ownerExists(database())) redirect(paths.signIn());
  return (
    <>
      <PageHead title="Set up the registry">
        <p>
          Nobody owns this registry yet. When the program started it printed a one-time token in its terminal. Whoever
          can read it there makes the first account, the owner’s.
        </p>
      </PageHead>
      <ActionForm action={makeOwner} submit="Make the owner’s account">
        <TextField
          name="token"
          label="One-time token"
          hint="32 letters and digits, from the terminal"
          autoComplete="off"
          required
          width={34}
        />
        <TextField
          name="name"
          label="Your name"
          hint="Shown beside what you test and publish"
          autoComplete="name"
          required
          width={32}
        />
        <TextField name="email" label="E-mail" type="email" autoComplete="username" required width={32} />
        <NewPasswordField label="Password" />
      </ActionForm>
    </>
  );
}
