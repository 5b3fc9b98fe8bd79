import { z } from "zod";
import { oneTimeLink } from "../access/one-time-link.ts";
import { roles } from "../access/permissions.ts";
import { requirePermission } from "../access/require-permission.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome, refused } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { addInvitation, dropInvitation } from "../store/invitations.ts";
import { emailTaken } from "../store/people.ts";

export const inviteInput = z.object({ email: z.email().toLowerCase(), role: z.enum(roles) });

/** A week: long enough for somebody who is away, short enough for a link in a mailbox (our own choice). */
const lastsDays = 7;

/**
 * The owner invites somebody by a link that works once, for a week. The link's token is told here and never again: only its hash is kept.
 */
export async function inviteMemberWorkflow(
  context: Context,
  input: z.input<typeof inviteInput>,
): Promise<Outcome<{ token: string; email: string; expiresAt: Date }>> {
  const permitted = requirePermission(context.person, "manage-people");
  if (!permitted.ok) return permitted;
  const { email, role } = inviteInput.parse(input);
  const at = context.clock();
  const { token, kept } = oneTimeLink(at, lastsDays);
  return inTransaction(context.db, async (tx) => {
    if (await emailTaken(tx, email)) return refused({ code: "email-taken", where: { field: "email" }, found: email });
    const recordId = await addInvitation(tx, { email, role, ...kept, createdById: permitted.value.id });
    const of = { record: "invitation", recordId, detail: { role } };
    await recordAct(tx, { at, actor: permitted.value, action: "invite-member", ...of });
    return done({ token, email, expiresAt: kept.expiresAt });
  });
}

/** The owner takes a link back that nobody has used, be it an invitation or one for a new password. */
export async function withdrawInvitationWorkflow(context: Context, id: string): Promise<Outcome<null>> {
  const permitted = requirePermission(context.person, "manage-people");
  if (!permitted.ok) return permitted;
  return inTransaction(context.db, async (tx) => {
    if (!(await dropInvitation(tx, id))) return refused({ code: "invitation-gone" });
    const of = { record: "invitation", recordId: id };
    await recordAct(tx, { at: context.clock(), actor: permitted.value, action: "withdraw-invitation", ...of });
    return done(null);
  });
}
