import { ActionForm } from "@/app/_components/action-form.tsx";
import { Actions, Button } from "@/app/_components/button.tsx";
import { Disclosure } from "@/app/_components/disclosure.tsx";
import { FileField, SelectField, TextAreaField, TextField } from "@/app/_components/field.tsx";
import { QuantityField } from "@/app/_components/quantity-field.tsx";
import { Warning } from "@/app/_components/warning.tsx";
import { OtherTest } from "@/app/(catalogue)/_item/other-tests.tsx";
import { paths } from "@/lib/platform/paths.ts";
import { testMeasures } from "@/lib/publication/other-test.ts";
import type { Snapshot } from "@/lib/publication/snapshot.ts";
import { otherTestLabels, otherTestTitle, otherTestWords } from "@/lib/wording/other-tests.ts";
import { addTest, removeTest } from "./test-actions.ts";

const kinds = Object.entries(otherTestLabels).map(([value, label]) => ({ value, label }));
const units = Object.entries(testMeasures).map(([value, { kinds: of }]) => ({
  value,
  label: `${value} (${of.map((kind) => otherTestLabels[kind].toLowerCase()).join(", ")})`,
}));

type Specimen = Snapshot["specimens"][number];

/** Wipes, leachates and laboratory results of an item's objects at the bench: what is there, and the form that adds one. */
export function BenchTests({
  itemId,
  specimens,
  certificates,
  takenAway,
  problem,
}: {
  itemId: string;
  specimens: Specimen[];
  certificates: ReadonlyMap<string, string>;
  takenAway: { id: string; kind: keyof typeof otherTestLabels; element: string; valueText: string; unit: string }[];
  problem?: string | undefined;
}) {
  const none = specimens.every((specimen) => (specimen.otherTests ?? []).length === 0);
  return (
    <>
      {problem ? <Warning>{problem}</Warning> : null}
      <p>{none ? otherTestWords.none : otherTestWords.lead}</p>
      {specimens.map((specimen) => (
        <div key={specimen.id} className="flow">
          {(specimen.otherTests ?? []).map((test) => (
            <div key={test.id} className="flow">
              <OtherTest
                test={test}
                place={[specimen.label, ...specimen.parts.filter((p) => p.id === test.part).map((p) => p.name)].join(
                  ", ",
                )}
              />
              <Disclosure summary={`Certificate of “${otherTestTitle(test)}”, or take it away`}>
                {certificates.has(test.id) ? (
                  <p>
                    <a href={paths.benchTestCertificate(itemId, test.id)}>Download “{certificates.get(test.id)}”</a>
                  </p>
                ) : null}
                <form
                  action={paths.benchTestCertificate(itemId, test.id)}
                  method="post"
                  encType="multipart/form-data"
                  className="flow"
                >
                  <FileField
                    id={`certificate-${test.id}`}
                    name="file"
                    label="The certificate’s file"
                    hint="PDF or picture, at most 20 MB. It is kept for people of the bench; only its name is published."
                    accept=".pdf,.png,.jpg,.jpeg,.webp"
                    required
                  />
                  <Actions>
                    <Button type="submit">Keep it</Button>
                  </Actions>
                </form>
                <ActionForm
                  action={removeTest.bind(null, itemId, test.id, true)}
                  submit="Take this test away"
                  submitKind="quiet"
                />
              </Disclosure>
            </div>
          ))}
          <Disclosure summary={`Write down a test of “${specimen.label}”`}>
            <TestForm itemId={itemId} specimen={specimen} />
          </Disclosure>
        </div>
      ))}
      {takenAway.length > 0 ? (
        <Disclosure summary={`Taken away: ${takenAway.length}`}>
          {takenAway.map((test) => (
            <div key={test.id}>
              <p>
                {otherTestTitle(test)}: {test.valueText} {test.unit}
              </p>
              <ActionForm
                action={removeTest.bind(null, itemId, test.id, false)}
                submit="Put it back"
                submitKind="secondary"
                compact
              />
            </div>
          ))}
        </Disclosure>
      ) : null}
    </>
  );
}

function TestForm({ itemId, specimen }: { itemId: string; specimen: Specimen }) {
  const id = (name: string) => `test-${specimen.id}-${name}`;
  return (
    <ActionForm action={addTest.bind(null, itemId, specimen.id)} submit="Write it down" submitKind="secondary">
      <SelectField id={id("kind")} name="kind" label="Kind of test" choices={kinds} empty="Choose" required />
      <SelectField
        id={id("componentId")}
        name="componentId"
        label="On which part"
        hint="Whose sample it was, or where the liquid stood. A wipe of the whole object needs none"
        choices={specimen.parts.map((part) => ({ value: part.id, label: part.name }))}
        empty="No single part"
      />
      <TextField id={id("element")} name="element" label="Element" hint="Its symbol: Pb" required width={5} />
      <TextField
        id={id("valueText")}
        name="valueText"
        label="Result as the report writes it"
        hint="12.5 or < 0.5 or ND"
        required
        width={14}
      />
      <SelectField id={id("unit")} name="unit" label="Its unit" choices={units} empty="Choose" required />
      <TextField
        id={id("limitText")}
        name="limitText"
        label="Reporting limit"
        hint="In the same unit"
        optional
        width={10}
      />
      <TextField
        id={id("uText")}
        name="uText"
        label="Uncertainty the report states"
        hint="In the same unit. Without one, no verdict can be given on a measured value"
        optional
        width={10}
      />
      <SelectField
        id={id("uCovers")}
        name="uCovers"
        label="The uncertainty covers"
        choices={[
          { value: "2", label: "about 95 % (k = 2)" },
          { value: "1", label: "one standard uncertainty (k = 1)" },
          { value: "3", label: "k = 3" },
        ]}
      />
      <QuantityField
        id={id("sampleAreaCm2")}
        name="sampleAreaCm2"
        label="Area wiped"
        hint="For a wipe whose result is a mass"
        wanted="cm²"
        units={["cm²", "ft²", "m²"]}
        optional
      />
      <TextField
        id={id("blankText")}
        name="blankText"
        label="What it says of its blank"
        hint="As written. It is shown and never subtracted here"
        optional
        width={30}
      />
      <TextField id={id("laboratory")} name="laboratory" label="Laboratory" required width={36} />
      <TextField
        id={id("method")}
        name="method"
        label="Method"
        hint="The standard and the technique it names"
        required
        width={36}
      />
      <TextField id={id("reportedOn")} name="reportedOn" label="Date of the report" type="date" optional width={14} />
      <TextAreaField id={id("note")} name="note" label="Note" rows={2} optional />
    </ActionForm>
  );
}
