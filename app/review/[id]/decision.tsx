import { ActionForm } from "@/app/_components/action-form.tsx";
import { Checkbox, Fieldset, RadioGroup } from "@/app/_components/choice-field.tsx";
import { TextAreaField } from "@/app/_components/field.tsx";
import { InterestsField } from "@/app/_draft/interests-field.tsx";
import type { Claim } from "@/lib/store/reviews.ts";
import { plainDate } from "@/lib/wording/formats.ts";
import { claimItem, releaseItem, reviewItem } from "./actions.ts";

/** Taking the item up, with one's statement of interests; only then is there something to decide with. */
export function ClaimForm({ itemId }: { itemId: string }) {
  return (
    <ActionForm action={claimItem.bind(null, itemId)} submit="Take it up for review">
      <InterestsField />
    </ActionForm>
  );
}

/** Somebody else has it: who, since when, and what the owner can do about it. */
export function ClaimedByAnother({ itemId, claim, mayRelease }: { itemId: string; claim: Claim; mayRelease: boolean }) {
  return (
    <>
      <p>
        {claim.reviewerName} has taken this item up on {plainDate(claim.claimedAt.toISOString())}. Wait, choose another,
        or ask them to give it back. You can read everything here and make remarks.
      </p>
      {mayRelease ? (
        <ActionForm
          action={releaseItem.bind(null, itemId)}
          submit={`Take it from ${claim.reviewerName}`}
          submitKind="quiet"
          compact
        />
      ) : null}
    </>
  );
}

/** Approve what is shown, ask for more shots, or send it back with a note. */
export function Decision({
  itemId,
  shownDigest,
  plans,
  openRemarks,
}: {
  itemId: string;
  shownDigest: string;
  plans: string[];
  openRemarks: number;
}) {
  return (
    <>
      {openRemarks > 0 ? <p>{openRemarks === 1 ? "One remark is" : `${openRemarks} remarks are`} still open.</p> : null}
      <ActionForm action={reviewItem.bind(null, itemId, shownDigest)} submit="Give this decision">
        <RadioGroup
          name="decision"
          legend="What do you say?"
          choices={[
            {
              value: "approved",
              label: "I approve what is shown here",
              hint: "Your name stands on the page. It holds for exactly this state; any change undoes it.",
            },
            { value: "more-shots", label: "I ask for more shots", hint: "With a note that says which, and why." },
            { value: "sent-back", label: "I send it back", hint: "With a note that says what is missing." },
          ]}
        />
        {plans.length > 0 ? (
          <Fieldset legend="Put into the note what would settle it">
            {plans.map((plan, index) => (
              <Checkbox key={plan} name="plan" id={`plan-${index}`} value={plan} label={plan} />
            ))}
          </Fieldset>
        ) : null}
        <TextAreaField
          name="note"
          label="Note to the tester"
          hint="Needed unless you approve: at least 8 characters. Not published."
          rows={4}
          maxLength={2000}
        />
      </ActionForm>
      <ActionForm action={releaseItem.bind(null, itemId)} submit="Give it back undecided" submitKind="quiet" compact />
    </>
  );
}
