import { z } from "zod";
import { requirePermission } from "../access/require-permission.ts";
import { licenceChoices } from "../exports/licence.ts";
import type { Context } from "../platform/context.ts";
import { done, type Outcome } from "../quantity/problem.ts";
import { recordAct } from "../store/audit.ts";
import { inTransaction } from "../store/database.ts";
import { saveTerms } from "../store/registry.ts";

export const termsInput = z.object({
  licence: z.enum(licenceChoices.map((licence) => licence.name)),
  contact: z.string().trim().max(200).nullable(),
  rightOfReply: z.string().trim().max(2000),
  approvalsNeeded: z.union([z.literal(0), z.literal(1), z.literal(2)]),
});

/** The owner settles the terms of the published data and how much review a page needs. Published snapshots keep the terms they were published under. */
export async function setTermsWorkflow(context: Context, input: z.input<typeof termsInput>): Promise<Outcome<null>> {
  const permitted = requirePermission(context.person, "set-terms");
  if (!permitted.ok) return permitted;
  const terms = termsInput.parse(input);
  return inTransaction(context.db, async (tx) => {
    await saveTerms(tx, terms);
    const { licence, approvalsNeeded, contact } = terms;
    await recordAct(tx, {
      at: context.clock(),
      actor: permitted.value,
      action: "set-terms",
      record: "registry",
      recordId: "1",
      detail: { licence, approvalsNeeded, contact },
    });
    return done(null);
  });
}
