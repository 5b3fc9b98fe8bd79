import { RadioGroup } from "@/app/_components/choice-field.tsx";
import { TextAreaField } from "@/app/_components/field.tsx";
import { formText } from "@/lib/platform/form-values.ts";
import { interestsQuestion, noTies } from "@/lib/wording/review.ts";

/** What ties a tester or reviewer to the maker: one of two answers, so that "nothing" is said and not assumed. */
export function InterestsField({ before = "" }: { before?: string }) {
  const none = before === noTies;
  return (
    <>
      <RadioGroup
        name="ties"
        legend={interestsQuestion.legend}
        hint={interestsQuestion.hint}
        defaultValue={before === "" ? undefined : none ? "none" : "some"}
        choices={[
          { value: "none", label: interestsQuestion.none },
          { value: "some", label: interestsQuestion.some },
        ]}
      />
      <TextAreaField
        name="interests"
        label="In your own words"
        hint="Only where something does"
        rows={2}
        maxLength={600}
        optional
        defaultValue={none ? "" : before}
      />
    </>
  );
}

/** The statement as the form gave it; empty where neither answer was chosen, which no workflow takes. */
export const interestsOf = (data: FormData): string =>
  formText(data, "ties") === "none" ? noTies : formText(data, "interests");
