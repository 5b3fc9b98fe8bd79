import { ActionForm } from "@/app/_components/action-form.tsx";
import { RadioGroup } from "@/app/_components/choice-field.tsx";
import { TextAreaField } from "@/app/_components/field.tsx";
import { reviewItem } from "./actions.ts";

/** Approve what is shown, or send it back with a note. */
export function Decision({ itemId, shownDigest }: { itemId: string; shownDigest: string }) {
  return (
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
          { value: "sent-back", label: "I send it back", hint: "With a note that says what is missing." },
        ]}
      />
      <TextAreaField
        name="note"
        label="Note to the tester"
        hint="Needed when you send it back: at least 8 characters. Not published."
        rows={4}
        maxLength={2000}
      />
    </ActionForm>
  );
}
