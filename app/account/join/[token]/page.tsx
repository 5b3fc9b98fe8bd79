import type { Metadata } from "next";
import { ActionForm } from "@/app/_components/action-form.tsx";
import { ButtonLink } from "@/app/_components/button.tsx";
import { PageHead } from "@/app/_components/entry.tsx";
import { TextField } from "@/app/_components/field.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { systemClock } from "@/lib/platform/clock.ts";
import { paths } from "@/lib/platform/paths.ts";
import { sha256 } from "@/lib/platform/sha256.ts";
import { database } from "@/lib/store/database.ts";
import { openInvitation } from "@/lib/store/invitations.ts";
import { joinWords, passwordLinkWords, roleWords } from "@/lib/wording/account.ts";
import { problemSentence } from "@/lib/wording/problems.ts";
import { NewPasswordField } from "../../new-password-field.tsx";
import { join, setNewPassword } from "./actions.ts";

export const metadata: Metadata = { title: joinWords.anyTitle, robots: { index: false }, referrer: "no-referrer" };

export default async function JoinPage({ params }: { params: Promise<{ token: string }> }) {
  const { token } = await params;
  const invitation = await openInvitation(database(), sha256(token), systemClock());
  if (!invitation)
    return (
      <>
        <PageHead title={joinWords.anyTitle} />
        <Warning>{problemSentence({ code: "invitation-gone" })}</Warning>
        <ButtonLink href={paths.signIn()}>{joinWords.toSignIn}</ButtonLink>
      </>
    );
  const carried = (
    <>
      <input type="hidden" name="token" value={token} />
      {/* So that a password manager keeps the address with the password. */}
      <input type="hidden" name="email" autoComplete="username" value={invitation.email} readOnly />
    </>
  );
  if (invitation.account)
    return (
      <>
        <PageHead title={passwordLinkWords.title}>
          <p>{passwordLinkWords.for(invitation.account.name, invitation.email)}</p>
        </PageHead>
        <ActionForm action={setNewPassword} submit={passwordLinkWords.set}>
          {carried}
          <NewPasswordField label={passwordLinkWords.password} />
        </ActionForm>
      </>
    );
  return (
    <>
      <PageHead title={joinWords.title}>
        <p>{joinWords.as(invitation.email, roleWords[invitation.role])}</p>
      </PageHead>
      <ActionForm action={join} submit={joinWords.submit}>
        {carried}
        <TextField
          name="name"
          label={joinWords.name}
          hint={joinWords.nameHint}
          autoComplete="name"
          required
          width={32}
        />
        <NewPasswordField label={joinWords.password} />
      </ActionForm>
    </>
  );
}
