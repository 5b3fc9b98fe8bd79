import { ActionForm } from "@/app/_components/action-form.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { SelectField, TextAreaField } from "@/app/_components/field.tsx";
import type { Draft } from "@/app/_draft/load-draft.ts";
import { RetestComparison } from "@/app/_draft/retest-comparison.tsx";
import type { Person } from "@/lib/access/permissions.ts";
import { may } from "@/lib/access/permissions.ts";
import type { RetestRecord } from "@/lib/store/retests.ts";
import { elementTitle } from "@/lib/wording/elements.ts";
import { plainDate, resultText } from "@/lib/wording/formats.ts";
import { retestStateWords } from "@/lib/wording/retests.ts";
import { askRetest, callOffRetest } from "./actions.ts";

/** Re-tests of this item, and asking somebody who does not know the value for another one. */
export function Retests({
  draft,
  retests,
  people,
  person,
}: {
  draft: Draft;
  retests: RetestRecord[];
  people: Person[];
  person: Person;
}) {
  const { item } = draft.record;
  const names = new Map(people.map((each) => [each.id, each.name]));
  const parts = new Map(item.specimens.flatMap((s) => s.components.map((c) => [c.id, c.name] as const)));
  const mayAsk = may(person, "ask-retest", { state: item.state }).yes;
  const testers = people.filter(
    (each) => may(each, "hand-in-retest").yes && !draft.concerned.includes(each.id) && each.id !== person.id,
  );
  return (
    <>
      {retests.length === 0 ? <p>Nobody has been asked to measure it again.</p> : null}
      {retests.map((retest) => (
        <section key={retest.id} className="flow">
          <h3>
            {elementTitle(retest.element)} in {parts.get(retest.componentId) ?? "a part that is gone"}
          </h3>
          <p>
            Asked of {names.get(retest.testerId) ?? "somebody"} by {names.get(retest.askedById) ?? "somebody"} on{" "}
            {plainDate(retest.askedAt.toISOString())}: {retestStateWords[retest.state]}.
          </p>
          <RetestComparison retest={retest} testers={names} />
          {retest.state === "done" ? <Combined draft={draft} retest={retest} /> : null}
          {retest.state === "asked" && mayAsk ? (
            <ActionForm action={callOffRetest.bind(null, retest.id)} submit="Call it off" submitKind="quiet" compact />
          ) : null}
        </section>
      ))}
      {mayAsk && !draft.openRetest && draft.placed.length > 0 ? (
        <Disclosure summary="Ask another tester to measure it again, blind">
          {testers.length === 0 ? (
            <p>
              Everybody who takes readings here made this item or knows its value. Somebody else has to join as a tester
              first.
            </p>
          ) : (
            <>
              {draft.published ? (
                <p>
                  This item is published, so anybody can read its value. Ask only somebody who has not; what the program
                  shows them at the bench is kept from them all the same.
                </p>
              ) : null}
              <ActionForm action={askRetest.bind(null, item.id)} submit="Ask for this re-test" submitKind="secondary">
                <SelectField name="value" label="What should be measured again?" choices={valueChoices(draft)} />
                <SelectField
                  name="testerId"
                  label="By whom?"
                  hint="Only those who do not know the value"
                  choices={testers.map((each) => ({ value: each.id, label: each.name }))}
                />
                <TextAreaField
                  name="retestNote"
                  label="Note to them"
                  hint="They read it before they measure: tell nothing of the value"
                  rows={2}
                  maxLength={600}
                  optional
                />
              </ActionForm>
            </>
          )}
        </Disclosure>
      ) : null}
    </>
  );
}

/** What the method makes of all readings together, as the page would say it. */
function Combined({ draft, retest }: { draft: Draft; retest: RetestRecord }) {
  const now = draft.placed.find(
    ({ part, result }) =>
      part.id === retest.componentId && result.element === retest.element && result.quantity === retest.first.quantity,
  );
  return now ? <p>Combined by the method, all readings together: {resultText(now.result)}.</p> : null;
}

/** Each part and element once, the one the page would lead with first; no value in the words. */
function valueChoices({ placed }: Draft): { value: string; label: string }[] {
  const choices = new Map(
    placed.map(({ part, result }) => [
      `${part.id}:${result.element}`,
      `${elementTitle(result.element)} in ${part.name}`,
    ]),
  );
  return [...choices].map(([value, label]) => ({ value, label }));
}
